import { middleValue } from '../../quantity/order';
import type { OutlinePoint } from '../4-thread-signal/outline-edges';
import type { OutlineModel } from './outline-model';
import type { OutlineParameters } from './outline-parameters';

/** How far the crests may be from where an outline that does not keep to the model has them, mm of
 *  radius: little while scatter is noise, all of a thread's depth when there is no outline. */
export function raggedMm(scatterMm: number, pitchMm: number): number {
  const share = scatterMm / pitchMm;
  return pitchMm * (0.45 * Math.max(0, share - 0.04) + 2 * Math.max(0, share - 0.1));
}

/** Of an outline that has not been seen, in pitches, and as how many edges that counts beside those that are: a
 *  handful that agree by chance have not shown how well an outline keeps to its thread. */
const unseen = { share: 0.08, edges: 12 };

/** Standard deviation of an outline's edges about a thread of this pitch, mm. */
export function scatterAbout(residuals: readonly number[], pitchMm: number): number {
  const n = residuals.length;
  const seen = n > 0 ? robustScatter(residuals) : 0;
  return Math.sqrt(
    (n * seen ** 2 + unseen.edges * (unseen.share * pitchMm) ** 2) / (n + unseen.edges),
  );
}

/** Standard deviation by the median, mm. */
export function robustScatter(residuals: readonly number[]): number {
  return Math.max(0.002, 1.4826 * (middleValue(residuals.map(Math.abs)) ?? 1));
}

export const cauchyWeights = (residuals: readonly number[], scatter: number): Float64Array =>
  Float64Array.from(residuals, (e) => 1 / (1 + (e / (2 * scatter)) ** 2));

/** How much of the outline runs up the teeth against how much runs down, weaker over stronger. */
export function flankBalance(
  points: readonly OutlinePoint[],
  model: OutlineModel,
  p: OutlineParameters,
  weights: Float64Array,
): number {
  const contours = model.contoursOf(p);
  const h = 0.01;
  let up = 1e-9;
  let down = 1e-9;
  points.forEach((q, i) => {
    const phase = model.phaseOf(p, q.side, q.s);
    const tilt = model.tilt(q.side, q.slope);
    const rise =
      model.toothAt(contours, tilt, phase + h) - model.toothAt(contours, tilt, phase - h);
    if (rise > 0) up += weights[i] * rise * rise;
    else down += weights[i] * rise * rise;
  });
  return Math.min(up, down) / Math.max(up, down);
}

/** Neighbouring cuts see the same pixels and the same scratch: by how much the variance of a mean
 *  over the outline exceeds that of independent points, 1 + 2 Σ ρ(lag), lags up to half a pitch. */
export function alongOutline(
  points: readonly OutlinePoint[],
  residuals: readonly number[],
  weights: Float64Array,
  pitchMm: number,
): number {
  const lags = 80;
  let square = 0;
  let count = 0;
  const sums = new Float64Array(lags);
  const counts = new Float64Array(lags);
  for (const side of ['left', 'right'] as const) {
    const order = points
      .map((q, i) => ({ s: q.s, i, side: q.side }))
      .filter((q) => q.side === side && weights[q.i] > 0.3)
      .sort((a, b) => a.s - b.s);
    for (let a = 0; a < order.length; a++) {
      square += residuals[order[a].i] ** 2;
      count++;
      for (let lag = 1; lag < lags && a + lag < order.length; lag++) {
        if (order[a + lag].s - order[a].s > pitchMm / 2) break;
        sums[lag] += residuals[order[a].i] * residuals[order[a + lag].i];
        counts[lag]++;
      }
    }
  }
  let inflation = 1;
  for (let lag = 1; lag < lags && counts[lag] >= 20; lag++) {
    const rho = sums[lag] / counts[lag] / (square / count);
    if (rho < 0.05) break;
    inflation += 2 * rho;
  }
  return inflation;
}
