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
  { centreMm, windowMm }: { readonly centreMm: number; readonly windowMm: number },
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
  const none = new Float64Array(abreast);
  const energy = new Float64Array(abreast);
  const v = new Float64Array(n);
  const out = rows.map(() => new Float64Array(periods.length + 1));
  let count = 0;
  while (count < periods.length && 3 * periods[count] <= windowMm) count++;
  const a = new Float64Array(abreast * Math.ceil(count / together) * together);
  const b = new Float64Array(a.length);
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
    products(c, even, centre, a);
    products(s, odd, none, b);
    for (let lane = 0; lane < abreast && first + lane < rows.length; lane++) {
      const row = out[first + lane];
      // A pure wave under the window w has |Σ w²·A·cos·e|² = (A·Σw²/2)² and energy A²·Σw²/2.
      for (let k = 0, at = lane; k < count; k++, at += abreast)
        row[k] = (2 * (a[at] * a[at] + b[at] * b[at])) / (sumW2 * energy[lane]);
      // Last entry: the row's own variance, near 1 for ridges and near 0 for paper.
      row[periods.length] = energy[lane] / sumW2;
    }
  }
  return out;
}

/** Sums are made for so many rows and periods at once: one sum alone waits for its own last addition,
 *  and each value loaded serves several. */
const abreast = 4;
const together = 3;

/** Start plus Σ wave·part over a window's half, for each period and row: out[abreast·period + row].
 *  More than half of all the time that looking for threads takes. */
function products(
  waves: Float64Array,
  parts: Float64Array,
  start: Float64Array,
  out: Float64Array,
): void {
  const s0 = start[0];
  const s1 = start[1];
  const s2 = start[2];
  const s3 = start[3];
  let wave = 0;
  for (let o = 0; o < out.length; o += together * abreast) {
    let a0 = s0;
    let a1 = s1;
    let a2 = s2;
    let a3 = s3;
    let b0 = s0;
    let b1 = s1;
    let b2 = s2;
    let b3 = s3;
    let c0 = s0;
    let c1 = s1;
    let c2 = s2;
    let c3 = s3;
    for (let at = 0; at < parts.length; at += abreast, wave += together) {
      const a = waves[wave];
      const b = waves[wave + 1];
      const c = waves[wave + 2];
      const p0 = parts[at];
      a0 += a * p0;
      b0 += b * p0;
      c0 += c * p0;
      const p1 = parts[at + 1];
      a1 += a * p1;
      b1 += b * p1;
      c1 += c * p1;
      const p2 = parts[at + 2];
      a2 += a * p2;
      b2 += b * p2;
      c2 += c * p2;
      const p3 = parts[at + 3];
      a3 += a * p3;
      b3 += b * p3;
      c3 += c * p3;
    }
    out[o] = a0;
    out[o + 1] = a1;
    out[o + 2] = a2;
    out[o + 3] = a3;
    out[o + 4] = b0;
    out[o + 5] = b1;
    out[o + 6] = b2;
    out[o + 7] = b3;
    out[o + 8] = c0;
    out[o + 9] = c1;
    out[o + 10] = c2;
    out[o + 11] = c3;
  }
}

/** A window of n samples, and for its first half the waves of the periods about its middle: sample by
 *  sample for the first `together` periods, then for the next. */
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
  const blocks = Math.ceil(periods.length / together);
  const c = new Float64Array(half * together * blocks);
  const s = new Float64Array(c.length);
  periods.forEach((period, k) => {
    const rate = (2 * Math.PI * stepMm) / period;
    const first = Math.floor(k / together) * together * half + (k % together);
    for (let i = 0; i < half; i++) {
      c[first + together * i] = portable.cos(rate * (middle - i));
      s[first + together * i] = portable.sin(rate * (middle - i));
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
