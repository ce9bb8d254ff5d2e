import * as portable from '../../quantity/portable-math';
import type { Straightened } from './straightened';
import { amplitudes, foldedRows, foldInto, type Waves, wavesOf } from './wave-amplitudes';

/** A line of the straightened view along the axis, shading taken out. */
export interface Row {
  /** Axis frame, mm. */
  readonly r: number;
  readonly values: Float32Array;
}

export interface WindowSpectra {
  /** Share of each row's windowed variance at each period: shares[period·rows + row]. */
  readonly shares: Float32Array;
  /** Each row's own variance, near 1 for ridges and near 0 for paper. */
  readonly variances: Float64Array;
}

/** Of those periods, from the shortest on, that a window holds at least three of. */
export function windowSpectra(
  view: Straightened,
  rows: readonly Row[],
  { centreMm, windowMm }: { readonly centreMm: number; readonly windowMm: number },
  wavesAt: (samples: number, windowMm: number) => WindowWaves,
): WindowSpectra {
  const i0 = Math.max(0, Math.round((centreMm - windowMm / 2) / view.stepMm));
  const i1 = Math.min(view.columns - 1, Math.round((centreMm + windowMm / 2) / view.stepMm));
  const n = i1 - i0 + 1;
  const { w, sumW, sumW2, waves } = wavesAt(n, windowMm);
  const folded = foldedRows(n, rows.length);
  const v = new Float64Array(n);
  const energies = Float64Array.from(rows, ({ values }, j) => {
    let mean = 0;
    for (let i = 0; i < n; i++) mean += w[i] * values[i0 + i];
    mean /= sumW;
    let energy = 1e-9;
    for (let i = 0; i < n; i++) {
      v[i] = w[i] * (values[i0 + i] - mean);
      energy += v[i] * v[i];
    }
    foldInto(folded, j, v);
    return energy;
  });
  const { re, im } = amplitudes(folded, waves);
  const shares = new Float32Array(re.length);
  // A pure wave under the window w has |Σ w²·A·cos·e|² = (A·Σw²/2)² and energy A²·Σw²/2.
  for (let k = 0, at = 0; k < waves.count; k++)
    for (let j = 0; j < rows.length; j++, at++)
      shares[at] = (2 * (re[at] * re[at] + im[at] * im[at])) / (sumW2 * energies[j]);
  return { shares, variances: energies.map((energy) => energy / sumW2) };
}

/** A window of so many samples, and waves of the periods about its middle. */
interface WindowWaves {
  readonly w: Float64Array;
  readonly sumW: number;
  readonly sumW2: number;
  readonly waves: Waves;
}

/** Windows of one length differ by a sample at most: their waves are made once. */
export function windowWaves(
  stepMm: number,
  periods: readonly number[],
): (samples: number, windowMm: number) => WindowWaves {
  const made = new Map<number, WindowWaves>();
  return (n, windowMm) => {
    const known = made.get(n);
    if (known) return known;
    const w = Float64Array.from({ length: n }, (_, i) => portable.sin((Math.PI * (i + 0.5)) / n));
    const turns = periods.filter((p) => 3 * p <= windowMm).map((p) => (2 * Math.PI * stepMm) / p);
    const one = {
      w,
      sumW: w.reduce((a, b) => a + b, 0),
      sumW2: w.reduce((a, b) => a + b * b, 0),
      waves: wavesOf(n, turns),
    };
    made.set(n, one);
    return one;
  };
}
