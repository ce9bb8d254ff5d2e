import { ok, type Result, refuse } from '../../quantity/result';
import type { GreyImage } from '../../vision/grey-image';
import { project } from '../2-card-pose/camera';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-silhouette/find-fitting';
import type { RefusalReason } from '../identification';
import { photoAt } from './axis-frame';
import { placeThread, type ThreadPlace } from './thread-place';

/** Rows that repeat, as a share of the thread's width: below this it may be anything. */
const weakest = 0.22;

/** The thread on the fitting, along the mirror line on which it repeats best. */
export function findThread(
  grey: GreyImage,
  reference: Reference,
  fitting: FoundFitting,
): Result<ThreadPlace, RefusalReason> {
  const strength = (place: ThreadPlace) =>
    place.zone.strength / Math.max(1, place.zone.reachLeftMm + place.zone.reachRightMm);
  let place: ThreadPlace | null = null;
  // Across the axis, stub and hex repeat too, a little: the best mirror line has it, unless a nearly
  // equal one shows a thread where it shows none.
  for (const axis of fitting.axes.slice(0, 2)) {
    if (axis.symmetry < 0.75 * fitting.axes[0].symmetry) break;
    const next = placeThread(
      grey,
      reference.camera,
      fitting.view,
      fitting.blob,
      axis,
      fitting.field,
    );
    if (!next || strength(next) < weakest) continue;
    place = next;
    break;
  }
  if (!place) return explain(reference, grey);
  const { frame, zone } = place;
  const reach = Math.max(zone.reachLeftMm, zone.reachRightMm);
  const margin = 3;
  for (const s of [zone.fromS, zone.toS])
    for (const r of [reach, -reach]) {
      const [x, y] = photoAt(reference.camera, frame, s, r);
      if (x < margin || y < margin || x > grey.width - margin || y > grey.height - margin)
        return refuse(
          'cut-off',
          'The thread runs out of the photo: show all of it, and all of the card or sheet.',
        );
    }
  return ok(place);
}

function explain(reference: Reference, grey: GreyImage): Result<ThreadPlace, RefusalReason> {
  const a = project(reference.camera, [88, 68, 0]);
  const b = project(reference.camera, [96, 68, 0]);
  const pxPerMm = Math.hypot(a[0] - b[0], a[1] - b[1]) / 8;
  if (reference.blurPx > 0.25 * pxPerMm)
    return refuse(
      'too-blurred',
      'The photo is too blurred for a thread: hold still, tap to focus on the thread, and use more light.',
    );
  if (pxPerMm < 4.5)
    return refuse(
      'too-coarse',
      'The thread has too few pixels: go nearer, or send the photo in full size.',
    );
  if (reference.kind === 'card' && !showsWindow(reference, grey))
    return refuse(
      'cut-off',
      'The photo ends within the card’s window and shows no whole thread: show all of the card.',
    );
  return refuse(
    'no-thread',
    'No thread is seen on the fitting: turn it so that its thread lies in full view, and avoid glare.',
  );
}

function showsWindow({ camera, search }: Reference, { width, height }: GreyImage): boolean {
  return search.polygon.every(([x, y]) => {
    const at = project(camera, [x, y, 0]);
    return at[0] >= 0 && at[1] >= 0 && at[0] < width && at[1] < height;
  });
}
