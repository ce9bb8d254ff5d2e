import jpegUrl from '@cwasm/jpeg-turbo/jpeg-turbo.wasm?url';
import avifUrl from '@jsquash/avif/codec/dec/avif_dec.wasm?url';
import pngUrl from '@jsquash/png/codec/pkg/squoosh_png_bg.wasm?url';
import webpUrl from '@jsquash/webp/codec/dec/webp_dec.wasm?url';
import heicUrl from 'libheif-js/libheif-wasm/libheif.wasm?url';
import type { Decoders } from '../journey/1-photo/photo';
import { streamWasm } from './stream-wasm';

export const workerDecoders: Decoders = {
  jpeg: once(jpegUrl),
  png: once(pngUrl),
  webp: once(webpUrl),
  heic: once(heicUrl, () => import('libheif-js/libheif-wasm/libheif.js')),
  avif: once(avifUrl, () => import('@jsquash/avif/decode.js')),
};

/** Kept once it has arrived; a failed fetch is tried anew the next time. `glue` is the decoder's own
 *  script where it is a file of its own: without it the compiled code is of no use. */
function once(
  url: string,
  glue: () => Promise<unknown> = async () => {},
): () => Promise<WebAssembly.Module> {
  let compiled: Promise<WebAssembly.Module> | undefined;
  return () => {
    compiled ??= Promise.all([streamWasm(url), glue()])
      .then(([module]) => module)
      .catch((error: unknown) => {
        compiled = undefined;
        throw error;
      });
    return compiled;
  };
}
