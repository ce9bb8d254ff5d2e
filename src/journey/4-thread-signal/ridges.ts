import * as portable from '../../quantity/portable-math';
import { type Helix, helixOf } from './helix';
import type { Unrolled } from './unrolled-surface';

/** Depth below the crests at which a thread's brightness pattern sits, in pitches: somewhere between
 *  crest and root, as the light falls. */
export const ridgeDepth = { value: 0.15, u: 0.2 };

export interface RidgeFit {
  readonly pitchMm: number;
  /** From the disagreement of bands of azimuth, so shading that drifts along the thread is in it;
   *  the radius at which ridges lie is not. */
  readonly uMm: number;
  /** Share of the variance that the period and its second harmonic explain, over all rows. */
  readonly explained: number;
  /** Share of that in the period itself, not its half: near 0 when it is really two pitches. */
  readonly fundamental: number;
  readonly helix: Helix;
}

const bands = 6;

/** Pitch by maximum likelihood over rows whose amplitudes and phases are free: shading may do what it
 *  likes from row to row, as long as it repeats along the axis (Rife & Boorstyn 1974 for one row). */
export function ridgePitch(view: Unrolled, startMm: number, span: number): RidgeFit | null {
  const n = view.rows.length;
  if (n < 2 * bands) return null;
  const all = view.rows.map((_, i) => i);
  const best = peak(view, all, startMm, span);
  const { explained, fundamental, information } = likelihood(view, best, all);
  const single = Array.from({ length: bands }, (_, k) =>
    all.slice(Math.floor((k * n) / bands), Math.floor(((k + 1) * n) / bands)),
  ).map((rows) => {
    const p = peak(view, rows, best, 0.02);
    return { p, weight: likelihood(view, p, rows).information };
  });
  const weight = single.reduce((s, b) => s + b.weight, 0);
  const spread = Math.sqrt(
    single.reduce((s, b) => s + b.weight * (b.p - best) ** 2, 0) / Math.max(weight, 1e-12),
  );
  return {
    pitchMm: best,
    uMm: Math.hypot(1 / Math.sqrt(Math.max(information, 1e-12)), spread / Math.sqrt(bands - 1)),
    explained,
    fundamental,
    helix: helixOf(view, best),
  };
}

function peak(view: Unrolled, rows: readonly number[], startMm: number, span: number): number {
  const length = view.rows[0].length * view.stepMm;
  const resolution = Math.min((0.15 * startMm * startMm) / length, (span * startMm) / 3);
  let best = startMm;
  let bestScore = Number.NEGATIVE_INFINITY;
  const consider = (p: number) => {
    const { score } = likelihood(view, p, rows);
    if (score > bestScore) {
      bestScore = score;
      best = p;
    }
  };
  for (let p = startMm * (1 - span); p <= startMm * (1 + span); p += resolution) consider(p);
  for (let h = resolution / 2; h > 2e-5 * best; h /= 2) {
    const centre = best;
    consider(centre - h);
    consider(centre + h);
  }
  return best;
}

/** How much of the pattern of `reference` columns is found again, in phase, around each axial
 *  position: near 1 on the thread, near 0 off it. One value per half pitch along the view. */
export function ridgePresence(
  view: Unrolled,
  pitchMm: number,
  reference: { readonly fromS: number; readonly toS: number },
): { readonly s: number; readonly presence: number }[] {
  const n = view.rows[0]?.length ?? 0;
  const column = (s: number) =>
    Math.max(0, Math.min(n - 1, Math.round((s - view.fromS) / view.stepMm)));
  const wave = (row: Float64Array, from: number, to: number, h: number): [number, number] => {
    let a = 0;
    let b = 0;
    for (let i = from; i <= to; i++) {
      const t = (2 * Math.PI * h * i * view.stepMm) / pitchMm;
      a += portable.cos(t) * row[i];
      b += portable.sin(t) * row[i];
    }
    return [a / (to - from + 1), b / (to - from + 1)];
  };
  const r0 = column(reference.fromS);
  const r1 = column(reference.toS);
  const known = view.rows.map((row) => [wave(row, r0, r1, 1), wave(row, r0, r1, 2)]);
  const power = known.reduce(
    (s, waves) => s + waves.reduce((t, [a, b]) => t + a * a + b * b, 0),
    1e-12,
  );
  const half = Math.max(2, Math.round(pitchMm / view.stepMm / 2));
  const out: { s: number; presence: number }[] = [];
  for (let i = half; i < n - half; i += half) {
    let met = 0;
    view.rows.forEach((row, k) => {
      known[k].forEach(([a, b], h) => {
        const [c, d] = wave(row, i - half, i + half, h + 1);
        met += a * c + b * d;
      });
    });
    out.push({ s: view.fromS + i * view.stepMm, presence: met / power });
  }
  return out;
}

/** Likelihood of a pitch, with each row's noise from its own residual. Two harmonics. */
function likelihood({ rows, stepMm }: Unrolled, pitchMm: number, chosen: readonly number[]) {
  const n = rows[0].length;
  const tables = [1, 2].map((h) => {
    const c = new Float64Array(n);
    const s = new Float64Array(n);
    for (let i = 0; i < n; i++) {
      const a = (2 * Math.PI * h * i * stepMm) / pitchMm;
      c[i] = portable.cos(a);
      s[i] = portable.sin(a);
    }
    return { c, s };
  });
  const length = n * stepMm;
  // Samples a pixel apart share blur and noise reduction: about every second is new.
  const effective = n / 2;
  let score = 0;
  let information = 0;
  let kept = 0;
  let first = 0;
  let all = 0;
  for (const index of chosen) {
    const row = rows[index];
    let energy = 0;
    for (let i = 0; i < n; i++) energy += row[i] * row[i];
    const waves = tables.map(({ c, s }) => {
      let a = 0;
      let b = 0;
      for (let i = 0; i < n; i++) {
        a += c[i] * row[i];
        b += s[i] * row[i];
      }
      return { a: (2 * a) / n, b: (2 * b) / n };
    });
    const power = waves.map(({ a, b }) => ((a * a + b * b) * n) / 2);
    const explained = Math.min(energy * 0.999, power[0] + power[1]);
    const rest = energy - explained + 1e-3 * n;
    score -= (effective / 2) * portable.log(rest);
    kept += explained;
    first += power[0];
    all += energy;
    const variance = rest / n;
    // CRB of a frequency f: 6σ²/(π²A²·N·T²); harmonic h sees h·f. u(p) = p²·u(f).
    waves.forEach(({ a, b }, k) => {
      const h = k + 1;
      information +=
        (Math.PI ** 2 * (a * a + b * b) * effective * length * length * h * h) /
        (6 * variance * (pitchMm * pitchMm) ** 2);
    });
  }
  // Neighbouring rows share pixels' noise reduction too.
  return {
    score,
    information: information / 2,
    explained: all > 0 ? kept / all : 0,
    fundamental: kept > 0 ? first / kept : 0,
  };
}
