import type { Estimate } from '../../quantity/estimate';
import { aboutMean } from '../../quantity/linear-fit';
import * as portable from '../../quantity/portable-math';
import { type AxisFrame, type Extent, grazing, photoAt } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { type CrestBelief, crestsOf } from './limb-network';
import { firstLook, limbPatch } from './limb-patch';

/** Where the crests lie on both sides of an axis, by what the limbs look like. */
export interface CrestLines {
  /** Crest radius at the middle, and what the axis lacks: mm to the left, and turn towards the left. */
  readonly radiusMm: number;
  readonly uRadiusMm: number;
  readonly offsetMm: number;
  readonly turn: number;
  readonly uTurn: number;
  /** Growth of the radius along s, mm per mm. */
  readonly halfTaper: number;
  readonly uHalfTaper: number;
  /** Logarithm of the evidence over a thread of any radius: what speaks for crests here at all. */
  readonly evidence: number;
  /** Probability of the radius' main peak against others. */
  readonly share: number;
}

const { turns, bins: limbBins, binsPerPitch } = firstLook;
/** The networks are surer than they are right on what they have not seen. */
const doubt = 0.03;
const uOffsetShare = 0.08;
const uRadiusShare = 0.12;
/** Of one window's crest line, as share of the pitch, for slopes along the axis. */
const uLineShare = 0.05;
const uTurn = 0.02;
const uTaper = 0.012;

/** A thread as it is taken to lie: `radiusMm` at the middle of its zone, and its growth along s. */
export interface ThreadBody {
  readonly frame: AxisFrame;
  readonly zone: Extent;
  readonly radiusMm: number;
  readonly halfTaper: number;
}

interface Window {
  readonly s: number;
  readonly left: Line;
  readonly right: Line;
}

/** Probability density (per bin) over the grazing radius, on a grid. */
interface Line {
  readonly belief: CrestBelief;
  /** Grazing radius of the first bin's and the last bin's middle, mm. */
  readonly from: number;
  readonly to: number;
}

/** The limbs of `body`, folded on `foldMm`, in up to so many windows along it. `aside`: where their middle is
 *  expected, mm to the left of the axis. Null where the photo ends. */
export function crestLines(
  photo: PosedPhoto,
  body: ThreadBody,
  foldMm: number,
  mostWindows: number,
  aside: Estimate = { value: 0, u: uOffsetShare * body.radiusMm },
): CrestLines | null {
  const windows = windowsOf(photo, body, foldMm, mostWindows);
  if (windows.length === 0) return null;
  const step = foldMm / binsPerPitch;
  const density = densityOf(windows, body, step, aside);
  const { steps, spread, share } = radiusIn(density);
  const radiusMm = body.radiusMm + steps * step;
  const offsetMm = offsetIn(density) * step;
  return {
    radiusMm,
    uRadiusMm: spread * step,
    offsetMm,
    ...slopesOf(windows, body, { radiusMm, offsetMm }, foldMm),
    evidence: evidenceOf(windows) / windows.length,
    share,
  };
}

const middleOf = ({ zone }: ThreadBody) => (zone.fromS + zone.toS) / 2;
const radiusAt = (body: ThreadBody, s: number) =>
  body.radiusMm + body.halfTaper * (s - middleOf(body));

function windowsOf(
  { grey, camera }: PosedPhoto,
  body: ThreadBody,
  foldMm: number,
  mostWindows: number,
): Window[] {
  const { frame, zone } = body;
  const length = zone.toS - zone.fromS;
  const wide = turns * foldMm;
  const count = Math.max(1, Math.min(mostWindows, Math.round(length / wide)));
  const places = Array.from({ length: count }, (_, k) =>
    count === 1 ? middleOf(body) : zone.fromS + wide / 2 + (k * (length - wide)) / (count - 1),
  );
  return places.flatMap((s) => {
    const fold = { middleS: s, pitchMm: foldMm, radiusMm: radiusAt(body, s), halfTaper: 0 };
    const patch = limbPatch({ grey, camera }, frame, firstLook, fold);
    if (!patch) return [];
    const { left, right } = crestsOf(patch);
    const first = patch.fromR + 0.5 * patch.binMm;
    const last = patch.fromR + (limbBins - 0.5) * patch.binMm;
    const r = (sign: 1 | -1, at: number) =>
      sign * grazing(camera, frame, photoAt(camera, frame, s, sign * at)).r;
    return [
      {
        s,
        left: { belief: left, from: r(1, first), to: r(1, last) },
        right: { belief: right, from: r(-1, first), to: r(-1, last) },
      },
    ];
  });
}

/** Logarithm of the density of a radius and an offset of the axis, on a grid about the middle of both: values
 *  [row of radii · columns + column of offsets]. */
interface Density {
  readonly values: Float64Array;
  readonly rows: number;
  readonly columns: number;
  /** Index of the greatest value. */
  readonly top: number;
}

