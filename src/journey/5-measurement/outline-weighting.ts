import { quantile } from '../../quantity/order';
import { outlineResiduals, type SeenOutline, steepnessOf } from './outline-jacobian';
import { index, type OutlineParameters } from './outline-parameters';
import { alongOutline, cauchyWeights, flankBalance, scatterAbout } from './outline-scatter';

/** How far an outline is to be trusted, as a fit of it has shown. */
export interface Weighting {
  readonly scatterMm: number;
  /** Points are as many as their correlation along the outline leaves of them, against the surface and
   *  priors too. */
  readonly inflation: number;
  /** One kind of flank alone is where its highlight is, not where the tooth is. */
  readonly balance: number;
}

export interface SeenWeighting extends Weighting {
  /** Cauchy weight of each point, 0…1. */
  readonly weights: Float64Array;
}

export const unseenWeighting = (scatterMm: number): Weighting => ({
  scatterMm,
  inflation: 1,
  balance: 1,
});

export function weightingAbout(
  outline: SeenOutline,
  p: OutlineParameters,
  usualPitchMm: number,
): SeenWeighting {
  const { points, model } = outline;
  const rest = outlineResiduals(outline, p);
  const scatterMm = scatterAbout(rest, usualPitchMm);
  const weights = cauchyWeights(rest, scatterMm);
  return {
    scatterMm,
    weights,
    inflation: alongOutline(points, rest, weights, p[index.pitch]),
    balance: flankBalance(points, model, p, weights),
  };
}

/** Standard uncertainty of each edge along its cut, mm. */
export function sigmasOf(
  outline: SeenOutline,
  p: OutlineParameters,
  { scatterMm, inflation, balance }: Weighting,
  usualPitchMm: number,
): Float64Array {
  // Points that keep to no thread are not as many as they seem.
  const ragged = 1 + Math.max(0, scatterMm / usualPitchMm - 0.04) / 0.02;
  const widening =
    (ragged * Math.sqrt(inflation)) /
    Math.min(1, Math.max(0.2, 1.3 * balance * Math.sqrt(balance)));
  const steepness = steepnessOf(outline, p);
  const usual = quantile(steepness.slice().sort(), 0.5);
  return Float64Array.from(
    outline.points,
    (q, i) => widening * Math.hypot(scatterMm * (steepness[i] / usual), 1.5 * q.uMm),
  );
}
