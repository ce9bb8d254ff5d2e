import { flanksOf, median } from './flanks';
import type { ThreadSolution } from './solve-thread';

/** By how much the two sides' own pitches differ, relative, when that is beyond chance; else 0. A shadow
 *  draws the same teeth on the paper, farther away and so smaller, beside the side it falls on. */
export function sidesApart({ points, fit }: ThreadSolution): number {
  const h = 0.01;
  const [left, right] = (['left', 'right'] as const).map((side) => {
    let w = 0;
    let x = 0;
    let y = 0;
    let xx = 0;
    let xy = 0;
    let yy = 0;
    let n = 0;
    points.forEach((q, i) => {
      if (q.side !== side) return;
      const at = (s: number) => fit.modelAt(side, s, q.slope);
      const rise = (at(q.s + h) - at(q.s - h)) / (2 * h);
      if (Math.abs(rise) < 0.15) return;
      const weight = fit.weights[i] * rise * rise;
      const t = q.s - fit.middleS;
      const shift = (at(q.s) - q.r) / rise;
      w += weight;
      x += weight * t;
      y += weight * shift;
      xx += weight * t * t;
      xy += weight * t * shift;
      yy += weight * shift * shift;
      n++;
    });
    const sxx = xx - (x * x) / w;
    const sxy = xy - (x * y) / w;
    const syy = yy - (y * y) / w;
    // Neighbouring cuts share what they see: about every eighth is new.
    return { slope: sxy / sxx, variance: ((8 / n) * (syy - (sxy * sxy) / sxx)) / sxx };
  });
  const apart = Math.abs(left.slope - right.slope);
  return apart > 0.008 && apart * apart > 6 * (left.variance + right.variance) ? apart : 0;
}

/** A lamp that outshines the room throws the thread's shadow on the paper. From beside the lens, the
 *  shadow adjoins the metal, so wide: a phone's lens and lamp are about 14 mm apart (common practice). */
export function lampShadowMm(heightMm: number, cameraHeightMm: number): number {
  return (14 * heightMm) / (cameraHeightMm - heightMm);
}

/** χ² of two degrees beyond which chance is not believed any more, from not at all to quite. */
const chance = { from: 6, to: 14 };
const leastPx = 0.12;

/** 0…1: whether one side's teeth stand out of step with the other's, or are wider, beyond chance. A shadow
 *  that adjoins the metal moves a side's outline along the axis too, and fills its roots. */
export function sidesOutOfStep({ points, fit, mmPerPx }: ThreadSolution): number {
  const [left, right] = (['left', 'right'] as const).map((side) => {
    const flanks = flanksOf(points, fit, side);
    const [down, up] = [0, 1].map((odd) =>
      meanOf(flanks.filter(({ index }) => Math.abs(index % 2) === odd).map((f) => f.shiftMm)),
    );
    return {
      shift: (down.mean + up.mean) / 2,
      halfWidth: (down.mean - up.mean) / 2,
      variance: (down.variance + up.variance) / 4,
    };
  });
  const square = (left.shift - right.shift) ** 2 + (left.halfWidth - right.halfWidth) ** 2;
  if (!(square > (leastPx * mmPerPx) ** 2)) return 0;
  const chi2 = square / (left.variance + right.variance);
  return Math.max(0, Math.min(1, (chi2 - chance.from) / (chance.to - chance.from)));
}

/** Middle of what most agree on, and its variance. */
function meanOf(values: readonly number[]): { readonly mean: number; readonly variance: number } {
  if (values.length < 3) return { mean: 0, variance: Number.POSITIVE_INFINITY };
  const mean = median(values);
  const spread = 1.4826 * median(values.map((v) => Math.abs(v - mean)));
  return { mean, variance: (1.57 * spread * spread) / values.length };
}
