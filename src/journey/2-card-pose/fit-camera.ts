import { leastSquares } from '../../quantity/least-squares';
import { middleValue, quantile } from '../../quantity/order';
import type { PosedCamera } from './camera';
import { cameraFrom, cameraParameters, type LensPrior } from './camera-parameters';
import {
  bowAt,
  bowOf,
  type CardShape,
  cameraProblem,
  jacobianOf,
  pixelsOff,
  residualsOf,
} from './camera-problem';
import { type Bow, largestBow } from './card-bow';
import { facing } from './edge-residuals';
import type { EdgePoint } from './marker-edges';

export interface CameraFit {
  readonly camera: PosedCamera;
  /** See `cameraFrom`. */
  readonly parameters: Float64Array;
  readonly prior: LensPrior;
  /** 10 × 10 of `parameters`; edge noise, scatter between sides (print, interpolation) and priors
   *  included; print scale is not: it enters once, later. */
  readonly covariance: Float64Array;
  /** By what the points' σ had to be multiplied, and ½ Σ ρ with it, priors included: two fits of one
   *  photo at one scale are weighed by their costs. */
  readonly scale: number;
  readonly cost: number;
  readonly blurPx: number;
  /** Of the crispest edges: seen from nearby on a slant, most of a card is out of focus while the part on it is not. */
  readonly crispestPx: number;
  /** Root mean square residual of single edge points, and of means over marker sides, px. */
  readonly rmsPx: number;
  readonly sideRmsPx: number;
  readonly bow: Bow;
  readonly largestBow: { readonly riseMm: number; readonly uMm: number };
  /** The lenses that the photo may have been taken with, each with its own fit and probability, where nothing has
   *  stated its focal length. */
  readonly lenses?: readonly { readonly fit: CameraFit; readonly share: number }[];
}

const perSide = 6;
/** Share of a reference's edges that are its crispest. */
const crispest = 0.1;

/** Joint least squares of lens, pose and bow on edge points of the reference. Residuals are distances
 *  across each side over their σ, Huber beyond 2.5 σ; priors are residuals. The bow is always free: a
 *  sheet that rises by half a millimetre, taken for flat, is met by a focal length three times as long. */
export function fitCamera(
  points: readonly EdgePoint[],
  start: PosedCamera,
  prior: LensPrior,
  shape: CardShape,
  /** Of the points' σ, from an earlier fit; found from this one's residuals when absent. */
  givenScale?: number,
): CameraFit {
  const problem = cameraProblem(points, start, prior, shape);
  let scale = givenScale ?? 1;
  let sides = facing(points, start, shape);
  const fit = (parameters: ArrayLike<number>) =>
    leastSquares({
      parameters,
      count: problem.count,
      loss: 'huber',
      lossScale: 2.5,
      lossCount: points.length,
      // A fit whose scale is given is one of many that are compared by their costs, which are of order 10.
      tolerance: givenScale === undefined ? 1e-10 : 1e-6,
      maxIterations: givenScale === undefined ? 50 : 30,
      residuals: residualsOf(problem, sides, scale),
      jacobian: jacobianOf(problem, sides, scale),
    });
  let solved = fit(problem.begin);
  // Scatter beyond the edge fits' own u, shared along a side, widens everything: the second fit
  // weighs image against priors with it.
  const off = new Float64Array(points.length);
  pixelsOff(problem, sides, solved.parameters, off);
  const scatter = scatterOf(points, off, problem.sigma);
  if (givenScale === undefined) {
    scale = scatter.scale;
    sides = facing(points, cameraFrom(solved.parameters, prior), shape);
    solved = fit(solved.parameters);
  }
  const { parameters: p, covariance: all, cost } = solved;
  const blurs = points.map((q) => q.blurPx);
  const k = p.length;
  const of = (i: number, j: number) => all[i * k + j];
  return {
    camera: cameraFrom(p, prior),
    parameters: Float64Array.from(p.slice(0, cameraParameters)),
    prior,
    covariance: Float64Array.from({ length: cameraParameters ** 2 }, (_, i) =>
      of(Math.floor(i / cameraParameters), i % cameraParameters),
    ),
    scale,
    cost,
    blurPx: middleValue(blurs),
    crispestPx: quantile(
      blurs.sort((a, b) => a - b),
      crispest,
    ),
    rmsPx: scatter.rmsPx,
    sideRmsPx: scatter.sideRmsPx,
    bow: bowOf(p),
    largestBow: largestBow(bowOf(p), (i, j) => of(bowAt + i, bowAt + j)),
  };
}

function scatterOf(points: readonly EdgePoint[], residuals: Float64Array, sigma: Float64Array) {
  const sides = new Map<number, number[]>();
  const all: number[] = [];
  points.forEach((point, i) => {
    const r = residuals[i];
    if (Math.abs(r) > 8 * Math.hypot(sigma[i], 0.1)) return;
    all.push(r / sigma[i]);
    const list = sides.get(point.side) ?? [];
    list.push(r);
    sides.set(point.side, list);
  });
  const means = [...sides.values()].map((list) => list.reduce((s, r) => s + r, 0) / list.length);
  const meanSigma = middleValue([...sigma]);
  const rms = (v: readonly number[]) => Math.sqrt(v.reduce((s, r) => s + r * r, 0) / v.length);
  // 1.48·MAD: markers under a hose must not widen the rest.
  const robust = (v: readonly number[]) => 1.4826 * middleValue(v.map(Math.abs));
  const pointScale = robust(all);
  const sideScale = (robust(means) / meanSigma) * Math.sqrt(perSide);
  return {
    scale: Math.max(0.5, pointScale, sideScale),
    rmsPx: rms(all) * meanSigma,
    sideRmsPx: rms(means),
  };
}
