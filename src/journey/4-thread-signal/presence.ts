import * as portable from '../../quantity/portable-math';
import type { Extent } from './axis-frame';
import type { Unrolled } from './unrolled-surface';

/** Share of the seed's pattern that must be met again, phases of all rows moved alike, for a place to belong
 *  to it; chance meets about a fifth. */
const leastMet = 0.4;
/** Doubtful stretches that are bridged, a dent or a highlight, in waves. */
const bridgedWaves = 1.6;

/** How far a wave that ripples in `seed` goes on along the axis. The pattern may drift in phase, but rows
 *  keep their phases among one another: on a thread they do, whatever the light. */
export function grown(view: Unrolled, waveMm: number, seed: Extent): Extent {
  const n = view.rows[0]?.length ?? 0;
  const half = Math.max(3, Math.round(waveMm / view.stepMm));
  const hop = Math.max(1, Math.round(waveMm / 4 / view.stepMm));
  const tables = [1, 2].map((k) => tableOf(waveMm / k / view.stepMm, n));
  const places: number[] = [];
  for (let i = half; i < n - half; i += hop) places.push(i);
  const at = (i: number) => view.fromS + i * view.stepMm;
  const own = places.flatMap((i, k) => (at(i) >= seed.fromS && at(i) <= seed.toS ? [k] : []));
  if (own.length === 0) return seed;
  const column = (s: number) =>
    Math.max(0, Math.min(n - 1, Math.round((s - view.fromS) / view.stepMm)));
  const known = tables.map((t) => wave(view.rows, t, column(seed.fromS), column(seed.toS)));
  const met = places.map((i) => {
    let sum = 0;
    let size = 1e-12;
    tables.forEach((t, k) => {
      const local = wave(view.rows, t, i - half, i + half);
      let re = 0;
      let im = 0;
      for (let j = 0; j < local.length; j += 2) {
        re += known[k][j] * local[j] + known[k][j + 1] * local[j + 1];
        im += known[k][j] * local[j + 1] - known[k][j + 1] * local[j];
        size += known[k][j] * known[k][j] + known[k][j + 1] * known[k][j + 1];
      }
      sum += Math.sqrt(re * re + im * im);
    });
    return sum / size;
  });
  const walk = (from: number, step: 1 | -1): number => {
    let reached = from;
    for (let k = from; k >= 0 && k < places.length; k += step) {
      if (Math.abs(k - reached) * hop * view.stepMm > bridgedWaves * waveMm) break;
      if (met[k] > leastMet) reached = k;
    }
    return at(places[reached]);
  };
  const middle = own[own.length >> 1];
  return { fromS: walk(middle, -1) - waveMm / 2, toS: walk(middle, 1) + waveMm / 2 };
}

interface Table {
  readonly c: Float64Array;
  readonly s: Float64Array;
}

function tableOf(period: number, n: number): Table {
  const c = new Float64Array(n);
  const s = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const a = (2 * Math.PI * i) / period;
    c[i] = portable.cos(a);
    s[i] = portable.sin(a);
  }
  return { c, s };
}

/** Mean complex amplitude of every row from one column to another, real and imaginary in turn. */
function wave(
  rows: readonly Float64Array[],
  { c, s }: Table,
  from: number,
  to: number,
): Float64Array {
  const out = new Float64Array(2 * rows.length);
  const n = to - from + 1;
  for (let j = 0; j < rows.length; j++) {
    const row = rows[j];
    let a = 0;
    let b = 0;
    for (let i = from; i <= to; i++) {
      a += c[i] * row[i];
      b -= s[i] * row[i];
    }
    out[2 * j] = a / n;
    out[2 * j + 1] = b / n;
  }
  return out;
}
