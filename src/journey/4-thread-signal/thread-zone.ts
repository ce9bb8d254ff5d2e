import { middleValue } from '../../quantity/order';
import * as portable from '../../quantity/portable-math';
import type { Straightened } from './straightened';
import { type Row, type WindowSpectra, windowSpectra, windowWaves } from './window-spectra';

/** Part of the straightened view where something repeats along the axis. */
export interface PeriodicZone {
  readonly fromS: number;
  readonly toS: number;
  readonly periodMm: number;
  /** Width across the axis over which the pattern is seen, weighted by how well the period and its
   *  harmonics explain each row, mm. */
  readonly strength: number;
  /** Outermost rows that repeat with the period: the crests, roughly, in the axis plane, mm. */
  readonly reachLeftMm: number;
  readonly reachRightMm: number;
}

/** Pitches of listed fluid-power threads run from 0.9 mm (27 or 28 tpi) to 3.2 mm (8 tpi). */
const shortestMm = 0.72;
const longestMm = 3.42;
const stepRatio = 1.028;
const rowStrideMm = 0.36;

/** Where on the fitting, between `insideS`, something repeats, strongest first and no two in the same
 *  place with the same period. Spectra of every row in windows along the axis, phases dropped: the
 *  ridges of a helix slant from row to row, and only their spacing is common to all. */
export function repeatingZones(
  view: Straightened,
  insideS: readonly [from: number, to: number],
  most: number,
): PeriodicZone[] {
  const rows = whitenedRows(view);
  const periods: number[] = [];
  for (let p = shortestMm / 2; p < longestMm; p *= stepRatio) periods.push(p);
  const octave = Math.round(portable.log(2) / portable.log(stepRatio));
  const first = periods.findIndex((p) => p >= Math.max(shortestMm, 4 * view.stepMm));
  const wavesAt = windowWaves(view.stepMm, periods);
  const found: Candidate[] = [];
  for (const windowMm of [5, 8, 12]) {
    for (
      let centre = insideS[0] + windowMm / 2;
      centre <= insideS[1] - windowMm / 2 + 1e-9;
      centre += windowMm / 6
    ) {
      const window = { centreMm: centre - view.fromS, windowMm };
      const spectra = windowSpectra(view, rows, window, wavesAt);
      let best: Candidate | null = null;
      for (let k = first; k < periods.length; k++) {
        if (3 * periods[k] > windowMm) break;
        // The crest and the root of a ridge both shine: much of the power sits in the second harmonic,
        // and counting it with the first keeps half a pitch from passing for a pitch.
        let strength = 0;
        for (let j = 0; j < rows.length; j++) {
          const explained = explainedBy(spectra, k, octave, j);
          strength += explained * explained;
        }
        strength *= rowStrideMm * Math.min(1, Math.sqrt(windowMm / 8));
        if (!best || strength > best.strength) best = { centre, windowMm, k, strength, spectra };
      }
      if (best) found.push(best);
    }
  }
  const kept: Candidate[] = [];
  for (const c of found.sort((a, b) => b.strength - a.strength)) {
    if (kept.length === most) break;
    if (kept.every((o) => 2 * Math.abs(o.centre - c.centre) > o.windowMm)) kept.push(c);
  }
  return kept.map((c) => ({
    fromS: c.centre - c.windowMm / 2,
    toS: c.centre + c.windowMm / 2,
    periodMm: periods[c.k],
    strength: c.strength,
    ...reach(rows, c.spectra, c.k, octave),
  }));
}

interface Candidate {
  readonly centre: number;
  readonly windowMm: number;
  readonly k: number;
  readonly strength: number;
  readonly spectra: WindowSpectra;
}

/** Share of a row's variance that a period explains with its second harmonic. */
function explainedBy({ shares, variances }: WindowSpectra, k: number, octave: number, row: number) {
  const rows = variances.length;
  return Math.min(1, shares[k * rows + row] + shares[(k - octave) * rows + row]);
}

/** How far out, left and right, at least half of three neighbouring rows repeat. */
function reach(rows: readonly Row[], spectra: WindowSpectra, k: number, octave: number) {
  const explained = rows.map((_, j) => explainedBy(spectra, k, octave, j) * spectra.variances[j]);
  const typical = [...explained].sort((a, b) => b - a)[Math.floor(explained.length / 3)] ?? 0;
  let left = 0;
  let right = 0;
  rows.forEach(({ r }, i) => {
    const near = middleValue([i - 1, i, i + 1].map((j) => explained[j] ?? 0));
    if (near < 0.4 * typical) return;
    left = Math.max(left, r);
    right = Math.max(right, -r);
  });
  return { reachLeftMm: left, reachRightMm: right };
}

/** Rows in coded brightness less their running mean and over their running spread: shading goes,
 *  and the step at a hex counts no more than a ridge. A floor on the spread keeps noise small. */
function whitenedRows({ values, columns, rows, fromR, stepMm }: Straightened): Row[] {
  const half = Math.round(2.0 / stepMm);
  const stride = Math.max(1, Math.round(rowStrideMm / stepMm));
  const floor = 0.35;
  const row = new Float64Array(columns);
  const s1 = new Float64Array(columns + 1);
  const s2 = new Float64Array(columns + 1);
  const out: Row[] = [];
  for (let j = 0; j < rows; j += stride) {
    for (let i = 0; i < columns; i++) {
      row[i] = Math.sqrt(values[j * columns + i]);
      s1[i + 1] = s1[i] + row[i];
      s2[i + 1] = s2[i] + row[i] * row[i];
    }
    // A row that leaves the photo is NaN somewhere, and so is its sum.
    if (!Number.isFinite(s1[columns])) continue;
    const whitened = new Float32Array(columns);
    for (let i = 0; i < columns; i++) {
      const a = Math.max(0, i - half);
      const b = Math.min(columns, i + half + 1);
      const mean = (s1[b] - s1[a]) / (b - a);
      const variance = Math.max(0, (s2[b] - s2[a]) / (b - a) - mean * mean);
      whitened[i] = (row[i] - mean) / Math.sqrt(variance + floor * floor);
    }
    out.push({ r: fromR + j * stepMm, values: whitened });
  }
  return out;
}
