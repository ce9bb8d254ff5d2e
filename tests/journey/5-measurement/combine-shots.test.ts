import { describe, expect, it } from 'vitest';
import { combineShots } from '../../../src/journey/5-measurement/combine-shots';
import type {
  BudgetRow,
  ThreadMeasurement,
} from '../../../src/journey/5-measurement/thread-measurement';
import { seededRandom } from '../../../src/quantity/random';

interface Shot {
  readonly pitch: number;
  readonly major: number;
  readonly own: readonly [pitch: number, major: number];
  readonly scale: number;
}

/** A photo whose errors are its own edge noise and a print scale that all photos share. */
function shot({ pitch, major, own, scale }: Shot): ThreadMeasurement {
  const budget: BudgetRow[] = [
    { source: 'edge-noise', pitchMm: own[0], majorDiameterMm: own[1] },
    { source: 'print-scale', pitchMm: scale * pitch, majorDiameterMm: scale * major },
  ];
  const u = (key: 'pitchMm' | 'majorDiameterMm') => Math.hypot(budget[0][key], budget[1][key]);
  return {
    pitchMm: { value: pitch, u: u('pitchMm') },
    majorDiameterMm: { value: major, u: u('majorDiameterMm') },
    correlation: (scale * pitch * scale * major) / (u('pitchMm') * u('majorDiameterMm')),
    taper: { value: 0, u: 0.004 },
    flankAngleDeg: null,
    noseHalfAngleDeg: null,
    turns: 7,
    hand: 'right',
    starts: 1,
    middleFromEndMm: 5,
    budget,
  };
}

const combined = (shots: readonly ThreadMeasurement[]) => {
  const result = combineShots(shots);
  if (!result.ok) throw new Error(result.reason);
  return result.value;
};

describe('several photos of one fitting', () => {
  it('averages independent errors: u falls by √n', () => {
    const one = shot({ pitch: 1.5, major: 18, own: [0.002, 0.02], scale: 0 });
    const four = combined([one, one, one, one]);
    expect(four.pitchMm.u).toBeCloseTo(0.001, 9);
    expect(four.majorDiameterMm.u).toBeCloseTo(0.01, 9);
    expect(four.taper?.u).toBeCloseTo(0.002, 9);
  });

  it('multiplies what each photo shows of the thread', () => {
    const one = shot({ pitch: 1.814, major: 26.3, own: [0.002, 0.02], scale: 0 });
    const shows = (tapered: number, npt: number) => ({
      profile: { '60': 0.2, '55': 0.8 - npt, npt },
      taper: { straight: 1 - tapered, tapered },
    });
    const both = combined([
      { ...one, threadShows: shows(0.8, 0.4) },
      { ...one, threadShows: shows(0.5, 0.4) },
      one,
    ]);
    expect(both.threadShows!.taper.tapered).toBeCloseTo(0.8, 9);
    // 0.16 / (0.04 + 0.16 + 0.16)
    expect(both.threadShows!.profile.npt).toBeCloseTo(4 / 9, 9);
    expect(combined([one, one]).threadShows).toBeUndefined();
  });

  it('does not average a shared scale, and keeps what it correlates', () => {
    const one = shot({ pitch: 1.5, major: 18, own: [1e-9, 1e-9], scale: 0.005 });
    const many = combined([one, one, one]);
    expect(many.pitchMm.u).toBeCloseTo(0.0075, 9);
    expect(many.majorDiameterMm.u).toBeCloseTo(0.09, 9);
    expect(many.correlation).toBeCloseTo(1, 6);
  });

  it('states a covariance that a simulation with a shared scale confirms', () => {
    const random = seededRandom(20260);
    const truth = { pitch: 1.5, major: 18 };
    const owns = [
      [0.003, 0.03],
      [0.001, 0.05],
      [0.002, 0.01],
    ] as const;
    const scale = 0.003;
    const trials = 20_000;
    let pp = 0;
    let dd = 0;
    let pd = 0;
    let stated = combined([shot({ ...truth, own: owns[0], scale })]);
    for (let k = 0; k < trials; k++) {
      const common = 1 + scale * random.normal();
      const shots = owns.map((own) =>
        shot({
          pitch: truth.pitch * common + own[0] * random.normal(),
          major: truth.major * common + own[1] * random.normal(),
          own,
          scale,
        }),
      );
      const result = combineShots(shots);
      if (!result.ok) continue;
      stated = result.value;
      const p = stated.pitchMm.value - truth.pitch;
      const d = stated.majorDiameterMm.value - truth.major;
      pp += p * p;
      dd += d * d;
      pd += p * d;
    }
    const uPitch = Math.sqrt(pp / trials);
    const uMajor = Math.sqrt(dd / trials);
    expect(stated.pitchMm.u / uPitch).toBeGreaterThan(0.97);
    expect(stated.pitchMm.u / uPitch).toBeLessThan(1.03);
    expect(stated.majorDiameterMm.u / uMajor).toBeGreaterThan(0.97);
    expect(stated.majorDiameterMm.u / uMajor).toBeLessThan(1.03);
    expect(stated.correlation).toBeCloseTo(pd / trials / (uPitch * uMajor), 1);
  });

  it('never claims less than the shared part, nor more than the best photo', () => {
    const good = shot({ pitch: 1.5, major: 18, own: [0.001, 0.01], scale: 0.002 });
    const poor = shot({ pitch: 1.503, major: 18.02, own: [0.01, 0.1], scale: 0.002 });
    const both = combined([good, poor]);
    expect(both.pitchMm.u).toBeGreaterThanOrEqual(0.002 * 1.5);
    expect(both.pitchMm.u).toBeLessThanOrEqual(good.pitchMm.u * 1.0001);
  });

  it('refuses photos of different fittings', () => {
    const one = shot({ pitch: 1.5, major: 18, own: [0.002, 0.02], scale: 0.002 });
    const other = shot({ pitch: 1.588, major: 17.3, own: [0.002, 0.02], scale: 0.002 });
    expect(combineShots([one, other])).toMatchObject({ ok: false, reason: 'photos-disagree' });
  });

  it('brings tapered diameters to one place', () => {
    const near = { ...shot({ pitch: 1.814, major: 20, own: [0.002, 0.02], scale: 0 }) };
    const taper = { value: 1 / 16, u: 0.003 };
    const far = { ...shot({ pitch: 1.814, major: 20.125, own: [0.002, 0.02], scale: 0 }) };
    const both = combined([
      { ...near, taper, middleFromEndMm: 4 },
      { ...far, taper, middleFromEndMm: 6 },
    ]);
    expect(both.majorDiameterMm.value).toBeCloseTo(20, 6);
    expect(both.middleFromEndMm).toBe(4);
  });

  it('keeps another period only as far as every photo leaves it possible', () => {
    const one = shot({ pitch: 1.5, major: 18, own: [0.002, 0.02], scale: 0.002 });
    const doubtful = { ...one, otherPeriods: [{ ratio: 2, share: 0.2 }] };
    const periods = (...shots: ThreadMeasurement[]) => combined(shots).otherPeriods;
    expect(periods(one, one)).toBeUndefined();
    // A photo beside a rule says nothing of periods.
    expect(periods(doubtful, one)![0].share).toBeCloseTo(0.2, 9);
    // Odds multiply: (0.2/0.8)² to 1.
    expect(periods(doubtful, doubtful)![0]).toEqual({
      ratio: 2,
      share: expect.closeTo(0.0625 / 1.0625, 9),
    });
    expect(periods(doubtful, { ...one, otherPeriods: [] })).toEqual([]);
  });
});
