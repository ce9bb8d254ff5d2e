import * as portable from '../../quantity/portable-math';
import { fadingWindow } from './fading-window';
import type { Unrolled } from './unrolled-surface';
import { amplitudes, type FoldedRows, foldedRows, foldInto, wavesOf } from './wave-amplitudes';

/** A period of the unrolled surface, and what speaks for it. */
export interface SurfacePeriod {
  readonly periodMm: number;
  /** How far the pattern climbs from row to row, periods per turn: +1 for a right-hand thread of one
   *  start about a true axis, −1 for a left-hand one, 0 for rings; an axis turned by α adds
   *  2πRα/period. */
  readonly climb: number;
  /** Share of the surface's variance in the period's harmonics that climb together, 0…1. */
  readonly score: number;
}

/** Under the window, which fades towards its ends. */
const fewestTurns = 3.5;
/** Harmonics of the period that are looked at. */
const harmonics = 6;
/** Climbs that are tried, periods per turn. */
const mostClimb = 4;
const climbSteps = 33;
/** Shares of the rows by which rows lie apart whose phases are compared: 10 to 45 degrees. */
const baselines = [1 / 16, 1 / 8, 1 / 5, 2 / 7];
/** Periods whose multiples and fractions are looked at. */
const peaksKept = 8;
const refinedPeriods = 7;
const fractions = [0.5, 1, 2, 3];
/** Of how many spacings of rows the climbs' waves are kept: memory only (judgement). */
const spacingsKept = 16;
/** Fewest samples to a wave. */
export const samplesPerWave = 3.2;

/** Periods of the surface, likeliest first: peaks of the rows' summed spectra, their multiples and
 *  halves, each scored by the energy of its harmonics in all rows as far as they climb together.
 *  `range` bounds the period, mm. */
export function surfacePeriods(
  view: Unrolled,
  range: { readonly fromMm: number; readonly toMm: number },
): SurfacePeriod[] {
  const surface = windowed(view);
  if (!surface) return [];
  const { lengthMm } = surface;
  const shortest = Math.max(range.fromMm / 2, samplesPerWave * view.stepMm);
  const longest = Math.min(range.toMm, lengthMm / fewestTurns);
  if (!(longest > shortest)) return [];
  const step = 1 / (5 * lengthMm);
  const frequencies: number[] = [];
  for (let f = 1 / longest; f <= 1 / shortest; f += step) frequencies.push(f);
  const energy = summedSpectrum(surface, frequencies);
  const peaks = energy
    .map((e, i) => ({ e, i }))
    .filter(({ e, i }) => e > (energy[i - 1] ?? 0) && e >= (energy[i + 1] ?? 0))
    .sort((a, b) => b.e - a.e)
    .slice(0, peaksKept)
    .map(({ i }) => 1 / topOf(frequencies, energy, i));
  const found: SurfacePeriod[] = [];
  for (const peak of peaks)
    for (const fraction of fractions) {
      const periodMm = peak * fraction;
      if (periodMm < range.fromMm || periodMm > longest) continue;
      if (found.some((q) => Math.abs(q.periodMm / periodMm - 1) < 0.004)) continue;
      found.push(scored(surface, periodMm));
    }
  return distinct(
    found
      .sort((a, b) => b.score - a.score)
      .slice(0, refinedPeriods)
      .map((q) => refined(surface, q))
      .sort((a, b) => b.score - a.score),
  );
}

/** The same for one period, sought within `span` of it. */
export function surfacePeriodNear(
  view: Unrolled,
  periodMm: number,
  span: number,
): SurfacePeriod | null {
  const surface = windowed(view);
  if (!surface) return null;
  const hop = (0.12 * periodMm * periodMm) / surface.lengthMm;
  const steps = Math.max(1, Math.ceil((span * periodMm) / hop));
  let best = scored(surface, periodMm);
  for (let k = -steps; k <= steps; k++) {
    const tried = scored(surface, periodMm * (1 + (span * k) / steps));
    if (tried.score > best.score) best = tried;
  }
  return refined(surface, best);
}

/** How well a wave's pattern holds over a stretch of the view, as `SurfacePeriod.score`; 0 where too little of it
 *  is seen. */
export function scoreOver(
  view: Unrolled,
  periodMm: number,
  zone: { readonly fromS: number; readonly toS: number },
): number {
  const column = (s: number) =>
    Math.max(0, Math.min(view.rows[0].length, Math.round((s - view.fromS) / view.stepMm)));
  const from = column(zone.fromS);
  const to = column(zone.toS);
  const surface = windowed({ ...view, rows: view.rows.map((row) => row.subarray(from, to)) });
  return surface ? scored(surface, periodMm).score : 0;
}

/** A view under a window that fades towards its ends. */
interface Windowed {
  readonly folded: FoldedRows;
  readonly azimuths: readonly number[];
  readonly stepMm: number;
  readonly lengthMm: number;
  /** Energy of all rows under the window, and of the window itself. */
  readonly energy: number;
  readonly window2: number;
}

function windowed({ rows, azimuths, stepMm }: Unrolled): Windowed | null {
  const n = rows[0]?.length ?? 0;
  if (rows.length < 12 || n < 16) return null;
  const { w, window2 } = fadingWindow(n);
  const folded = foldedRows(n, rows.length);
  const v = new Float64Array(n);
  let energy = 1e-9;
  rows.forEach((row, j) => {
    for (let i = 0; i < n; i++) {
      v[i] = row[i] * w[i];
      energy += v[i] * v[i];
    }
    foldInto(folded, j, v);
  });
  return { folded, azimuths, stepMm, lengthMm: n * stepMm, energy, window2 };
}

