import type { GreyImage } from '../../vision/grey-image';

/** PNG to 8-bit grey. Null when the file is damaged. */
export async function decodePng(
  module: WebAssembly.Module,
  bytes: Uint8Array,
): Promise<GreyImage | null> {
  const { decode, init } = await import('@jsquash/png/decode.js');
  try {
    await init(module);
    return toGrey(await decode(ownBuffer(bytes)));
  } catch {
    return null;
  }
}

/** WebP to 8-bit grey. Null when the file is damaged. */
export async function decodeWebp(
  module: WebAssembly.Module,
  bytes: Uint8Array,
): Promise<GreyImage | null> {
  const { default: decode, init } = await import('@jsquash/webp/decode.js');
  try {
    await init(module);
    return toGrey(await decode(ownBuffer(bytes)));
  } catch {
    return null;
  }
}

export function ownBuffer(bytes: Uint8Array): ArrayBuffer {
  return bytes.slice().buffer;
}

export interface Rgba {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array | Uint8ClampedArray;
}

/** ITU-R BT.601 luma in 16-bit fixed point, rounded, as libjpeg computes Y; what is transparent
 *  lies on white, as viewers show it. */
export function toGrey({ width, height, data: rgba }: Rgba): GreyImage {
  const data = new Uint8Array(width * height);
  for (let i = 0, j = 0; i < data.length; i++, j += 4) {
    const y = (19595 * rgba[j] + 38470 * rgba[j + 1] + 7471 * rgba[j + 2] + 32768) >> 16;
    const alpha = rgba[j + 3];
    data[i] = alpha === 255 ? y : Math.round(255 + ((y - 255) * alpha) / 255);
  }
  return { width, height, data };
}
