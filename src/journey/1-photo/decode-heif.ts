import type { GreyImage } from '../../vision/grey-image';
import { ownBuffer, type Rgba, toGrey } from './decode-colour';
import { type HeicFault, type HeicPlane, withHeic } from './heic-decoder';
import { isHevcHollow } from './hevc-hollow';

/** The primary image's luma, turned and clipped as its container asks; `reduction` 2 takes the mean of four
 *  pixels. Of a telephone's photo the coded luma itself: in colour 48 megapixels would take 200 MB more. */
export async function decodeHeic(
  module: WebAssembly.Module,
  bytes: Uint8Array,
  reduction: 1 | 2,
): Promise<GreyImage | HeicFault> {
  if (isHevcHollow(bytes)) return 'damaged';
  return withHeic(module, bytes, (decoder) => {
    const luma = decoder.luma();
    const plane = luma ?? greyOf(rowsTogether(decoder.colour()));
    return reduction === 2 ? halved(plane) : rowsOf(plane);
  });
}

/** The same in colour. `take` reads from the decoder's own memory, which ends with this call: a colour copy
 *  of a 12 MP photo would be another 48 MB. Null when the file is damaged or too large. */
export async function decodeHeicColour<T extends object>(
  module: WebAssembly.Module,
  bytes: Uint8Array,
  take: (image: Rgba) => T,
): Promise<T | null> {
  if (isHevcHollow(bytes)) return null;
  const taken = await withHeic(module, bytes, (decoder) => take(rowsTogether(decoder.colour())));
  return typeof taken === 'string' ? null : taken;
}

function rowsTogether({ width, height, stride, data }: HeicPlane): Rgba {
  return { width, height, data: packed(data, stride, 4 * width, height) };
}

function greyOf(image: Rgba): HeicPlane {
  return { ...toGrey(image), stride: image.width };
}

function rowsOf({ width, height, stride, data }: HeicPlane): GreyImage {
  const rows = packed(data, stride, width, height);
  // Out of the decoder's memory.
  return { width, height, data: rows === data ? data.slice() : rows };
}

function packed(data: Uint8Array, stride: number, length: number, rows: number): Uint8Array {
  if (stride === length) return data;
  const together = new Uint8Array(length * rows);
  for (let y = 0; y < rows; y++)
    together.set(data.subarray(y * stride, y * stride + length), length * y);
  return together;
}

/** Means of two by two pixels, rounded; an odd last row or column stands for the next one too. */
function halved({ width, height, stride, data }: HeicPlane): GreyImage {
  const half = { width: Math.ceil(width / 2), height: Math.ceil(height / 2) };
  const means = new Uint8Array(half.width * half.height);
  for (let y = 0, i = 0; y < half.height; y++) {
    const upper = 2 * y * stride;
    const lower = Math.min(2 * y + 1, height - 1) * stride;
    for (let x = 0; x < half.width; x++, i++) {
      const left = 2 * x;
      const right = Math.min(left + 1, width - 1);
      means[i] =
        (data[upper + left] + data[upper + right] + data[lower + left] + data[lower + right] + 2) >>
        2;
    }
  }
  return { ...half, data: means };
}

/** AVIF in colour, as stored: its turns are the reader's. Null when the file is damaged. */
export async function decodeAvif<T>(
  module: WebAssembly.Module,
  bytes: Uint8Array,
  take: (image: Rgba) => T,
): Promise<T | null> {
  const { default: decode, init } = await import('@jsquash/avif/decode.js');
  try {
    // The package's types leave out the compiled module that it takes first.
    await (init as (module: unknown) => Promise<void>)(module);
    const image = await decode(ownBuffer(bytes));
    return image && take(image);
  } catch {
    return null;
  }
}
