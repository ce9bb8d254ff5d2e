import type { CameraFacts } from '../../journey/8-sheet/jpeg-camera-facts';
import type { StrippedJpeg } from '../../journey/8-sheet/jpeg-strip';
import type { Shot } from './open-sheet';
import { showable } from './showable';

export interface KeepablePhoto {
  readonly photo: StrippedJpeg;
  readonly camera: CameraFacts;
}

/** The photo as a sheet keeps it: a JPEG without EXIF, and the facts of it that measuring
 *  needs. Other formats are coded as JPEG, upright, for keeping only; they are measured as they came. */
export async function keepablePhoto(photo: Blob): Promise<KeepablePhoto> {
  const [{ stripJpeg }, { cameraFactsOf }] = await Promise.all([
    import('../../journey/8-sheet/jpeg-strip'),
    import('../../journey/8-sheet/jpeg-camera-facts'),
  ]);
  const original = new Uint8Array(await photo.arrayBuffer());
  const stripped = stripJpeg(original);
  const camera = cameraFactsOf(original);
  if (stripped.ok) return { photo: stripped.value, camera };
  const again = stripJpeg(await asJpeg(await showable(photo)));
  if (!again.ok) throw new Error(again.advice);
  return { photo: again.value, camera };
}

async function asJpeg(photo: Blob): Promise<Uint8Array> {
  if (photo.type === 'image/jpeg') return new Uint8Array(await photo.arrayBuffer());
  const image = await createImageBitmap(photo);
  const canvas = new OffscreenCanvas(image.width, image.height);
  canvas.getContext('2d')!.drawImage(image, 0, 0);
  image.close();
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 });
  return new Uint8Array(await blob.arrayBuffer());
}

/** A kept photo as a file that a decoder turns upright, for the screen and for measuring again. */
export async function uprightPhoto(bytes: Uint8Array, shot: Shot): Promise<Blob> {
  const { withCameraFacts } = await import('../../journey/8-sheet/jpeg-camera-facts');
  return new Blob([withCameraFacts(bytes, shot.photo).slice()], { type: 'image/jpeg' });
}
