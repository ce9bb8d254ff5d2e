import { ok, type Result, refuse } from '../../quantity/result';
import { card as cardPrint } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import { project } from '../2-card-pose/camera';
import type { FoundCard } from '../2-card-pose/find-card';
import type { FoundFitting } from '../3-silhouette/find-fitting';
import type { RefusalReason } from '../identification';
import { photoAt } from './axis-frame';
import { placeThread, type ThreadPlace } from './thread-place';

/** Rows that repeat, as a share of the thread's width: below this it may be anything. */
const weakest = 0.22;

/** The thread on the fitting, along the mirror line on which it repeats best. */
export function findThread(
  grey: GreyImage,
  card: FoundCard,
  fitting: FoundFitting,
): Result<ThreadPlace, RefusalReason> {
  const strength = (place: ThreadPlace) =>
    place.zone.strength / Math.max(1, place.zone.reachLeftMm + place.zone.reachRightMm);
  let place: ThreadPlace | null = null;
  // Across the axis, stub and hex repeat too, a little: the best mirror line has it, unless a nearly
  // equal one shows a thread where it shows none.
  for (const axis of fitting.axes.slice(0, 2)) {
    if (axis.symmetry < 0.75 * fitting.axes[0].symmetry) break;
    const next = placeThread(grey, card.camera, fitting.view, fitting.blob, axis, fitting.field);
    if (!next || strength(next) < weakest) continue;
    place = next;
    break;
  }
  if (!place) return explain(card, grey);
  const { frame, zone } = place;
  const reach = Math.max(zone.reachLeftMm, zone.reachRightMm);
  const margin = 3;
  for (const s of [zone.fromS, zone.toS])
    for (const r of [reach, -reach]) {
      const [x, y] = photoAt(card.camera, frame, s, r);
      if (x < margin || y < margin || x > grey.width - margin || y > grey.height - margin)
        return refuse(
          'cut-off',
          'The thread runs out of the photo: show all of it, with the card around it.',
        );
    }
  return ok(place);
}

function explain(card: FoundCard, grey: GreyImage): Result<ThreadPlace, RefusalReason> {
  const a = project(card.camera, [88, 68, 0]);
  const b = project(card.camera, [96, 68, 0]);
  const pxPerMm = Math.hypot(a[0] - b[0], a[1] - b[1]) / 8;
  if (card.blurPx > 0.25 * pxPerMm)
    return refuse(
      'too-blurred',
      'The photo is too blurred for a thread: hold still, tap to focus on the thread, and use more light.',
    );
  if (pxPerMm < 4.5)
    return refuse(
      'too-coarse',
      'The thread has too few pixels: go nearer, or send the photo in full size.',
    );
  if (!showsWindow(card, grey))
    return refuse(
      'cut-off',
      'The photo ends within the card’s window and shows no whole thread: show all of the card.',
    );
  return refuse(
    'no-thread',
    'No thread is seen on the fitting: turn it so that its thread lies in full view, and avoid glare.',
  );
}

function showsWindow({ camera }: FoundCard, { width, height }: GreyImage): boolean {
  const { xMm, yMm, widthMm, heightMm } = cardPrint.window;
  return [0, 1, 2, 3].every((corner) => {
    const x = xMm + (corner % 2) * widthMm;
    const y = yMm + (corner >> 1) * heightMm;
    const at = project(camera, [x, y, 0]);
    return at[0] >= 0 && at[1] >= 0 && at[0] < width && at[1] < height;
  });
}
