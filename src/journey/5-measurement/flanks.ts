import type { OutlinePoint, Side } from '../4-thread-signal/outline-edges';
import type { ThreadFit } from './fit-thread';

/** Half a turn of one side's outline: from the middle of a crest to the middle of a root. */
export interface Flank {
  /** Even ones run down from a crest, odd ones up to the next. */
  readonly index: number;
  /** By how much it lies further along the axis than the fit has it. */
  readonly shiftMm: number;
  readonly points: number;
}

export const flankOf = (fit: ThreadFit, { side, s }: OutlinePoint) =>
  Math.floor(2 * fit.phaseOf(side, s));

/** Of one side, in order along the axis. */
export function flanksOf(points: readonly OutlinePoint[], fit: ThreadFit, side: Side): Flank[] {
  const sums = new Map<number, { pull: number; slope2: number; points: number }>();
  const h = 0.01 * fit.pitchMm;
  for (const q of points) {
    if (q.side !== side) continue;
    const at = (s: number) => fit.modelAt(side, s, q.slope);
    const slope = (at(q.s + h) - at(q.s - h)) / (2 * h);
    // Crests and roots say nothing of where the flank is.
    if (Math.abs(slope) < 0.25) continue;
    const index = flankOf(fit, q);
    const sum = sums.get(index) ?? { pull: 0, slope2: 0, points: 0 };
    sum.pull -= (q.r - at(q.s)) * slope;
    sum.slope2 += slope * slope;
    sum.points++;
    sums.set(index, sum);
  }
  return [...sums.entries()]
    .sort(([a], [b]) => a - b)
    .map(([index, sum]) => ({ index, shiftMm: sum.pull / sum.slope2, points: sum.points }));
}
