import type { Estimate } from '../../quantity/estimate';
import { type LeastSquaresResult, leastSquares } from '../../quantity/least-squares';
import { quantile } from '../../quantity/order';
import * as portable from '../../quantity/portable-math';
import type { OutlinePoint, Side } from '../4-thread-signal/outline-edges';
import { bestStart } from './cold-start';
import { outlineModel } from './outline-model';
import { alongOutline, cauchyWeights, flankBalance, scatterAbout } from './outline-scatter';
import type { PeriodStart } from './start-period';
import type { ThreadForm } from './thread-form';

/** The outline of both sides fitted as one thread. Frame: axis frame of the points, mm. */
export interface ThreadFit {
  /** In the order of `fitParameters`. */
  readonly parameters: Float64Array;
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
  readonly depth: number;
  readonly halfAngleRad: number;
  /** Whether the photo was left to say the flank angle: pitches of 20 px and more. */
  readonly freeAngle: boolean;
  readonly blurMm: number;
  /** Over `fitParameters`; scatter and its correlation along the outline included. */
  readonly covariance: Float64Array;
  readonly scatterMm: number;
  readonly cost: number;
  readonly termination: string;
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

export const fitParameters = [
  'pitch',
  'crestS',
  'radius',
  'halfTaper',
  'offset',
  'turn',
  'flat',
  'depth',
  'lnBlur',
  'halfAngle',
] as const;

export interface ThreadPriors {
  readonly blurMm: number;
  readonly form: ThreadForm;
  /** +1 or −1: which way the helix climbs, as the sign of its slope on the left side. */
  readonly handed: 1 | -1;
  /** Pitch that the ridges give, when they do. */
  readonly ridges: Estimate | null;
  readonly mmPerPx: number;
  /** Crest radius by where the metal's texture ends, when that is known. */
  readonly radius?: Estimate | null;
  /** Growth of the radius along s, when that is known. */
  readonly halfTaper?: Estimate;
  /** Distance from the camera to the axis; the two contact lines are less than half a round apart by
   *  2·asin(R/range). Infinite for a view from afar. */
  readonly rangeMm?: number;
  /** How far the axis may still be off, mm and rad. */
  readonly uOffsetMm?: number;
  readonly uTurn?: number;
}

/** Straight or 1:16 on diameter, and little else (ISO 7-1, ASME B1.20.1). */
const anyTaper: Estimate = { value: 1 / 64, u: 0.03 };

export function fitThread(
  points: readonly OutlinePoint[],
  middleS: number,
  start: PeriodStart,
  priors: ThreadPriors,
  /** Of a fit that this one goes on from; a cold one seeks its valley first. */
  scatterSoFarMm?: number,
): ThreadFit {
  const n = points.length;
  const {
    form,
    ridges,
    radius = null,
    halfTaper = anyTaper,
    uOffsetMm = 0.6,
    uTurn = 0.02,
  } = priors;
  const freeAngle = start.pitchMm / priors.mmPerPx > 20;
  const uAngle = freeAngle ? 0.15 : 0.06;
  const radius0 = radius?.value ?? (start.left[0] + start.right[0]) / 2 + 0.9 * start.amplitudeMm;
  const initial = [
    start.pitchMm,
    start.crestS,
    radius0,
    (start.left[1] + start.right[1]) / 2,
    (start.left[0] - start.right[0]) / 2,
    (start.left[1] - start.right[1]) / 2,
    form.flat.value,
    form.depth.value,
    0,
    form.halfAngleRad,
  ];
  const model = outlineModel(points, {
    middleS,
    pitchMm: start.pitchMm,
    radiusMm: radius0,
    blurMm: priors.blurMm,
    handed: priors.handed,
    rangeMm: priors.rangeMm ?? Number.POSITIVE_INFINITY,
    rounding: form.rounding,
  });
  const { contoursOf, toothAt, phaseOf, along } = model;
  const tilts = points.map((q) => model.tilt(q.side, q.slope));
  const residualsOf = (p: ArrayLike<number>) => {
    const at = model.at(p);
    return points.map((q) => q.r - at(q.side, q.s, q.slope));
  };
  const h = 0.01;
  /** An edge is as sure square to itself everywhere: along a cut the less, the steeper it runs. */
  const steepnessOf = (p: ArrayLike<number>) => {
    const contours = contoursOf(p);
    const out = Float64Array.from(points, (q, i) => {
      const phase = phaseOf(p, q.side, q.s);
      const rise =
        (toothAt(contours, tilts[i], phase + h) - toothAt(contours, tilts[i], phase - h)) / (2 * h);
      return Math.hypot(1, rise);
    });
    const usual = quantile(Float64Array.from(out).sort(), 0.5);
    return out.map((v) => v / usual);
  };
  /** Derivatives along the outline in closed form; those of the tooth's shape by differences. */
  const differentiate = (
    p: Float64Array,
    out: Float64Array,
    sigmas: Float64Array,
    rows: number,
  ) => {
    const contours = contoursOf(p);
    const shapes = ([6, 7, 8, 9] as const).map((k) => {
      const step = k >= 8 ? 0.02 : 0.004;
      const moved = Float64Array.from(p);
      moved[k] += step;
      return { k, step, contours: contoursOf(moved) };
    });
    out.fill(0);
    for (let i = 0; i < n; i++) {
      const q = points[i];
      const w = -1 / sigmas[i];
      const t = q.s - middleS;
      const sign = q.side === 'left' ? 1 : -1;
      const phase = phaseOf(p, q.side, q.s);
      const here = toothAt(contours, tilts[i], phase);
      const rise =
        (toothAt(contours, tilts[i], phase + h) - toothAt(contours, tilts[i], phase - h)) / (2 * h);
      out[i] = w * (here - rise * ((along(p, q.side, q.s) - p[1]) / p[0]));
      out[rows + i] = w * -rise;
      out[2 * rows + i] = w * (1 + rise * sign * p[5]);
      out[3 * rows + i] = w * t;
      out[4 * rows + i] = w * sign;
      out[5 * rows + i] = w * sign * (t + rise * p[2]);
      for (const { k, step, contours: moved } of shapes)
        out[k * rows + i] = (w * p[0] * (toothAt(moved, tilts[i], phase) - here)) / step;
    }
    out[6 * rows + n] = 1 / form.flat.u;
    out[7 * rows + n + 1] = 1 / form.depth.u;
    out[8 * rows + n + 2] = 1 / 0.2;
    out[9 * rows + n + 3] = 1 / uAngle;
    if (ridges) out[n + 4] = 1 / ridges.u;
    out[4 * rows + n + 6] = 1 / uOffsetMm;
    out[5 * rows + n + 7] = 1 / uTurn;
    out[3 * rows + n + 8] = 1 / halfTaper.u;
    if (radius) out[2 * rows + n + 5] = 1 / radius.u;
  };
  if (scatterSoFarMm === undefined)
    Object.assign(initial, bestStart(points, middleS, model, initial));
  let scatter = scatterSoFarMm ?? scatterAbout([], start.pitchMm);
  /** Points are as many as their correlation along the outline leaves of them, against ridges and
   *  priors too. */
  let inflation = 1;
  /** One kind of flank alone is where its highlight is, not where the tooth is. */
  let balance = 1;
  let fit: LeastSquaresResult | null = null;
  let current: ArrayLike<number> = initial;
  for (let pass = 0; pass < 4; pass++) {
    // Points that keep to no thread are not as many as they seem.
    const ragged = 1 + Math.max(0, scatter / start.pitchMm - 0.04) / 0.02;
    const widening =
      (ragged * Math.sqrt(inflation)) /
      Math.min(1, Math.max(0.2, 1.3 * balance * Math.sqrt(balance)));
    const leaning = steepnessOf(current);
    const sigmas = Float64Array.from(
      points,
      (q, i) => widening * Math.hypot(scatter * leaning[i], 1.5 * q.uMm),
    );
    fit = leastSquares({
      parameters: current,
      count: n + 9,
      loss: 'cauchy',
      lossScale: 2 / Math.sqrt(inflation),
      lossCount: n,
      jacobian: (p, out) => differentiate(p, out, sigmas, n + 9),
      maxIterations: 25,
      tolerance: 1e-7,
      residuals: (p, out) => {
        const at = model.at(p);
        for (let i = 0; i < n; i++) {
          const q = points[i];
          out[i] = (q.r - at(q.side, q.s, q.slope)) / sigmas[i];
        }
        out[n] = (p[6] - form.flat.value) / form.flat.u;
        out[n + 1] = (p[7] - form.depth.value) / form.depth.u;
        out[n + 2] = p[8] / 0.2;
        out[n + 3] = (p[9] - form.halfAngleRad) / uAngle;
        out[n + 4] = ridges ? (p[0] - ridges.value) / ridges.u : 0;
        out[n + 6] = p[4] / uOffsetMm;
        out[n + 7] = p[5] / uTurn;
        out[n + 8] = (p[3] - halfTaper.value) / halfTaper.u;
        out[n + 5] = radius ? (p[2] - radius.value) / radius.u : 0;
      },
    });
    current = fit.parameters;
    const rest = residualsOf(current);
    const next = scatterAbout(rest, start.pitchMm);
    const kept = cauchyWeights(rest, next);
    inflation = alongOutline(points, rest, kept, current[0]);
    balance = flankBalance(points, model, current, kept);
    const settled = pass > 0 && Math.abs(next / scatter - 1) < 0.03;
    scatter = next;
    if (settled) break;
  }
  const p = fit!.parameters;
  const weights = cauchyWeights(residualsOf(p), scatter);
  return {
    parameters: p,
    pitchMm: p[0],
    crestRadiusMm: p[2],
    halfTaper: p[3],
    axisOffsetMm: p[4],
    axisTurn: p[5],
    crestS: p[1],
    flat: p[6],
    depth: p[7],
    halfAngleRad: p[9],
    freeAngle,
    blurMm: priors.blurMm * portable.exp(p[8]),
    covariance: fit!.covariance,
    scatterMm: scatter,
    cost: fit!.cost,
    termination: fit!.termination,
    weights,
    middleS,
    flankBalance: balance,
    phaseOf: (side, s) => phaseOf(p, side, s),
    modelAt: model.at(p),
  };
}
