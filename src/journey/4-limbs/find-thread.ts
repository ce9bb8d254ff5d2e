import { ok, type Result, refuse } from '../../quantity/result';
import { cardMiddle } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import { type PosedCamera, project } from '../2-card-pose/camera';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { photoAt } from '../4-thread-signal/axis-frame';
import type { Corrections, RefusalReason } from '../identification';
import { findThreads, threadsAlong } from './find-threads';
import { likeliestThread } from './likeliest-thread';
import type { SeatedThread } from './seat-thread';
import type { ThreadGuess } from './threads-on-axis';

/** Logarithm of the odds below which a seat is more likely wrong than right. */
const leastOdds = 0;

type Axis = NonNullable<Corrections['axis']>;

/** The thread on the fitting: of all that repeats along some axis, what surface and limbs speak for most;
 *  along the axis that a person has drawn, where one has. */
export function findThread(
  grey: GreyImage,
  reference: Reference,
  fitting: FoundFitting | null,
  drawn: Corrections['axis'],
): Result<SeatedThread, RefusalReason> {
  const { camera } = reference;
  const found = fitting ? findThreads(grey, reference, fitting) : [];
  const seat = drawn
    ? likeliestThread(grey, camera, alongDrawn(grey, camera, found, drawn))
    : likeliestThread(grey, camera, found);
  if (!seat || (!drawn && seat.odds < leastOdds)) return explain(reference, grey);
  const { frame, zone, crests } = seat;
  const margin = 3;
  for (const s of [zone.fromS, zone.toS])
    for (const r of [crests.radiusMm, -crests.radiusMm]) {
      const [x, y] = photoAt(camera, frame, s, r);
      if (x < margin || y < margin || x > grey.width - margin || y > grey.height - margin)
        return refuse(
          'cut-off',
          'The thread runs out of the photo: show all of it, and all of the card or sheet.',
        );
    }
  return ok(seat);
}

/** Of a drawn axis, shares of its length: how far the ends of a thread that is found may lie beside it, and its middle
 *  beyond its ends; a hand is that steady (judgement). */
const beside = 0.15;
const beyond = 0.1;

/** What repeats along the drawn axis, then what is found there without it; the free end is where the person has begun. */
function* alongDrawn(
  grey: GreyImage,
  camera: PosedCamera,
  found: Iterable<ThreadGuess>,
  drawn: Axis,
): Iterable<ThreadGuess> {
  for (const guess of threadsAlong(grey, camera, drawn)) yield { ...guess, freeEndFirst: true };
  const [from, to] = drawn;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length2 = dx * dx + dy * dy;
  for (const guess of found) {
    const ends = [guess.zone.fromS, guess.zone.toS].map((s) => {
      const at = photoAt(camera, guess.frame, s, 0);
      const [x, y] = [at[0] - from[0], at[1] - from[1]];
      return { along: (x * dx + y * dy) / length2, aside: Math.abs(x * dy - y * dx) / length2 };
    });
    const middle = (ends[0].along + ends[1].along) / 2;
    if (ends.every(({ aside }) => aside < beside) && middle > -beyond && middle < 1 + beyond)
      yield { ...guess, freeEndFirst: ends[1].along > ends[0].along };
  }
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
