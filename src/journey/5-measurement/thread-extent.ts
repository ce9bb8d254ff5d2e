import { middleValue } from '../../quantity/order';
import type { Extent } from '../4-thread-signal/axis-frame';
import type { OutlinePoint } from '../4-thread-signal/outline-edges';
import type { ThreadFit } from './fit-thread';

/** Grows a zone in steps of half a pitch while what is seen there agrees with the thread in it, over at
 *  most one doubtful step: run-outs, chamfers and relief end the thread, not a constant. */
export function grownWhile(
  good: (fromS: number, toS: number) => boolean,
  zone: Extent,
  limits: Extent,
  pitchMm: number,
): Extent {
  const hop = pitchMm / 2;
  let { fromS, toS } = zone;
  const grow = (at: number, direction: 1 | -1): number => {
    let reached = at;
    let doubts = 0;
    for (let s = at; doubts < 2; s += direction * hop) {
      const next = s + direction * hop;
      if (next < limits.fromS || next > limits.toS) break;
      if (good(Math.min(s, next), Math.max(s, next))) {
        reached = next;
        doubts = 0;
      } else doubts++;
    }
    return reached;
  };
  fromS = grow(fromS, -1);
  toS = grow(toS, 1);
  return { fromS, toS };
}

/** Whether the outline between two axial positions lies on the fitted thread, on either side. */
export function outlineAgrees(
  points: readonly OutlinePoint[],
  fit: ThreadFit,
  fromS: number,
  toS: number,
): boolean {
  const tolerance = Math.max(0.07 * fit.pitchMm, 2.5 * fit.scatterMm);
  return (['left', 'right'] as const).some((side) => {
    const here = points.filter((q) => q.side === side && q.s >= fromS && q.s < toS);
    if (here.length < 4) return false;
    const near = here.filter((q) => Math.abs(q.r - fit.modelAt(side, q.s, q.slope)) < tolerance);
    return near.length > 0.7 * here.length;
  });
}

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
