import { cholesky } from '../../src/quantity/matrix';
import type { Model } from '../../src/quantity/propagate';
import type { Random } from '../../src/quantity/random';

/** Draws one value of every input. */
export type Draw = (random: Random) => Float64Array;

export interface OutputSample {
  readonly mean: number;
  readonly u: number;
  /** Probabilistically symmetric 95 % interval (JCGM 101:2008, 5.3.3). */
  readonly low: number;
  readonly high: number;
  readonly sorted: Float64Array;
}

/** Propagation of distributions by Monte Carlo, JCGM 101:2008, clause 7: the check on propagate.ts
 *  where the model bends or the inputs are not normal. */
export function monteCarlo(
  model: Model,
  draw: Draw,
  trials: number,
  random: Random,
): OutputSample[] {
  let columns: Float64Array[] = [];
  for (let t = 0; t < trials; t++) {
    const y = model(draw(random));
    if (t === 0) columns = Array.from({ length: y.length }, () => new Float64Array(trials));
    for (let i = 0; i < y.length; i++) columns[i][t] = y[i];
  }
  return columns.map(summary);
}

function summary(values: Float64Array): OutputSample {
  const n = values.length;
  let mean = 0;
  for (const v of values) mean += v / n;
  let variance = 0;
  for (const v of values) variance += (v - mean) ** 2 / (n - 1);
  const sorted = values.sort();
  // q = pM rounded, r = (M − q)/2 rounded: JCGM 101:2008, 7.7.2.
  const q = Math.round(0.95 * n);
  const r = Math.round((n - q) / 2);
  return {
    mean,
    u: Math.sqrt(variance),
    low: sorted[Math.max(0, r - 1)],
    high: sorted[Math.min(n - 1, r + q - 1)],
    sorted,
  };
}

/** Joint normal inputs. Inputs without uncertainty stay at their value. Throws on a covariance that
 *  is none. */
export function normalDraw(means: ArrayLike<number>, sigma: ArrayLike<number>): Draw {
  const n = means.length;
  const free = Array.from({ length: n }, (_, i) => i).filter((i) => sigma[i * n + i] > 0);
  const k = free.length;
  const L = cholesky(
    free.flatMap((i) => free.map((j) => sigma[i * n + j])),
    k,
  );
  if (!L) throw new RangeError('covariance is not positive definite');
  return (random) => {
    const x = Float64Array.from(means);
    const z = Float64Array.from({ length: k }, () => random.normal());
    for (let a = 0; a < k; a++) for (let b = 0; b <= a; b++) x[free[a]] += L[a * k + b] * z[b];
    return x;
  };
}
