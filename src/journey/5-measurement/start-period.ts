import { solveSymmetric } from '../../quantity/matrix';
import { quantile } from '../../quantity/order';
import * as portable from '../../quantity/portable-math';
import type { OutlinePoint } from '../4-thread-signal/outline-edges';

/** A first period from outline points: linear least squares at each trial pitch, robustly weighted. */
export interface PeriodStart {
  readonly pitchMm: number;
  /** Axial position of a crest on the left side, mm. */
  readonly crestS: number;
  /** Radius of the mean outline and slope on each side. */
  readonly left: readonly [number, number];
  readonly right: readonly [number, number];
  /** Amplitude of the fundamental, mm. */
  readonly amplitudeMm: number;
  /** Share of the detrended spread that the period explains. */
  readonly explained: number;
}

const harmonics = 3;
const unknowns = 4 + 2 * harmonics;
/** Slope of a side against the rough axis, mm per mm. */
const steepest = 0.04;

/** Left and right outlines of a single-start helix are half a pitch apart: harmonic k of the right
 *  side is (−1)^k times that of the left. */
export function startPeriod(
  points: readonly OutlinePoint[],
  middleS: number,
  pitches: readonly number[],
): PeriodStart | null {
  let best: PeriodStart | null = null;
  for (const p of pitches) {
    const tried = fitAt(points, middleS, p);
    if (tried && (!best || tried.explained > best.explained)) best = tried;
  }
  return best;
}

function fitAt(
  points: readonly OutlinePoint[],
  middleS: number,
  pitchMm: number,
): PeriodStart | null {
  const n = points.length;
  const rows = bases(points, middleS, pitchMm);
  const w = new Float64Array(n).fill(1);
  const sizes = new Float64Array(n);
  const residuals = new Float64Array(n);
  const A = new Float64Array(unknowns * unknowns);
  const b = new Float64Array(unknowns);
  let x: Float64Array | null = null;
  let scale = 0.3 * pitchMm;
  for (let pass = 0; pass < 6; pass++) {
    A.fill(0);
    b.fill(0);
    for (let i = 0; i < n; i++) {
      const at = i * unknowns;
      for (let k = 0; k < unknowns; k++) {
        const weighted = w[i] * rows[at + k];
        b[k] += weighted * points[i].r;
        for (let l = 0; l <= k; l++) A[k * unknowns + l] += weighted * rows[at + l];
      }
    }
    for (let k = 0; k < unknowns; k++)
      for (let l = 0; l < k; l++) A[l * unknowns + k] = A[k * unknowns + l];
    for (let k = 0; k < unknowns; k++) A[k * unknowns + k] += 1e-6 * n;
    // Neither side may run off: the axis is known to about a degree.
    for (const k of [1, 3]) A[k * unknowns + k] += 12 * (scale / steepest) ** 2;
    x = solveSymmetric(A, b, unknowns);
    if (!x) return null;
    for (let i = 0; i < n; i++) {
      let v = points[i].r;
      for (let k = 0, at = i * unknowns; k < unknowns; k++) v -= rows[at + k] * x[k];
      residuals[i] = v;
      sizes[i] = Math.abs(v);
    }
    sizes.sort();
    scale = Math.max(0.01 * pitchMm, 1.48 * quantile(sizes, 0.5));
    for (let i = 0; i < n; i++) w[i] = 1 / (1 + (residuals[i] / (2 * scale)) ** 2);
  }
  if (!x) return null;
  const c = x;
  let wave = 0;
  let rest = 0;
  points.forEach((_, i) => {
    let v = 0;
    for (let k = 4; k < unknowns; k++) v += rows[i * unknowns + k] * c[k];
    const e = residuals[i];
    wave += w[i] * v * v;
    rest += w[i] * e * e + (1 - w[i]) * scale * scale;
  });
  const amplitudeMm = Math.hypot(c[4], c[5]);
  return {
    pitchMm,
    crestS: middleS + (portable.atan2(c[5], c[4]) / (2 * Math.PI)) * pitchMm,
    left: [c[0], c[1]],
    right: [c[2], c[3]],
    amplitudeMm,
    explained: wave / (wave + rest),
  };
}

/** One row of `unknowns` after another: left offset and slope, right offset and slope, harmonics. */
function bases(points: readonly OutlinePoint[], middleS: number, pitchMm: number): Float64Array {
  const rows = new Float64Array(points.length * unknowns);
  points.forEach(({ side, s }, i) => {
    const row = i * unknowns;
    const t = s - middleS;
    rows[row + (side === 'left' ? 0 : 2)] = 1;
    rows[row + (side === 'left' ? 1 : 3)] = t;
    for (let k = 1; k <= harmonics; k++) {
      const sign = side === 'right' && k % 2 === 1 ? -1 : 1;
      const a = (2 * Math.PI * k * t) / pitchMm;
      rows[row + 2 + 2 * k] = sign * portable.cos(a);
      rows[row + 3 + 2 * k] = sign * portable.sin(a);
    }
  });
  return rows;
}
