import type { Rgba } from '../journey/1-photo/decode-colour';
import { decodeHeic } from '../journey/1-photo/decode-heif';
import { sniffFormat } from '../journey/1-photo/file-format';
import type { Decoders } from '../journey/1-photo/photo';
import { readHeader } from '../journey/1-photo/photo-header';

/** For the screen and for keeping, in colour and upright; what is measured is the photo itself. */
export async function heicAsJpeg(bytes: Uint8Array, decoders: Decoders): Promise<Blob | null> {
  const { kind } = sniffFormat(bytes);
  if (kind !== 'heif' || readHeader(kind, bytes)?.codec !== 'heic') return null;
  const canvas = await decodeHeic(await decoders.heic(), bytes, painted);
  return canvas?.convertToBlob({ type: 'image/jpeg', quality: 0.95 }) ?? null;
}

function painted({ width, height, data }: Rgba): OffscreenCanvas {
  const canvas = new OffscreenCanvas(width, height);
  const pixels = new ImageData(width, height);
  pixels.data.set(data);
  canvas.getContext('2d')!.putImageData(pixels, 0, 0);
  return canvas;
}
