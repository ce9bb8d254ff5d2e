import { ok, type Result, refuse } from '../../quantity/result';
import { cardMiddle } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import { type PosedCamera, project } from '../2-card-pose/camera';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { photoAt } from '../4-thread-signal/axis-frame';
import type { Corrections, RefusalReason } from '../identification';
import { alongDrawn, findThreads } from './find-threads';
import type { SeatedThread } from './seat-thread';
import { type ThreadSearch, threadSearch } from './thread-search';

/** Logarithm of the odds below which a seat is more likely wrong than right. */
const leastOdds = 0;

/** Seats of all that repeats along some axis; along the axis that a person has drawn, where one has. */
export function searchThread(
  grey: GreyImage,
  reference: Reference,
  fitting: FoundFitting | null,
  drawn: Corrections['axis'],
): ThreadSearch {
  const { camera } = reference;
  const found = fitting ? findThreads(grey, reference, [fitting, ...fitting.pieces]) : [];
  return threadSearch(grey, camera, drawn ? alongDrawn(grey, camera, found, drawn) : found);
}

/** The thread on the fitting, as far as a search goes. */
export const findThread = (
  grey: GreyImage,
  reference: Reference,
  fitting: FoundFitting | null,
  drawn: Corrections['axis'],
): Result<SeatedThread, RefusalReason> =>
  threadFound(searchThread(grey, reference, fitting, drawn)(), grey, reference, drawn);

/** A seat, where surface and limbs speak for a thread, or what to do. */
export function threadFound(
  seat: SeatedThread | null,
  grey: GreyImage,
  reference: Reference,
  drawn: Corrections['axis'],
): Result<SeatedThread, RefusalReason> {
  if (!seat || (!drawn && seat.odds < leastOdds)) return explain(reference, grey);
  if (runsOut(grey, reference.camera, seat))
    return refuse(
      'cut-off',
      'The thread runs out of the photo: show all of it, and all of the card or sheet.',
    );
  return ok(seat);
}

const marginPx = 3;

/** Whether a thread reaches the photo's rim. */
export function runsOut(
  { width, height }: GreyImage,
  camera: PosedCamera,
  { frame, zone, crests }: SeatedThread,
): boolean {
  return [zone.fromS, zone.toS].some((s) =>
    [crests.radiusMm, -crests.radiusMm].some((r) => {
      const [x, y] = photoAt(camera, frame, s, r);
      return x < marginPx || y < marginPx || x > width - marginPx || y > height - marginPx;
    }),
  );
}

function explain(reference: Reference, grey: GreyImage): Result<SeatedThread, RefusalReason> {
  const [x, y] = cardMiddle;
  const a = project(reference.camera, [x - 4, y, 0]);
  const b = project(reference.camera, [x + 4, y, 0]);
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
  if (reference.kind === 'card' && !showsWindow(reference, grey)) return cutWithinWindow;
  return refuse(
    'no-thread',
    'No thread is seen on the fitting: turn it so that its thread lies in full view, and avoid glare.',
  );
}

export const cutWithinWindow = refuse(
  'cut-off' as const,
  'The photo ends within the card’s window and shows no whole thread: show all of the card.',
);

export function showsWindow({ camera, search }: Reference, { width, height }: GreyImage): boolean {
  return search.polygon.every(([x, y]) => {
    const at = project(camera, [x, y, 0]);
    return at[0] >= 0 && at[1] >= 0 && at[0] < width && at[1] < height;
  });
}
