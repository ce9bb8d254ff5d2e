import { ok, type Result, refuse } from '../../quantity/result';
import type { Helix } from '../4-thread-signal/helix';
import type { ThreadFit } from './fit-thread';
import type { ThreadSolution } from './solve-thread';

/** The hand by which the ridges climb, where they leave no doubt. */
export function handOf({ right, left }: Helix): 'right' | 'left' | null {
  if (Math.max(right, left) < 0.75 || Math.max(right, left) < 1.4 * Math.min(right, left))
    return null;
  return right > left ? 'right' : 'left';
}

/** Scatter of the right-handed fit over that of the left-handed one. */
export const contrastOf = (right: ThreadFit | null, left: ThreadFit | null): number =>
  !left ? 0 : !right ? Number.POSITIVE_INFINITY : right.scatterMm / left.scatterMm;

export const closer = (right: ThreadFit | null, left: ThreadFit | null): ThreadFit =>
  (contrastOf(right, left) <= 1 ? right : left) as ThreadFit;

/** Share of the surface's pattern that a pitch explains at least, on threads whose outline has faded. */
const leastExplained = 0.45;

/** Barbs and knurls repeat too, and chance finds a period in anything. Where neither the outline keeps to
 *  a thread, nor most of the surface repeats and climbs like one, a period is no pitch. */
export function climbsLikeAThread({ fit, ridges }: ThreadSolution): Result<true, 'no-thread'> {
  if (fit.scatterMm < 0.12 * fit.pitchMm) return ok(true);
  if (ridges && ridges.explained > leastExplained) {
    const { right, left } = ridges.helix;
    if (Math.max(right, left) > 0.6) return ok(true);
  }
  return refuse(
    'no-thread',
    'What repeats on the fitting does not climb like a thread: turn the part so that its thread lies in full view, and light it from the side.',
  );
}
