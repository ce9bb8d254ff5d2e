import jpegUrl from '@cwasm/jpeg-turbo/jpeg-turbo.wasm?url';
import pngUrl from '@jsquash/png/codec/pkg/squoosh_png_bg.wasm?url';
import webpUrl from '@jsquash/webp/codec/dec/webp_dec.wasm?url';
import type { Decoders } from '../journey/1-photo/photo';
import { streamWasm } from './stream-wasm';

export const workerDecoders: Decoders = {
  jpeg: once(jpegUrl),
  png: once(pngUrl),
  webp: once(webpUrl),
};

/** Kept once it has arrived; a failed fetch is tried anew the next time. */
function once(url: string): () => Promise<WebAssembly.Module> {
  let compiled: Promise<WebAssembly.Module> | undefined;
  return () => {
    compiled ??= streamWasm(url).catch((error: unknown) => {
      compiled = undefined;
      throw error;
    });
    return compiled;
  };
}
