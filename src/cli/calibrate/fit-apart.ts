import { rounded } from './rounded';

/** One radius by two ways, mm off the truth, and how far the outline moves the limbs' one, in its u. */
export interface OutlineSeen {
  readonly apart: number;
  readonly outlineErrorMm: number;
  readonly limbsErrorMm: number;
}

/** Errors below this share of the pitch are as good as none. */
const negligible = 0.01;

/** How far apart outline and limbs may be before the limbs are believed. Errors count by their logarithm, so that a
 *  few gross ones do not decide for all. Between two photos, the middle. */
export function fitApart(photos: readonly (OutlineSeen & { readonly pitchMm: number })[]): number {
  const sorted = [...photos].sort((a, b) => a.apart - b.apart);
  const size = (errorMm: number, pitchMm: number) =>
    Math.log(Math.abs(errorMm) / pitchMm + negligible);
  // What believing the outline of one photo more costs.
  const costs = sorted.map(
    (p) => size(p.outlineErrorMm, p.pitchMm) - size(p.limbsErrorMm, p.pitchMm),
  );
  let sum = 0;
  let least = 0;
  let best = -1;
  costs.forEach((cost, i) => {
    sum += cost;
    if (sum >= least) return;
    least = sum;
    best = i;
  });
  if (best < 0) return 0;
  const here = sorted[best].apart;
  return rounded((here + (sorted[best + 1]?.apart ?? 2 * here)) / 2);
}