function densityOf(
  windows: readonly Window[],
  body: ThreadBody,
  step: number,
  aside: Estimate,
): Density {
  const { radiusMm } = body;
  const reach = Math.min(Math.ceil((0.3 * radiusMm) / step), 40);
  const side = Math.min(Math.ceil((0.22 * radiusMm) / step), 30);
  const rows = 2 * reach + 1;
  const columns = 2 * side + 1;
  const values = new Float64Array(rows * columns);
  for (const w of windows) {
    const lefts = sampled(w.left, radiusAt(body, w.s), step, reach + side);
    const rights = sampled(w.right, radiusAt(body, w.s), step, reach + side);
    for (let i = 0; i < rows; i++)
      for (let j = 0; j < columns; j++) {
        const r = i - reach;
        const o = j - side;
        values[i * columns + j] += lefts[r + o + reach + side] + rights[r - o + reach + side];
      }
  }
  let top = 0;
  for (let i = 0; i < rows; i++)
    for (let j = 0; j < columns; j++) {
      const r = ((i - reach) * step) / (uRadiusShare * radiusMm);
      const o = ((j - side) * step - aside.value) / aside.u;
      const k = i * columns + j;
      values[k] -= 0.5 * (r * r + o * o);
      if (values[k] > values[top]) top = k;
    }
  return { values, rows, columns, top };
}

/** The radius' main peak, in steps from the middle of the grid, its spread, and its probability against others. */
function radiusIn({ values, rows, columns, top }: Density) {
  const marginal = new Float64Array(rows);
  let all = 0;
  for (let k = 0; k < values.length; k++) {
    const p = portable.exp(values[k] - values[top]);
    marginal[Math.floor(k / columns)] += p;
    all += p;
  }
  const ti = Math.floor(top / columns);
  let share = 0;
  let mean = 0;
  let second = 0;
  for (let i = Math.max(0, ti - 4); i <= Math.min(rows - 1, ti + 4); i++) {
    share += marginal[i];
    mean += marginal[i] * (i - ti);
    second += marginal[i] * (i - ti) ** 2;
  }
  mean /= share;
  return {
    steps: ti - (rows - 1) / 2 + mean,
    spread: Math.sqrt(Math.max(0.04, second / share - mean * mean)),
    share: share / all,
  };
}

/** Mean offset about the top, in steps. */
function offsetIn({ values, rows, columns, top }: Density): number {
  const ti = Math.floor(top / columns);
  const tj = top % columns;
  const side = (columns - 1) / 2;
  let offsets = 0;
  let weight = 0;
  for (let i = Math.max(0, ti - 2); i <= Math.min(rows - 1, ti + 2); i++)
    for (let j = Math.max(0, tj - 2); j <= Math.min(columns - 1, tj + 2); j++) {
      const p = portable.exp(values[i * columns + j] - values[top]);
      offsets += p * (j - side);
      weight += p;
    }
  return offsets / weight;
}

/** Logarithm of the probability that there are crests, summed over windows and sides. */
const evidenceOf = (windows: readonly Window[]): number =>
  windows.reduce(
    (sum, w) =>
      sum +
      (portable.log(1 - w.left.belief.none + 1e-3) + portable.log(1 - w.right.belief.none + 1e-3)),
    0,
  );

/** Logarithm of the density at radius + k·step for k from −half to half. */
function sampled({ belief, from, to }: Line, radius: number, step: number, half: number) {
  const flat = doubt + belief.none * (1 - doubt);
  return Float64Array.from({ length: 2 * half + 1 }, (_, k) => {
    const bin = ((radius + (k - half) * step - from) / (to - from)) * (limbBins - 1);
    return portable.log((1 - flat) * between(belief.bins, bin) + flat / limbBins);
  });
}

function between(values: Float64Array, at: number): number {
  const k = Math.floor(at);
  if (k < 0 || k >= values.length - 1) return 0;
  return values[k] + (at - k) * (values[k + 1] - values[k]);
}

/** Turn and taper by the lines of single windows, drawn to none by what axes and threads are like. */
function slopesOf(
  windows: readonly Window[],
  body: ThreadBody,
  { radiusMm: radius, offsetMm: offset }: { radiusMm: number; offsetMm: number },
  pitch: number,
): { turn: number; uTurn: number; halfTaper: number; uHalfTaper: number } {
  const reach = 0.35 * pitch;
  const middle = middleOf(body);
  const taper0 = body.halfTaper;
  const rows = windows.flatMap(({ s, left, right }) => {
    const grown = radius + taper0 * (s - middle);
    const a = local(left, grown + offset, reach);
    const b = local(right, grown - offset, reach);
    return a === null || b === null
      ? []
      : [{ x: s - middle, turn: (a - b) / 2 - offset, taper: (a + b) / 2 - radius }];
  });
  if (rows.length < 2) return { turn: 0, uTurn, halfTaper: taper0, uHalfTaper: uTaper };
  const u2 = (uLineShare * pitch) ** 2;
  const fit = (pick: (row: (typeof rows)[number]) => number, u: number) => {
    const { sxx, sxy } = aboutMean(rows, (q) => q.x, pick);
    return { slope: sxy / (sxx + u2 / (u * u)), u: 1 / Math.sqrt(sxx / u2 + 1 / (u * u)) };
  };
  const turn = fit((q) => q.turn, uTurn);
  const taper = fit((q) => q.taper - taper0 * q.x, uTaper);
  return {
    turn: turn.slope,
    uTurn: turn.u,
    halfTaper: taper0 + taper.slope,
    uHalfTaper: taper.u,
  };
}

function local({ belief, from, to }: Line, about: number, reach: number): number | null {
  const perBin = (to - from) / (limbBins - 1);
  let sum = 0;
  let at = 0;
  for (let i = 0; i < limbBins; i++) {
    const r = from + i * perBin;
    if (Math.abs(r - about) > reach) continue;
    sum += belief.bins[i];
    at += belief.bins[i] * r;
  }
  return sum * (1 - belief.none) > 0.3 ? at / sum : null;
}
