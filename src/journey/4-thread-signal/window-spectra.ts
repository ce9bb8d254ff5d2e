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
  const half = n >> 1;
  // About the window's middle the even part of a row meets the cosine only and the odd part the
  // sine only: half the products of a plain sum. Rows lie side by side, so that a few can be summed
  // at once below.
  const across = Math.ceil(rows.length / abreast) * abreast;
  const even = new Float64Array(half * across);
  const odd = new Float64Array(half * across);
  const centre = new Float64Array(across);
  const energies = new Float64Array(rows.length);
  const v = new Float64Array(n);
  for (let r = 0; r < rows.length; r++) {
    const row = rows[r].values;
    let mean = 0;
    for (let i = 0; i < n; i++) mean += w[i] * row[i0 + i];
    mean /= sumW;
    let energy = 1e-9;
    for (let i = 0; i < n; i++) {
      v[i] = w[i] * (row[i0 + i] - mean);
      energy += v[i] * v[i];
    }
    energies[r] = energy;
    for (let i = 0; i < half; i++) {
      even[i * across + r] = v[n - 1 - i] + v[i];
      odd[i * across + r] = v[n - 1 - i] - v[i];
    }
    if (n % 2 === 1) centre[r] = v[half];
  }
  // Last entry: the row's own variance, near 1 for ridges and near 0 for paper.
  const out = rows.map((_, r) => {
    const row = new Float64Array(periods.length + 1);
    row[periods.length] = energies[r] / sumW2;
    return row;
  });
  const power = new Float64Array(across);
  for (let k = 0; k < periods.length && 3 * periods[k] <= windowMm; k++) {
    for (let r = 0; r < across; r += abreast) {
      let a0 = centre[r];
      let a1 = centre[r + 1];
      let a2 = centre[r + 2];
      let a3 = centre[r + 3];
      let b0 = 0;
      let b1 = 0;
      let b2 = 0;
      let b3 = 0;
      for (let i = 0, wave = k * half, at = r; i < half; i++, wave++, at += across) {
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
      power[r] = a0 * a0 + b0 * b0;
      power[r + 1] = a1 * a1 + b1 * b1;
      power[r + 2] = a2 * a2 + b2 * b2;
      power[r + 3] = a3 * a3 + b3 * b3;
    }
    // A pure wave under the window w has |Σ w²·A·cos·e|² = (A·Σw²/2)² and energy A²·Σw²/2.
    for (let r = 0; r < rows.length; r++) out[r][k] = (2 * power[r]) / (sumW2 * energies[r]);
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
