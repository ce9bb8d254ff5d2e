import type { OutlinePoint, Side } from '../4-thread-signal/outline-edges';
import type { ThreadFit } from './fit-thread';

/** Half a turn of one side's outline: from the middle of a crest to the middle of a root. */
interface Flank {
  readonly index: number;
  /** By how much it lies further along the axis than the fit has it. */
  readonly shiftMm: number;
  readonly points: number;
}

/** A flank this many times further off than is usual is not whole, nor is one that shows this share of
 *  the usual points. */
const offLimit = 3;
const fewest = 0.6;
/** Flanks of a flawless outline still differ by this share of the pitch. */
const leastShift = 0.004;
/** At most so many go at either end of a side: one and a half turns. */
const mostCut = 3;

/** Points without the flanks at the ends of either side that lie elsewhere than the rest of the thread
 *  says: where a helix enters over a chamfer or leaves into a run-out, a flank is cut short, and the
 *  lever that it has on the pitch is the longest. */
export function onWholeFlanks(points: readonly OutlinePoint[], fit: ThreadFit): OutlinePoint[] {
  const kept = { left: wholeRange(points, fit, 'left'), right: wholeRange(points, fit, 'right') };
  return points.filter((q) => {
    const [from, to] = kept[q.side];
    const index = flankOf(fit, q);
    return index >= from && index <= to;
  });
}

const flankOf = (fit: ThreadFit, { side, s }: OutlinePoint) => Math.floor(2 * fit.phaseOf(side, s));

/** Indices of the first and last whole flank. */
function wholeRange(
  points: readonly OutlinePoint[],
  fit: ThreadFit,
  side: Side,
): readonly [number, number] {
  const flanks = flanksOf(points, fit, side);
  const inner = flanks.slice(2, -2);
  if (inner.length < 4) return [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const usualShift = Math.max(
    median(inner.map(({ shiftMm }) => Math.abs(shiftMm))) / 0.6745,
    leastShift * fit.pitchMm,
  );
  const usualPoints = median(inner.map((flank) => flank.points));
  const whole = (flank: Flank) =>
    Math.abs(flank.shiftMm) < offLimit * usualShift && flank.points > fewest * usualPoints;
  let first = 0;
  while (first < mostCut && !whole(flanks[first])) first++;
  let last = flanks.length - 1;
  while (last > flanks.length - 1 - mostCut && !whole(flanks[last])) last--;
  return [flanks[first].index, flanks[last].index];
}

function flanksOf(points: readonly OutlinePoint[], fit: ThreadFit, side: Side): Flank[] {
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

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1];
}
