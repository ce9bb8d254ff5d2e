import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { deflateSync } from 'node:zlib';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import type { GreyImage } from '../../../src/vision/grey-image';

/** Files made for tests, straight from the formats' specifications. */

const ascii = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

function concat(...parts: Uint8Array[]): Uint8Array {
  return new Uint8Array(Buffer.concat(parts));
}

function u32(value: number): Uint8Array {
  const bytes = new Uint8Array(4);
  new DataView(bytes.buffer).setUint32(0, value);
  return bytes;
}

export interface PngOptions {
  /** Colour type: 0 grey, 2 RGB, 4 grey and alpha, 6 RGB and alpha. */
  readonly colour?: 0 | 2 | 4 | 6;
  readonly bits?: 8 | 16;
  readonly alpha?: number;
  readonly exif?: Uint8Array;
  /** Declared instead of the true size. */
  readonly declared?: { readonly width: number; readonly height: number };
}

/** ISO/IEC 15948. */
export function makePng(image: GreyImage, options: PngOptions = {}): Uint8Array {
  const { colour = 0, bits = 8, alpha = 255, exif, declared = image } = options;
  const samples = { 0: 1, 2: 3, 4: 2, 6: 4 }[colour];
  const hasAlpha = colour >= 4;
  const bytesPerPixel = (samples * bits) / 8;
  const stride = 1 + image.width * bytesPerPixel;
  const raw = new Uint8Array(stride * image.height);
  for (let y = 0; y < image.height; y++) {
    const row = image.data.subarray(y * image.width, (y + 1) * image.width);
    if (bytesPerPixel === 1) {
      raw.set(row, y * stride + 1);
      continue;
    }
    for (let x = 0; x < image.width; x++) {
      const at = y * stride + 1 + x * bytesPerPixel;
      for (let s = 0; s < samples; s++) {
        const value = hasAlpha && s === samples - 1 ? alpha : row[x];
        raw.fill(value, at + (s * bits) / 8, at + ((s + 1) * bits) / 8);
      }
    }
  }
  const head = concat(
    u32(declared.width),
    u32(declared.height),
    Uint8Array.of(bits, colour, 0, 0, 0),
  );
  return concat(
    Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a),
    chunk('IHDR', head),
    ...(exif ? [chunk('eXIf', exif)] : []),
    // Packed in haste: the pixels are the same, and nobody keeps the file.
    chunk('IDAT', new Uint8Array(deflateSync(raw, { level: 1 }))),
    chunk('IEND', new Uint8Array(0)),
  );
}

function chunk(kind: string, data: Uint8Array): Uint8Array {
  const body = concat(ascii(kind), data);
  return concat(u32(data.length), body, u32(crc32(body)));
}

/** ISO/IEC 15948, annex D. */
const crcOfByte = Uint32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  return crc;
});

function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) crc = (crc >>> 8) ^ crcOfByte[(crc ^ bytes[i]) & 255];
  return (crc ^ 0xffffffff) >>> 0;
}

export interface ExifOptions {
  readonly order?: 'II' | 'MM';
  readonly orientation?: number;
  readonly f35Mm?: number;
  /** Value of Flash: bit 0 says that it fired, the others why or why not. */
  readonly flash?: number;
  readonly pixelSize?: { readonly width: number; readonly height: number };
}

/** A TIFF structure with a main and an EXIF directory (TIFF 6.0; CIPA DC-008). */
export function makeExif(options: ExifOptions): Uint8Array {
  const { order = 'MM', orientation, f35Mm, flash, pixelSize } = options;
  const little = order === 'II';
  const main: [number, number, number][] = [[0x8769, 4, 0]];
  if (orientation !== undefined) main.unshift([0x0112, 3, orientation]);
  const details: [number, number, number][] = [];
  if (flash !== undefined) details.push([0x9209, 3, flash]);
  if (pixelSize) details.push([0xa002, 4, pixelSize.width], [0xa003, 4, pixelSize.height]);
  if (f35Mm !== undefined) details.push([0xa405, 3, f35Mm]);
  const detailsAt = 8 + 2 + 12 * main.length + 4;
  main[main.length - 1][2] = detailsAt;
  const bytes = new Uint8Array(detailsAt + 2 + 12 * details.length + 4);
  const view = new DataView(bytes.buffer);
  bytes.set(ascii(order));
  view.setUint16(2, 42, little);
  view.setUint32(4, 8, little);
  const write = (at: number, entries: [number, number, number][]) => {
    view.setUint16(at, entries.length, little);
    entries.forEach(([tag, type, value], i) => {
      const entry = at + 2 + 12 * i;
      view.setUint16(entry, tag, little);
      view.setUint16(entry + 2, type, little);
      view.setUint32(entry + 4, 1, little);
      if (type === 3) view.setUint16(entry + 8, value, little);
      else view.setUint32(entry + 8, value, little);
    });
  };
  write(8, main);
  write(detailsAt, details);
  return bytes;
}

