import type { ThreadSolution } from './thread-solution';

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
