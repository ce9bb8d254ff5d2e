import { paintFace } from '../journey/2-reference/paint-face';
import type { PhotoPoint } from '../journey/overlay';
import { ok, type Result, refuse } from '../quantity/result';

/** What has to be known of a photo to paint a card over in it. */
export interface CardInPhoto {
  /** Of the card's face, in pixels of the upright photo as it was measured. */
  readonly outline: readonly PhotoPoint[];
  readonly measuredSize: { readonly width: number; readonly height: number };
  readonly f35Mm: number | null;
}

const jpegQuality = 0.95;

/** The photo with the ID-1 card's face painted over, as a new JPEG: neither the file's own pixels nor its
 *  EXIF go over, whose thumbnail shows the card too. Its focal length is written anew, so that it
 *  can be measured again. Browser only (OffscreenCanvas). */
export async function paintedPhoto(
  photo: Blob,
  { outline, measuredSize, f35Mm }: CardInPhoto,
): Promise<Result<Blob, 'unreadable'>> {
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(photo, { imageOrientation: 'from-image' });
  } catch {
    return unreadable;
  }
  const { width, height } = bitmap;
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) return unreadable;
  context.drawImage(bitmap, 0, 0);
  bitmap.close();
  const pixels = context.getImageData(0, 0, width, height);
  paintFace(pixels, outline, measuredSize);
  context.putImageData(pixels, 0, 0);
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: jpegQuality });
  const bytes = withFocalLength(new Uint8Array(await blob.arrayBuffer()), f35Mm);
  return ok(new Blob([bytes.slice()], { type: 'image/jpeg' }));
}

const unreadable = refuse(
  'unreadable' as const,
  'The card in this photo cannot be painted over here, so the photo is not kept: keep the numbers, or shoot the card’s back.',
);

/** A JPEG without EXIF, with one that states the 35 mm equivalent and nothing else (CIPA DC-008; TIFF 6.0,
 *  section 2). */
export function withFocalLength(jpeg: Uint8Array, f35Mm: number | null): Uint8Array {
  if (f35Mm === null) return jpeg;
  const tiff = new DataView(new ArrayBuffer(8 + 18 + 18));
  const entry = (at: number, tag: number, type: number, value: number) => {
    tiff.setUint16(at, tag);
    tiff.setUint16(at + 2, type);
    tiff.setUint32(at + 4, 1);
    if (type === 3) tiff.setUint16(at + 8, value);
    else tiff.setUint32(at + 8, value);
  };
  tiff.setUint16(0, 0x4d4d); // MM
  tiff.setUint16(2, 42);
  tiff.setUint32(4, 8);
  tiff.setUint16(8, 1);
  entry(10, 0x8769, 4, 26); // ExifIFD
  tiff.setUint16(26, 1);
  entry(28, 0xa405, 3, Math.round(f35Mm)); // FocalLengthIn35mmFilm
  const name = [0x45, 0x78, 0x69, 0x66, 0, 0]; // Exif
  const length = 2 + name.length + tiff.byteLength;
  const block = [0xff, 0xe1, length >> 8, length & 255, ...name, ...new Uint8Array(tiff.buffer)];
  const out = new Uint8Array(jpeg.length + block.length);
  out.set(jpeg.subarray(0, 2));
  out.set(block, 2);
  out.set(jpeg.subarray(2), 2 + block.length);
  return out;
}