/** Puts an EXIF block right behind a JPEG's first marker. */
export function withExif(jpeg: Uint8Array, exif: Uint8Array): Uint8Array {
  const length = exif.length + 8;
  const head = Uint8Array.of(0xff, 0xe1, length >> 8, length & 255);
  return concat(jpeg.subarray(0, 2), head, ascii('Exif\0\0'), exif, jpeg.subarray(2));
}

/** A JPEG without any EXIF block: a copy with its APP1 segments left out. */
export function withoutExif(jpeg: Uint8Array): Uint8Array {
  const kept = [jpeg.subarray(0, 2)];
  let at = 2;
  while (jpeg[at + 1] !== 0xda) {
    const end = at + 2 + jpeg[at + 2] * 256 + jpeg[at + 3];
    if (jpeg[at + 1] !== 0xe1) kept.push(jpeg.subarray(at, end));
    at = end;
  }
  return concat(...kept, jpeg.subarray(at));
}

/** A plain grey JPEG of any size, a few bits per block: ITU-T T.81 baseline, one component, with
 *  one-bit codes for 'no change' and 'end of block', so that its coded data are all zeros. */
export function makeFlatJpeg(width: number, height: number): Uint8Array {
  const size = [height >> 8, height & 255, width >> 8, width & 255];
  const oneCode = [1, ...Array<number>(15).fill(0), 0];
  const blocks = Math.ceil(width / 8) * Math.ceil(height / 8);
  return concat(
    Uint8Array.of(0xff, 0xd8),
    Uint8Array.of(0xff, 0xdb, 0, 67, 0, ...Array<number>(64).fill(16)),
    Uint8Array.of(0xff, 0xc0, 0, 11, 8, ...size, 1, 1, 0x11, 0),
    Uint8Array.of(0xff, 0xc4, 0, 20, 0x00, ...oneCode),
    Uint8Array.of(0xff, 0xc4, 0, 20, 0x10, ...oneCode),
    Uint8Array.of(0xff, 0xda, 0, 8, 1, 1, 0x00, 0, 63, 0),
    new Uint8Array(Math.ceil((2 * blocks) / 8)),
    Uint8Array.of(0xff, 0xd9),
  );
}

const { resolve } = createRequire(import.meta.url);

async function compiled(file: string): Promise<WebAssembly.Module> {
  return WebAssembly.compile(await readFile(resolve(file)));
}

async function toImageData({ width, height, data }: GreyImage): Promise<ImageData> {
  await nodeDecoders.png(); // provides ImageData
  const rgba = new Uint8ClampedArray(4 * data.length);
  data.forEach((value, i) => {
    rgba.set([value, value, value, 255], 4 * i);
  });
  return new ImageData(rgba, width, height);
}

export async function makeJpeg(image: GreyImage, quality = 90): Promise<Uint8Array> {
  const { default: encode, init } = await import('@jsquash/jpeg/encode.js');
  await init(await compiled('@jsquash/jpeg/codec/enc/mozjpeg_enc.wasm'));
  return new Uint8Array(await encode(await toImageData(image), { quality }));
}

export async function makeWebp(image: GreyImage, lossless: boolean): Promise<Uint8Array> {
  const { default: encode, init } = await import('@jsquash/webp/encode.js');
  await init(await compiled('@jsquash/webp/codec/enc/webp_enc.wasm'));
  const options = lossless ? { lossless: 1, exact: 1 } : { quality: 90 };
  return new Uint8Array(await encode(await toImageData(image), options));
}
