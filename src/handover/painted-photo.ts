import { paintFace } from '../journey/2-reference/paint-face';
import { type CameraFacts, withCameraFacts } from '../journey/8-sheet/jpeg-camera-facts';
import type { PhotoPoint } from '../journey/overlay';
import { ok, type Result, refuse } from '../quantity/result';

/** What has to be known of a photo to paint a card over in it. */
export interface CardInPhoto {
  /** Of the card's face, in pixels of the upright photo as it was measured. */
  readonly outline: readonly PhotoPoint[];
  readonly measuredSize: { readonly width: number; readonly height: number };
  readonly camera: CameraFacts;
}

const jpegQuality = 0.95;

/** The photo with the ID-1 card's face painted over, as a new JPEG: neither the file's own pixels nor its
 *  EXIF go over, whose thumbnail shows the card too. What measuring needs of it is written anew. Browser only (OffscreenCanvas). */
export async function paintedPhoto(
  photo: Blob,
  { outline, measuredSize, camera }: CardInPhoto,
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
  // Devices that cannot hold so large a canvas leave it clear, and say nothing.
  if (pixels.data[3] !== 255 || paintFace(pixels, outline, measuredSize) === 0) return unreadable;
  context.putImageData(pixels, 0, 0);
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: jpegQuality });
  const upright = { ...camera, orientation: 1 };
  const bytes = withCameraFacts(new Uint8Array(await blob.arrayBuffer()), upright);
  return ok(new Blob([bytes.slice()], { type: 'image/jpeg' }));
}

const unreadable = refuse(
  'unreadable' as const,
  'The card in this photo cannot be painted over here, so the photo is not kept: keep the numbers, or shoot the card’s back.',
);
