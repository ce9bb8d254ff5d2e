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
 *  few gross ones do not decide for all; of what costs no more than the best by more than one standard error, the
 *  widest (L. Breiman et al., Classification and Regression Trees, 1984, section 3.4, from memory): the outline is
 *  given up where photos clearly say so. Between two photos, the middle. */
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
  let widest = best;
  let more = 0;
  let squares = 0;
  for (let i = best + 1; i < costs.length; i++) {
    more += costs[i];
    squares += costs[i] ** 2;
    if (more <= Math.sqrt(squares)) widest = i;
  }
  if (widest < 0) return 0;
  const here = sorted[widest].apart;
  return rounded((here + (sorted[widest + 1]?.apart ?? 2 * here)) / 2);
}
