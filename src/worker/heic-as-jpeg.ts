import type { Rgba } from '../journey/1-photo/decode-colour';
import { decodeHeicColour } from '../journey/1-photo/decode-heif';
import { sniffFormat } from '../journey/1-photo/file-format';
import type { Decoders } from '../journey/1-photo/photo';
import { readHeader } from '../journey/1-photo/photo-header';

/** For the screen and for keeping, in colour and upright; what is measured is the photo itself. */
export async function heicAsJpeg(bytes: Uint8Array, decoders: Decoders): Promise<Blob | null> {
  const { kind } = sniffFormat(bytes);
  if (kind !== 'heif' || readHeader(kind, bytes)?.codec !== 'heic') return null;
  const canvas = await decodeHeicColour(await decoders.heic(), bytes, painted);
  return canvas?.convertToBlob({ type: 'image/jpeg', quality: 0.95 }) ?? null;
}

/** In strips: a copy of 48 megapixels in colour would take another 200 MB. */
function painted({ width, height, data }: Rgba): OffscreenCanvas {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d')!;
  for (let top = 0; top < height; top += stripRows) {
    const rows = Math.min(stripRows, height - top);
    const strip = new ImageData(width, rows);
    strip.data.set(data.subarray(4 * width * top, 4 * width * (top + rows)));
    context.putImageData(strip, 0, top);
  }
  return canvas;
}

const stripRows = 256;
