import * as portable from '../../quantity/portable-math';
import type { Straightened } from './straightened';

/** A line of the straightened view along the axis, shading taken out. */
export interface Row {
  /** Axis frame, mm. */
  readonly r: number;
  readonly values: Float32Array;
}

/** Share of each row's windowed variance at each period, rows × (periods, variance). */
export function windowSpectra(
  view: Straightened,
  rows: readonly Row[],
  centreMm: number,
  windowMm: number,
  periods: readonly number[],
  wavesOf: (n: number) => Waves,
): Float64Array[] {
  const i0 = Math.max(0, Math.round((centreMm - windowMm / 2) / view.stepMm));
  const i1 = Math.min(view.columns - 1, Math.round((centreMm + windowMm / 2) / view.stepMm));
  const n = i1 - i0 + 1;
  const { w, sumW, sumW2, c, s } = wavesOf(n);
  // About the window's middle the even part of a row meets the cosine only and the odd part the
  // sine only: half the products of a plain sum.
  const half = n >> 1;
  const even = new Float64Array(half * abreast);
  const odd = new Float64Array(half * abreast);
  const centre = new Float64Array(abreast);
  const energy = new Float64Array(abreast);
  const v = new Float64Array(n);
  const out = rows.map(() => new Float64Array(periods.length + 1));
  for (let first = 0; first < rows.length; first += abreast) {
    for (let lane = 0; lane < abreast; lane++) {
      // Past the last row its own is summed again, for nothing.
      const row = rows[Math.min(first + lane, rows.length - 1)].values;
      let mean = 0;
      for (let i = 0; i < n; i++) mean += w[i] * row[i0 + i];
      mean /= sumW;
      let sum = 1e-9;
      for (let i = 0; i < n; i++) {
        v[i] = w[i] * (row[i0 + i] - mean);
        sum += v[i] * v[i];
      }
      energy[lane] = sum;
      centre[lane] = n % 2 === 1 ? v[half] : 0;
      for (let i = 0; i < half; i++) {
        even[i * abreast + lane] = v[n - 1 - i] + v[i];
        odd[i * abreast + lane] = v[n - 1 - i] - v[i];
      }
    }
    const lanes = out.slice(first, first + abreast);
    // Last entry: the row's own variance, near 1 for ridges and near 0 for paper.
    lanes.forEach((row, lane) => {
      row[periods.length] = energy[lane] / sumW2;
    });
    for (let k = 0; k < periods.length && 3 * periods[k] <= windowMm; k++) {
      let a0 = centre[0];
      let a1 = centre[1];
      let a2 = centre[2];
      let a3 = centre[3];
      let b0 = 0;
      let b1 = 0;
      let b2 = 0;
      let b3 = 0;
      for (let i = 0, wave = k * half, at = 0; i < half; i++, wave++, at += 4) {
        const cosine = c[wave];
        const sine = s[wave];
        a0 += cosine * even[at];
        a1 += cosine * even[at + 1];
        a2 += cosine * even[at + 2];
        a3 += cosine * even[at + 3];
        b0 += sine * odd[at];
        b1 += sine * odd[at + 1];
        b2 += sine * odd[at + 2];
        b3 += sine * odd[at + 3];
      }
      // A pure wave under the window w has |Σ w²·A·cos·e|² = (A·Σw²/2)² and energy A²·Σw²/2.
      lanes[0][k] = (2 * (a0 * a0 + b0 * b0)) / (sumW2 * energy[0]);
      if (lanes.length > 1) lanes[1][k] = (2 * (a1 * a1 + b1 * b1)) / (sumW2 * energy[1]);
      if (lanes.length > 2) lanes[2][k] = (2 * (a2 * a2 + b2 * b2)) / (sumW2 * energy[2]);
      if (lanes.length > 3) lanes[3][k] = (2 * (a3 * a3 + b3 * b3)) / (sumW2 * energy[3]);
    }
  }
  return out;
}

/** Sums over one row wait for their own last addition: four rows at once wait together. */
const abreast = 4;

/** A window of n samples, and for its first half the waves of each period about its middle,
 *  period by period. */
export interface Waves {
  readonly w: Float64Array;
  readonly sumW: number;
  readonly sumW2: number;
  readonly c: Float64Array;
  readonly s: Float64Array;
}

/** Windows of one length differ by a sample at most: their waves are made once. */
export function waves(stepMm: number, periods: readonly number[]): (n: number) => Waves {
  const made = new Map<number, Waves>();
  return (n) => {
    let found = made.get(n);
    if (!found) {
      found = wavesFor(n, stepMm, periods);
      made.set(n, found);
    }
    return found;
  };
}

function wavesFor(n: number, stepMm: number, periods: readonly number[]): Waves {
  const w = Float64Array.from({ length: n }, (_, i) => portable.sin((Math.PI * (i + 0.5)) / n));
  const half = n >> 1;
  const middle = (n - 1) / 2;
  const c = new Float64Array(half * periods.length);
  const s = new Float64Array(half * periods.length);
  periods.forEach((period, k) => {
    const rate = (2 * Math.PI * stepMm) / period;
    for (let i = 0; i < half; i++) {
      c[k * half + i] = portable.cos(rate * (middle - i));
      s[k * half + i] = portable.sin(rate * (middle - i));
    }
  });
  return {
    w,
    sumW: w.reduce((a, b) => a + b, 0),
    sumW2: w.reduce((a, b) => a + b * b, 0),
    c,
    s,
  };
}
