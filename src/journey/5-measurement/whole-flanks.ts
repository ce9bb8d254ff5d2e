import { middleValue } from '../../quantity/order';
import type { OutlinePoint, Side } from '../4-thread-signal/outline-edges';
import type { ThreadFit } from './fit-thread';
import { type Flank, flankOf, flanksOf } from './flanks';

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
    middleValue(inner.map(({ shiftMm }) => Math.abs(shiftMm))) / 0.6745,
    leastShift * fit.pitchMm,
  );
  const usualPoints = middleValue(inner.map((flank) => flank.points));
  const whole = (flank: Flank) =>
    Math.abs(flank.shiftMm) < offLimit * usualShift && flank.points > fewest * usualPoints;
  let first = 0;
  while (first < mostCut && !whole(flanks[first])) first++;
  let last = flanks.length - 1;
  while (last > flanks.length - 1 - mostCut && !whole(flanks[last])) last--;
  return [flanks[first].index, flanks[last].index];
}
