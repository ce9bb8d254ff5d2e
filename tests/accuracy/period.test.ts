import { expect, it } from 'vitest';
import { formDepth } from '../../fixtures/synthetic/threads';
import type { OutlinePoint, Side } from '../../src/journey/4-thread-signal/outline-edges';
import { fitThread } from '../../src/journey/5-measurement/fit-thread';
import { startPeriod } from '../../src/journey/5-measurement/start-period';
import { anyForm } from '../../src/journey/5-measurement/thread-form';
import { invertSymmetric } from '../../src/quantity/matrix';
import { seededRandom } from '../../src/quantity/random';

/** Period estimator against the Cramér–Rao bound. The outline here is the standard's own tooth
 *  smoothed by a Gaussian, not the estimator's model. Bound: Fisher information of a known waveform
 *  with pitch, phase, radius, taper, axis offset and turn unknown; for a sinusoid it tends to that of
 *  Rife & Boorstyn 1974, var ω ≥ 12 σ² · 2/(A² N (N² − 1)), checked below. */

interface Outline {
  readonly pitchMm: number;
  readonly turns: number;
  readonly blurMm: number;
  readonly noiseMm: number;
  readonly stepMm: number;
}

const wave = ({ pitchMm, blurMm }: Outline) => {
  const n = 240;
  const table = new Float64Array(n + 1);
  const sigma = blurMm / pitchMm;
  for (let i = 0; i <= n; i++) {
    let sum = 0;
    let weight = 0;
    for (let k = -60; k <= 60; k++) {
      const off = (k / 60) * 3.5;
      const w = Math.exp(-0.5 * off * off);
      const x = i / n + off * sigma;
      sum -= w * pitchMm * formDepth('60', x - Math.round(x), 0.14);
      weight += w;
    }
    table[i] = sum / weight;
  }
  return (phase: number) => {
    const x = (phase - Math.floor(phase)) * n;
    const k = Math.floor(x);
    return table[k] + (x - k) * (table[k + 1] - table[k]);
  };
};

type Parameters = readonly [
  pitch: number,
  phase: number,
  radius: number,
  taper: number,
  offset: number,
  turn: number,
];

const radiusAt = (tooth: (phase: number) => number, p: Parameters, side: Side, s: number) => {
  const sign = side === 'left' ? 1 : -1;
  return p[2] + p[3] * s + sign * (p[4] + p[5] * s) + tooth((s - p[1]) / p[0] + (sign - 1) / 4);
};

function places({ pitchMm, turns, stepMm }: Outline): { side: Side; s: number }[] {
  const n = Math.round((turns * pitchMm) / stepMm);
  return (['left', 'right'] as const).flatMap((side) =>
    Array.from({ length: n }, (_, i) => ({ side, s: (i - (n - 1) / 2) * stepMm })),
  );
}

function pitchBound(outline: Outline, at: Parameters, tooth = wave(outline)): number {
  const steps = [1e-4, 1e-4, 1e-3, 1e-4, 1e-3, 1e-4];
  const information = new Float64Array(36);
  for (const { side, s } of places(outline)) {
    const row = steps.map((h, j) => {
      const moved = (d: number) => at.map((v, k) => (k === j ? v + d : v)) as unknown as Parameters;
      const up = radiusAt(tooth, moved(h), side, s);
      return (up - radiusAt(tooth, moved(-h), side, s)) / (2 * h);
    });
    for (let a = 0; a < 6; a++)
      for (let b = 0; b < 6; b++)
        information[6 * a + b] += (row[a]! * row[b]!) / outline.noiseMm ** 2;
  }
  return Math.sqrt(invertSymmetric(information, 6)![0]!);
}

it('the bound used here is Rife and Boorstyn’s for a sinusoid', () => {
  const outline = { pitchMm: 1.5, turns: 10, blurMm: 0.05, noiseMm: 0.02, stepMm: 0.05 };
  const amplitude = 0.4;
  const sine = (phase: number) => amplitude * Math.cos(2 * Math.PI * phase);
  const bound = pitchBound(outline, [1.5, 0.1, 8, 0, 0, 0], sine);
  // Both sides together: 2 N samples over the same span; ω in rad per sample.
  const n = Math.round((outline.turns * outline.pitchMm) / outline.stepMm);
  const variance = (12 * outline.noiseMm ** 2 * 2) / (2 * amplitude ** 2 * n * (n * n - 1));
  const omega = (2 * Math.PI * outline.stepMm) / outline.pitchMm;
  expect(bound / ((outline.pitchMm * Math.sqrt(variance)) / omega)).toBeGreaterThan(0.98);
  expect(bound / ((outline.pitchMm * Math.sqrt(variance)) / omega)).toBeLessThan(1.06);
});

it('pitch by the joint fit of both sides, 6 to 10 turns: RMSE within 1.15 of the bound, u no smaller', () => {
  const cases = [
    [6, 1.5, 0.07],
    [8, 1.27, 0.09],
    [10, 2.117, 0.08],
  ] as const;
  const trials = 32;
  // Errors and stated u over the bound, squared; their means over all trials.
  const errors: number[] = [];
  const stated: number[] = [];
  for (const [turns, pitchMm, blurMm] of cases) {
    const outline = { pitchMm, turns, blurMm, noiseMm: 0.02, stepMm: 0.06 };
    const tooth = wave(outline);
    const random = seededRandom(31 + turns);
    for (let k = 0; k < trials; k++) {
      const at: Parameters = [
        pitchMm * (1 + random.between(-0.004, 0.004)),
        random.between(0, pitchMm),
        8,
        0.001,
        random.between(-0.05, 0.05),
        random.between(-0.002, 0.002),
      ];
      const points: OutlinePoint[] = places(outline).map(({ side, s }) => ({
        side,
        photo: [0, 0],
        s,
        r: radiusAt(tooth, at, side, s) + outline.noiseMm * random.normal(),
        slope: 0,
        uMm: outline.noiseMm,
        blurMm,
      }));
      const trial = Array.from({ length: 21 }, (_, i) => pitchMm * (1 + (i - 10) * 0.008));
      const start = startPeriod(points, 0, trial);
      const priors = {
        blurMm,
        form: anyForm,
        handed: 1,
        surfacePitch: null,
        mmPerPx: 0.15,
      } as const;
      const fit = fitThread(points, 0, start!, priors);
      const bound = pitchBound(outline, at, tooth);
      errors.push(((fit.pitchMm - at[0]) / bound) ** 2);
      stated.push(fit.covariance[0]! / bound ** 2);
    }
  }
  const rms = (v: readonly number[]) => Math.sqrt(v.reduce((s, x) => s + x, 0) / v.length);
  expect(rms(errors)).toBeLessThan(1.15);
  expect(rms(stated)).toBeGreaterThan(0.9 * rms(errors));
}, 120_000);
