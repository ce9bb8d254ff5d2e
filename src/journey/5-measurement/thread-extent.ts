import type { OutlinePoint } from '../4-thread-signal/outline-edges';
import type { ThreadFit } from './fit-thread';

export interface Extent {
  readonly fromS: number;
  readonly toS: number;
}

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
