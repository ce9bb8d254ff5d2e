import type { Estimate } from '../../quantity/estimate';
import { type LeastSquaresResult, leastSquares } from '../../quantity/least-squares';
import * as portable from '../../quantity/portable-math';
import type { OutlinePoint, Side } from '../4-thread-signal/outline-edges';
import type { PeriodStart } from './start-period';
import { contourAt, toothContour } from './tooth';

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
  readonly halfAngleRad: number;
  /** +1 or −1: which way the helix climbs, as the sign of its slope on the left side. */
  readonly handed: 1 | -1;
  /** Pitch that the ridges give, when they do. */
  readonly ridges: Estimate | null;
  readonly mmPerPx: number;
  /** Crest radius by where the metal's texture ends, when that is known. */
  readonly radius?: Estimate | null;
  /** Distance from the camera to the axis; the two contact lines are less than half a round apart by
   *  2·asin(R/range). Infinite for a view from afar. */
  readonly rangeMm?: number;
  /** How far the axis may still be off, mm and rad. */
  readonly uOffsetMm?: number;
  readonly uTurn?: number;
}

/** How far the crests may be from where an outline that does not keep to the model has them, mm of
 *  radius: little while scatter is noise, all of a thread's depth when there is no outline. */
export function raggedMm(scatterMm: number, pitchMm: number): number {
  const share = scatterMm / pitchMm;
  return pitchMm * (0.45 * Math.max(0, share - 0.04) + 1.5 * Math.max(0, share - 0.1));
}

const slantNodes = 5;
const phaseSteps = 16;
/** Share of the pitch by which a cold start may be off, and steps to either side. */
const pitchSpan = 0.012;
const pitchSteps = 4;

function median(values: number[]): number {
  values.sort((a, b) => a - b);
  return values[values.length >> 1] ?? 0;
}