/** Complex amplitudes of every row at each frequency, per mm. */
const amplitudesAt = ({ folded, stepMm }: Windowed, frequencies: readonly number[]) =>
  amplitudes(
    folded,
    wavesOf(
      folded.samples,
      frequencies.map((f) => 2 * Math.PI * f * stepMm),
    ),
  );

/** Power of all rows together at each frequency, per mm. */
function summedSpectrum(surface: Windowed, frequencies: readonly number[]): number[] {
  const { re, im } = amplitudesAt(surface, frequencies);
  const { rows } = surface.folded;
  return frequencies.map((_, k) => power(re, im, k * rows, rows));
}

function power(re: Float32Array, im: Float32Array, from: number, count: number): number {
  let sum = 0;
  for (let i = from; i < from + count; i++) sum += re[i] * re[i] + im[i] * im[i];
  return sum;
}

/** Frequency at the top of the parabola through three neighbours. */
function topOf(frequencies: readonly number[], energy: readonly number[], i: number): number {
  const a = energy[i - 1] ?? energy[i];
  const b = energy[i];
  const c = energy[i + 1] ?? energy[i];
  const bend = a - 2 * b + c;
  const shift = bend < 0 ? Math.max(-0.5, Math.min(0.5, (a - c) / (2 * bend))) : 0;
  return frequencies[i] + shift * (frequencies[1] - frequencies[0]);
}

function scored(surface: Windowed, periodMm: number): SurfacePeriod {
  const { azimuths, stepMm, energy, window2 } = surface;
  const sums = new Float64Array(climbSteps);
  const spacing = azimuths[1] - azimuths[0];
  const rows = azimuths.length;
  const frequencies: number[] = [];
  for (let k = 1; k <= harmonics && periodMm / k >= samplesPerWave * stepMm; k++)
    frequencies.push(k / periodMm);
  const { re, im } = amplitudesAt(surface, frequencies);
  const together = new Float64Array(climbSteps);
  for (let k = 1; k <= frequencies.length; k++) {
    const first = (k - 1) * rows;
    together.fill(0);
    let all = 1e-12;
    for (const share of baselines) {
      const b = Math.max(1, Math.round(share * rows));
      let x = 0;
      let y = 0;
      for (let j = first; j + b < first + rows; j++) {
        const dx = re[j + b] * re[j] + im[j + b] * im[j];
        const dy = re[j + b] * im[j] - im[j + b] * re[j];
        x += dx;
        y += dy;
        all += Math.sqrt(dx * dx + dy * dy);
      }
      const { cosines, sines } = climbs(k, b, spacing);
      for (let m = 0; m < climbSteps; m++) together[m] += x * cosines[m] - y * sines[m];
    }
    const share = (2 * power(re, im, first, rows)) / (window2 * energy);
    for (let m = 0; m < climbSteps; m++) sums[m] += share * Math.max(together[m] / all, -0.2);
  }
  let top = 0;
  for (let m = 1; m < climbSteps; m++) if (sums[m] > sums[top]) top = m;
  const before = sums[Math.max(0, top - 1)];
  const after = sums[Math.min(climbSteps - 1, top + 1)];
  const bend = before - 2 * sums[top] + after;
  const shift = bend < 0 ? Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend))) : 0;
  return { periodMm, climb: climbAt(top + shift), score: sums[top] };
}

interface Climbs {
  readonly cosines: Float64Array;
  readonly sines: Float64Array;
}

/** By the rows' spacing, then by baseline and harmonic; views have few spacings, and each is scored hundreds of times. */
const climbsAt = new Map<number, (Climbs | undefined)[]>();

/** What a harmonic turns over a baseline of so many rows, for each climb that is tried. */
function climbs(harmonic: number, baseline: number, spacing: number): Climbs {
  let known = climbsAt.get(spacing);
  if (!known) {
    if (climbsAt.size >= spacingsKept) climbsAt.clear();
    known = [];
    climbsAt.set(spacing, known);
  }
  const at = baseline * (harmonics + 1) + harmonic;
  const found = known[at];
  if (found) return found;
  const angles = Float64Array.from(
    { length: climbSteps },
    (_, m) => harmonic * climbAt(m) * baseline * spacing,
  );
  const made = { cosines: angles.map(portable.cos), sines: angles.map(portable.sin) };
  known[at] = made;
  return made;
}

const climbAt = (m: number): number => mostClimb * ((2 * m) / (climbSteps - 1) - 1);

/** The best period about a first one, by ever smaller steps. */
function refined(surface: Windowed, first: SurfacePeriod): SurfacePeriod {
  const resolution = first.periodMm / surface.lengthMm;
  let best = first;
  for (let h = 0.12 * resolution; h > 0.005 * resolution; h /= 3) {
    const middle = best;
    const below = scored(surface, middle.periodMm * (1 - h));
    const above = scored(surface, middle.periodMm * (1 + h));
    if (below.score > best.score) best = below;
    if (above.score > best.score) best = above;
    const bend = below.score - 2 * middle.score + above.score;
    if (best !== middle || !(bend < 0)) continue;
    const top = scored(
      surface,
      middle.periodMm * (1 + (h * (below.score - above.score)) / (2 * bend)),
    );
    if (top.score > best.score) best = top;
  }
  return best;
}

/** Of periods that ran into the same peak, one. */
function distinct(sorted: readonly SurfacePeriod[]): SurfacePeriod[] {
  const out: SurfacePeriod[] = [];
  for (const q of sorted)
    if (!out.some((o) => Math.abs(o.periodMm / q.periodMm - 1) < 0.01)) out.push(q);
  return out;
}
