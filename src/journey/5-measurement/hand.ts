import type { Helix } from '../4-thread-signal/helix';
import type { ThreadFit } from './fit-thread';

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
