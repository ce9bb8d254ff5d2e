import { middleValue } from '../../quantity/order';
import type { Extent } from '../4-thread-signal/axis-frame';
import type { OutlinePoint } from '../4-thread-signal/outline-edges';
import type { ThreadFit } from './fit-thread';

/** A zone without the turns at its ends whose crests fall short of the rest: the helix enters over a
 *  chamfer and leaves into a run-out. Both sides' crests are held against the fit; no more than
 *  two turns and a half go at either end, and at least four stay. */
export function completeTurns(
  points: readonly OutlinePoint[],
  fit: ThreadFit,
  zone: Extent,
): Extent {
  const p = fit.pitchMm;
  const crests = new Map<number, number[]>();
  points.forEach((q) => {
    const phase = (q.s - fit.crestS) / p + (q.side === 'left' ? 0 : 0.5);
    const nearest = Math.round(phase);
    if (Math.abs(phase - nearest) > 0.17) return;
    const turn = 2 * nearest - (q.side === 'left' ? 0 : 1);
    const list = crests.get(turn) ?? [];
    list.push(q.r - fit.modelAt(q.side, q.s, q.slope));
    crests.set(turn, list);
  });
  /** How far the crest stands out beyond the fit, in what it may by chance; none where none is seen. */
  const standing = (turn: number): number | null => {
    const list = crests.get(turn);
    if (!list || list.length < 3) return null;
    const noise = (1.5 * fit.scatterMm) / Math.sqrt(list.length / 2);
    return middleValue(list) / Math.max(0.022 * p, 2 * noise);
  };
  const clear = fit.scatterMm < 0.05 * p;
  /** One crest falls short, or, on an outline that is clear elsewhere, neither is where it belongs. */
  const unfinished = (turns: readonly number[]) => {
    const seen = turns.map(standing);
    return (
      seen.some((v) => v !== null && v < -1) ||
      (clear && seen.every((v) => v === null || Math.abs(v) > 1))
    );
  };
  const hop = p / 2;
  let { fromS, toS } = zone;
  const turnAt = (s: number) => Math.round((2 * (s - fit.crestS)) / p);
  for (let k = 0; k < 5 && toS - fromS > 4.5 * p; k++) {
    if (!unfinished([0.25, 0.75].map((f) => turnAt(fromS + f * p)))) break;
    fromS += hop;
  }
  for (let k = 0; k < 5 && toS - fromS > 4.5 * p; k++) {
    if (!unfinished([0.25, 0.75].map((f) => turnAt(toS - f * p)))) break;
    toS -= hop;
  }
  return { fromS, toS };
}
