import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import decode, { init as initDecode } from '@jsquash/jpeg/decode.js';
import encode, { init as initEncode } from '@jsquash/jpeg/encode.js';

/** RGBA picture, rows from the top. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

// The codec returns ImageData, which Node lacks.
class PlainImageData {
  constructor(
    readonly data: Uint8ClampedArray,
    readonly width: number,
    readonly height: number,
  ) {}
}
(globalThis as Record<string, unknown>).ImageData ??= PlainImageData;

const require = createRequire(import.meta.url);
const wasm = async (name: string) =>
  WebAssembly.compile(
    await readFile(require.resolve(`@jsquash/jpeg/codec/${name}/mozjpeg_${name}.wasm`)),
  );

let ready: Promise<void> | undefined;
function load(): Promise<void> {
  ready ??= (async () => {
    // The types leave out the compiled module that the functions take first.
    const withModule = (init: unknown) => init as (module: WebAssembly.Module) => Promise<void>;
    await withModule(initDecode)(await wasm('dec'));
    await withModule(initEncode)(await wasm('enc'));
  })();
  return ready;
}

export async function encodeJpeg(picture: Picture, quality: number): Promise<Uint8Array> {
  await load();
  return new Uint8Array(await encode(picture as unknown as ImageData, { quality }));
}

/** Pixels as stored; orientation is not applied. */
export async function decodeJpeg(jpeg: Uint8Array): Promise<Picture> {
  await load();
  const { buffer, byteOffset, byteLength } = jpeg;
  return decode(
    buffer.slice(byteOffset, byteOffset + byteLength) as ArrayBuffer,
    {
      preserveOrientation: false,
    } as never,
  );
}

/** Area average, the way messengers shrink pictures. */
export function shrink(picture: Picture, longEdgePx: number): Picture {
  const factor = longEdgePx / Math.max(picture.width, picture.height);
  const width = Math.round(picture.width * factor);
  const height = Math.round(picture.height * factor);
  const data = new Uint8ClampedArray(width * height * 4);
  const rowWeights = weights(picture.height, height);
  const columnWeights = weights(picture.width, width);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const sum = [0, 0, 0];
      for (const [sy, wy] of rowWeights[y]!)
        for (const [sx, wx] of columnWeights[x]!) {
          const from = 4 * (sy * picture.width + sx);
          for (let k = 0; k < 3; k++) sum[k]! += picture.data[from + k]! * wx * wy;
        }
      const to = 4 * (y * width + x);
      data.set(sum, to);
      data[to + 3] = 255;
    }
  return { width, height, data };
}

/** For each target pixel the source pixels it covers, with shares that add to 1. */
function weights(from: number, to: number): [number, number][][] {
  const step = from / to;
  return Array.from({ length: to }, (_, i) => {
    const covered: [number, number][] = [];
    for (let s = Math.floor(i * step); s < Math.min(from, (i + 1) * step); s++) {
      const overlap = Math.min(s + 1, (i + 1) * step) - Math.max(s, i * step);
      if (overlap > 0) covered.push([s, overlap / step]);
    }
    return covered;
  });
}