export function fitThread(
  points: readonly OutlinePoint[],
  middleS: number,
  start: PeriodStart,
  priors: ThreadPriors,
  /** Of a fit that this one goes on from; a cold one seeks its valley first. */
  scatterSoFarMm?: number,
): ThreadFit {
  const n = points.length;
  const { ridges, radius = null, uOffsetMm = 0.6, uTurn = 0.02 } = priors;
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
    0.14,
    0.61,
    0,
    priors.halfAngleRad,
  ];
  const apart =
    0.5 +
    (priors.handed * portable.asin(radius0 / (priors.rangeMm ?? Number.POSITIVE_INFINITY))) /
      Math.PI;
  const lead = start.pitchMm / (2 * Math.PI * radius0);
  /** (t ± λ), whose square times R/p is the slant of tooth.ts. */
  const tilt = (side: Side, slope: number) =>
    slope + (side === 'left' ? 1 : -1) * priors.handed * lead;
  const tilts = points.map((q) => Math.abs(tilt(q.side, q.slope)));
  const low = Math.min(...tilts);
  const high = Math.max(...tilts, low + 0.01);

  /** Contours at a few slants between which points interpolate; shape parameters only. */
  const contoursOf = (p: ArrayLike<number>) =>
    Array.from({ length: slantNodes }, (_, k) => {
      const t = low + ((high - low) * k) / (slantNodes - 1);
      return toothContour(
        {
          flat: Math.max(0.01, Math.min(0.6, p[6])),
          depth: Math.max(0.2, Math.min(0.95, p[7])),
          blur: (priors.blurMm * portable.exp(p[8])) / p[0],
          halfAngleRad: Math.max(0.2, Math.min(0.9, p[9])),
        },
        Math.max(1e-6, (p[2] / p[0]) * t * t),
      );
    });
  const toothAt = (contours: readonly Float64Array[], slant: number, phase: number) => {
    const at = ((slant - low) / (high - low)) * (slantNodes - 1);
    const k = Math.max(0, Math.min(slantNodes - 2, Math.floor(at)));
    const f = Math.max(0, Math.min(1, at - k));
    return contourAt(contours[k], phase) * (1 - f) + contourAt(contours[k + 1], phase) * f;
  };
  /** Position along the axis turned by p[5]: what lies to its left moves on, to its right back. */
  const along = (p: ArrayLike<number>, side: Side, s: number) =>
    s + (side === 'left' ? p[5] : -p[5]) * p[2];
  const phaseOf = (p: ArrayLike<number>, side: Side, s: number) =>
    (along(p, side, s) - p[1]) / p[0] + (side === 'left' ? 0 : apart);
  const lineAt = (p: ArrayLike<number>, side: Side, s: number) => {
    const t = s - middleS;
    return p[2] + p[3] * t + (side === 'left' ? 1 : -1) * (p[4] + p[5] * t);
  };
  const model = (p: ArrayLike<number>) => {
    const contours = contoursOf(p);
    return (side: Side, s: number, slope: number) =>
      lineAt(p, side, s) +
      p[0] * toothAt(contours, Math.abs(tilt(side, slope)), phaseOf(p, side, s));
  };
  const residualsOf = (p: ArrayLike<number>) => {
    const at = model(p);
    return points.map((q) => q.r - at(q.side, q.s, q.slope));
  };
  /** Pitch and phase of the tooth that lie best over the points: least squares goes downhill from where
   *  it starts, and half a tooth away is another valley. */
  function bestStart(): [number, number] {
    const contours = contoursOf(initial);
    const width = 0.06 * start.pitchMm;
    let best: [number, number] = [initial[0], initial[1]];
    let least = Number.POSITIVE_INFINITY;
    const consider = (pitchMm: number, crestS: number) => {
      const p = [pitchMm, crestS, ...initial.slice(2)];
      const residuals = points.map(
        (q, i) =>
          q.r -
          lineAt(p, q.side, q.s) -
          pitchMm * toothAt(contours, tilts[i], phaseOf(p, q.side, q.s)),
      );
      const level = { left: 0, right: 0 };
      for (const side of ['left', 'right'] as const)
        level[side] = median(residuals.filter((_, i) => points[i].side === side));
      let cost = 0;
      for (let i = 0; i < n; i++)
        cost += portable.log(1 + ((residuals[i] - level[points[i].side]) / width) ** 2);
      if (cost >= least) return;
      least = cost;
      best = [pitchMm, crestS];
    };
    // The phase is held where the points are: a pitch that is off turns the ends, not the middle.
    const turnsAway = Math.round((middleS - start.crestS) / start.pitchMm);
    const crest = start.crestS + turnsAway * start.pitchMm;
    const span = pitchSpan * start.pitchMm;
    for (let a = -pitchSteps; a <= pitchSteps; a++)
      for (let b = 0; b < phaseSteps; b++)
        consider(
          start.pitchMm + (span * a) / Math.max(1, pitchSteps),
          crest + (b / phaseSteps) * start.pitchMm,
        );
    return best;
  }
  const robustScatter = (p: ArrayLike<number>) => {
    const sizes = residualsOf(p)
      .map(Math.abs)
      .sort((a, b) => a - b);
    return Math.max(0.002, 1.4826 * (sizes[sizes.length >> 1] ?? 1));
  };
  const h = 0.01;
  function balanceOf(p: ArrayLike<number>, weights: Float64Array): number {
    const contours = contoursOf(p);
    let up = 1e-9;
    let down = 1e-9;
    points.forEach((q, i) => {
      const phase = phaseOf(p, q.side, q.s);
      const rise = toothAt(contours, tilts[i], phase + h) - toothAt(contours, tilts[i], phase - h);
      if (rise > 0) up += weights[i] * rise * rise;
      else down += weights[i] * rise * rise;
    });
    return Math.min(up, down) / Math.max(up, down);
  }
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
    out[6 * rows + n] = 1 / 0.05;
    out[7 * rows + n + 1] = 1 / 0.05;
    out[8 * rows + n + 2] = 1 / 0.2;
    out[9 * rows + n + 3] = 1 / uAngle;
    if (ridges) out[n + 4] = 1 / ridges.u;
    out[4 * rows + n + 6] = 1 / uOffsetMm;
    out[5 * rows + n + 7] = 1 / uTurn;
    out[3 * rows + n + 8] = 1 / 0.03;
    if (radius) out[2 * rows + n + 5] = 1 / radius.u;
  };
  if (scatterSoFarMm === undefined) Object.assign(initial, bestStart());
  let scatter = scatterSoFarMm ?? 0.08 * start.pitchMm;
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
    const sigmas = Float64Array.from(points, (q) => widening * Math.hypot(scatter, 1.5 * q.uMm));
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
        const at = model(p);
        for (let i = 0; i < n; i++) {
          const q = points[i];
          out[i] = (q.r - at(q.side, q.s, q.slope)) / sigmas[i];
        }
        out[n] = (p[6] - 0.14) / 0.05;
        out[n + 1] = (p[7] - 0.61) / 0.05;
        out[n + 2] = p[8] / 0.2;
        out[n + 3] = (p[9] - priors.halfAngleRad) / uAngle;
        out[n + 4] = ridges ? (p[0] - ridges.value) / ridges.u : 0;
        out[n + 6] = p[4] / uOffsetMm;
        out[n + 7] = p[5] / uTurn;
        // Straight or 1:16 on diameter, and little else (ISO 7-1, ASME B1.20.1).
        out[n + 8] = (p[3] - 1 / 64) / 0.03;
        out[n + 5] = radius ? (p[2] - radius.value) / radius.u : 0;
      },
    });
    current = fit.parameters;
    const next = robustScatter(current);
    const rest = residualsOf(current);
    const kept = cauchyWeights(rest, next);
    inflation = alongOutline(points, rest, kept, current[0]);
    balance = balanceOf(current, kept);
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
    modelAt: model(p),
  };
}

const cauchyWeights = (residuals: readonly number[], scatter: number) =>
  Float64Array.from(residuals, (e) => 1 / (1 + (e / (2 * scatter)) ** 2));

/** Neighbouring cuts see the same pixels and the same scratch: by how much the variance of a mean
 *  over the outline exceeds that of independent points, 1 + 2 Σ ρ(lag), lags up to half a pitch. */
function alongOutline(
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
