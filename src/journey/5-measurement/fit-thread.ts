import { type LeastSquaresResult, leastSquares } from '../../quantity/least-squares';
import type { OutlinePoint, Side } from '../4-thread-signal/outline-edges';
import { bestStart } from './cold-start';
import { outlineJacobian, type SeenOutline } from './outline-jacobian';
import { outlineModel } from './outline-model';
import { index, type OutlineParameters } from './outline-parameters';
import {
  initialParameters,
  leavesAngleFree,
  type PriorRow,
  priorDerivatives,
  priorResiduals,
  priorRows,
  radiusAtStart,
  type ThreadPriors,
} from './outline-priors';
import { scatterAbout } from './outline-scatter';
import {
  type SeenWeighting,
  sigmasOf,
  unseenWeighting,
  type Weighting,
  weightingAbout,
} from './outline-weighting';
import type { PeriodStart } from './start-period';

/** The outline of both sides fitted as one thread. Frame: axis frame of the points, mm. */
export interface ThreadFit {
  readonly pitchMm: number;
  /** Crest radius at `middleS`, corrected for blur and slant. */
  readonly crestRadiusMm: number;
  /** Growth of the radius along s. */
  readonly halfTaper: number;
  /** Offset and turn of the axis that the two sides ask for: left minus right, halved. */
  readonly axisOffsetMm: number;
  readonly axisTurn: number;
  readonly crestS: number;
  readonly flat: number;
  readonly halfAngleRad: number;
  /** Whether the photo was left to say the flank angle: pitches of 20 px and more. */
  readonly freeAngle: boolean;
  /** Over `fitParameters`; scatter and its correlation along the outline included. */
  readonly covariance: Float64Array;
  readonly scatterMm: number;
  /** Cauchy weight of each point, 0…1. */
  readonly weights: Float64Array;
  readonly middleS: number;
  /** How much of the outline runs up the teeth against how much runs down, weaker over stronger. Light
   *  from one side may leave one kind of flank in the dark. */
  readonly flankBalance: number;
  /** In pitches from a crest of that side. */
  readonly phaseOf: (side: Side, s: number) => number;
  readonly modelAt: (side: Side, s: number, slope: number) => number;
}

const mostPasses = 4;
/** Share by which the scatter may still change between two passes. */
const settledShare = 0.03;

export function fitThread(
  points: readonly OutlinePoint[],
  middleS: number,
  start: PeriodStart,
  priors: ThreadPriors,
  /** Of a fit that this one goes on from; a cold one seeks its valley first. */
  scatterSoFarMm?: number,
): ThreadFit {
  const outline = seenOutline(points, middleS, start, priors);
  const rows = priorRows(start, priors);
  const initial = initialParameters(start, priors);
  if (scatterSoFarMm === undefined)
    Object.assign(initial, bestStart(points, middleS, outline.model, initial));
  let weighting = unseenWeighting(scatterSoFarMm ?? scatterAbout([], start.pitchMm));
  let from: OutlineParameters = initial;
  for (let pass = 1; ; pass++) {
    const sigmas = sigmasOf(outline, from, weighting, start.pitchMm);
    const fit = weightedFit(outline, rows, from, sigmas, weighting);
    const seen = weightingAbout(outline, fit.parameters, start.pitchMm);
    const settled = pass > 1 && Math.abs(seen.scatterMm / weighting.scatterMm - 1) < settledShare;
    if (settled || pass === mostPasses)
      return threadFit(outline, fit, seen, leavesAngleFree(start.pitchMm, priors));
    weighting = seen;
    from = fit.parameters;
  }
}

function seenOutline(
  points: readonly OutlinePoint[],
  middleS: number,
  start: PeriodStart,
  priors: ThreadPriors,
): SeenOutline {
  const model = outlineModel(points, {
    middleS,
    pitchMm: start.pitchMm,
    radiusMm: radiusAtStart(start, priors),
    blurMm: priors.blurMm,
    handed: priors.handed,
    rangeMm: priors.rangeMm ?? Number.POSITIVE_INFINITY,
    rounding: priors.form.rounding,
  });
  return { points, middleS, model, tilts: points.map((q) => model.tilt(q.side, q.slope)) };
}

/** Edges first, then priors. */
function weightedFit(
  outline: SeenOutline,
  rows: readonly PriorRow[],
  from: OutlineParameters,
  sigmas: Float64Array,
  { inflation }: Weighting,
): LeastSquaresResult {
  const { points, model } = outline;
  const n = points.length;
  const count = n + rows.length;
  return leastSquares({
    parameters: from,
    count,
    loss: 'cauchy',
    lossScale: 2 / Math.sqrt(inflation),
    lossCount: n,
    maxIterations: 25,
    tolerance: 1e-7,
    residuals: (p, out) => {
      const at = model.at(p);
      for (let i = 0; i < n; i++) {
        const q = points[i];
        out[i] = (q.r - at(q.side, q.s, q.slope)) / sigmas[i];
      }
      priorResiduals(rows, p, out, n);
    },
    jacobian: (p, out) => {
      out.fill(0);
      outlineJacobian(outline, p, sigmas, out);
      priorDerivatives(rows, out, count, n);
    },
  });
}

function threadFit(
  { model, middleS }: SeenOutline,
  { parameters: p, covariance }: LeastSquaresResult,
  { scatterMm, weights, balance }: SeenWeighting,
  freeAngle: boolean,
): ThreadFit {
  return {
    pitchMm: p[index.pitch],
    crestRadiusMm: p[index.radius],
    halfTaper: p[index.halfTaper],
    axisOffsetMm: p[index.offset],
    axisTurn: p[index.turn],
    crestS: p[index.crestS],
    flat: p[index.flat],
    halfAngleRad: p[index.halfAngle],
    freeAngle,
    covariance,
    scatterMm,
    weights,
    middleS,
    flankBalance: balance,
    phaseOf: (side, s) => model.phaseOf(p, side, s),
    modelAt: model.at(p),
  };
}
