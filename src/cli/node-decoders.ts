import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Decoders } from '../journey/1-photo/photo';

const { resolve } = createRequire(import.meta.url);

/** The same decoders as in the browser, read from disk. */
export const nodeDecoders: Decoders = {
  jpeg: fromPackage('@cwasm/jpeg-turbo/jpeg-turbo.wasm'),
  png: fromPackage('@jsquash/png/codec/pkg/squoosh_png_bg.wasm'),
  webp: fromPackage('@jsquash/webp/codec/dec/webp_dec.wasm'),
  heic: fromPackage('libheif-js/libheif-wasm/libheif.wasm'),
  avif: fromPackage('@jsquash/avif/codec/dec/avif_dec.wasm'),
};

function fromPackage(file: string): () => Promise<WebAssembly.Module> {
  let compiled: Promise<WebAssembly.Module> | undefined;
  return () => {
    provideImageData();
    compiled ??= readFile(resolve(file)).then((bytes) => WebAssembly.compile(bytes));
    return compiled;
  };
}

/** The PNG, WebP and AVIF decoders hand out their pixels as the web's ImageData, which Node lacks. */
function provideImageData(): void {
  globalThis.ImageData ??= class {
    readonly colorSpace = 'srgb';
    constructor(
      readonly data: Uint8ClampedArray<ArrayBuffer>,
      readonly width: number,
      readonly height: number,
    ) {}
  } as unknown as typeof ImageData;
}
