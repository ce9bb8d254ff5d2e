import type { SeenReference } from '../../journey/identification';
import { showable } from './showable';

/** A bank card lies in the photo and cannot be painted over: nothing of it is kept. */
class CannotPaint extends Error {
  override readonly name = 'CannotPaint';
}

/** The photo as this device may keep it: with a bank card's face painted over. */
export async function privatePhoto(photo: Blob, seen: SeenReference): Promise<Blob> {
  if (seen.kind !== 'id1') return photo;
  const [{ paintedPhoto }, { cameraFactsOf }, bytes, shown] = await Promise.all([
    import('../../handover/painted-photo'),
    import('../../journey/8-sheet/jpeg-camera-facts'),
    photo.arrayBuffer(),
    showable(photo),
  ]);
  const painted = await paintedPhoto(shown, {
    outline: seen.outline,
    measuredSize: { width: seen.widthPx, height: seen.heightPx },
    camera: cameraFactsOf(new Uint8Array(bytes)),
  });
  if (!painted.ok) throw new CannotPaint(painted.advice);
  return painted.value;
}
