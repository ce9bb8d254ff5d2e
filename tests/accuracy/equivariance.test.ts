import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitEdge } from '../../src/journey/2-card-pose/edge-profile';
import { gaussianResponse } from '../../src/journey/2-card-pose/edge-response';
import { shapesOfCuts } from '../../src/journey/4-thread-signal/cut-shape';
import type { OutlinePoint } from '../../src/journey/4-thread-signal/outline-edges';
import { fitRimEdge, usualRim } from '../../src/journey/4-thread-signal/rim-edge';
import { surfacePeriodNear } from '../../src/journey/4-thread-signal/surface-period';
import { fitThread } from '../../src/journey/5-measurement/fit-thread';
import { anyForm } from '../../src/journey/5-measurement/thread-form';
import { seededRandom } from '../../src/quantity/random';

/** What must not depend on the unit, on exposure or on which way round a part lies. */
const runs = { seed: 6, numRuns: 60 };
const sigma = 1.3;

/** A blurred step by the logistic curve: near enough to a lens, and not the estimators' own form. */
const step = (at: number, before: number, after: number, noise: number, seed: number) => {
  const random = seededRandom(seed);
  return Float64Array.from(
    { length: 18 },
    (_, i) =>
      before +
      (after - before) / (1 + Math.exp((-1.702 * (i - at)) / sigma)) +
      noise * random.normal(),
  );
};

const edge = fc.record({
  at: fc.double({ min: 6.5, max: 10.5, noNaN: true }),
  gain: fc.double({ min: 0.3, max: 4, noNaN: true }),
  lift: fc.double({ min: -50, max: 50, noNaN: true }),
  seed: fc.integer({ min: 1, max: 1e6 }),
});

describe('edges', () => {
  it('stay where they are when the light changes', () => {
    const cut = { perPx: 2, radius: 150, bodyIsBright: false, darkOverBright: 0.25 };
    const shape = shapesOfCuts(gaussianResponse(sigma / 2))(cut);
    fc.assert(
      fc.property(edge, ({ at, gain, lift, seed }) => {
        const seen = step(at, 60, 180, 1, seed);
        const lit = seen.map((v) => gain * v + lift);
        expect(fitEdge(lit, 8, sigma)!.position).toBeCloseTo(fitEdge(seen, 8, sigma)!.position, 2);
        expect(fitRimEdge(lit, 8, shape, usualRim.light)!.position).toBeCloseTo(
          fitRimEdge(seen, 8, shape, usualRim.light)!.position,
          2,
        );
      }),
      runs,
    );
  });

  it('turn round with the profile', () => {
    fc.assert(
      fc.property(edge, ({ at, seed }) => {
        const seen = step(at, 60, 180, 1, seed);
        const back = fitEdge(Float64Array.from(seen).reverse(), 17 - 8, sigma)!;
        expect(17 - back.position).toBeCloseTo(fitEdge(seen, 8, sigma)!.position, 2);
      }),
      runs,
    );
  });
});

describe('threads', () => {
  const outline = (unit: number, turned: boolean, seed: number): OutlinePoint[] => {
    const random = seededRandom(seed);
    const points = (['left', 'right'] as const).flatMap((side) =>
      Array.from({ length: 160 }, (_, i): OutlinePoint => {
        const s = -6 + i * 0.075;
        const turns = s / 1.5 + (side === 'left' ? 0 : 0.5);
        const off = Math.abs(turns - Math.round(turns));
        const depth = Math.min(0.61, Math.max(0, (off - 0.07) * Math.sqrt(3))) * 1.5;
        const r = 8 - depth + 0.01 * random.normal();
        return { side, photo: [0, 0], s, r, slope: 0, uMm: 0.01 };
      }),
    );
    // Half a turn about the line of sight: sides change places, and the axis runs the other way.
    return points.map((q) => ({
      ...q,
      side: turned ? (q.side === 'left' ? 'right' : 'left') : q.side,
      s: unit * (turned ? -q.s : q.s),
      r: unit * q.r,
      uMm: unit * q.uMm,
    }));
  };
  const fit = (unit: number, turned: boolean, seed: number) =>
    fitThread(
      outline(unit, turned, seed),
      0,
      {
        pitchMm: 1.505 * unit,
        crestS: 0.2 * unit,
        left: [7.6 * unit, 0],
        right: [7.6 * unit, 0],
        amplitudeMm: 0.4 * unit,
        explained: 0.9,
      },
      {
        blurMm: 0.02 * unit,
        form: anyForm,
        handed: 1,
        surfacePitch: null,
        mmPerPx: 0.1 * unit,
        uOffsetMm: 0.6 * unit,
      },
    );

  it('measure the same in another unit, and turned half round', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 30, noNaN: true }),
        fc.boolean(),
        fc.integer({ min: 1, max: 1e6 }),
        (unit, turned, seed) => {
          const plain = fit(1, false, seed);
          const other = fit(unit, turned, seed);
          expect(other.pitchMm / unit / plain.pitchMm - 1).toBeCloseTo(0, 4);
          expect(other.crestRadiusMm / unit / plain.crestRadiusMm - 1).toBeCloseTo(0, 3);
          expect(other.flat).toBeCloseTo(plain.flat, 2);
          expect(Math.abs(other.halfTaper)).toBeCloseTo(Math.abs(plain.halfTaper), 3);
        },
      ),
      { ...runs, numRuns: 12 },
    );
  });

  it('surface: pitch goes with the unit', () => {
    const random = seededRandom(2);
    const azimuths = Array.from({ length: 30 }, (_, k) => (k - 14.5) / 12);
    const rows = azimuths.map((phi) =>
      Float64Array.from(
        { length: 100 },
        (_, i) => Math.cos(2 * Math.PI * (i / 14.3 - phi / 6.2832)) + 0.2 * random.normal(),
      ),
    );
    const pitch = (stepMm: number) =>
      surfacePeriodNear({ rows, azimuths, fromS: 0, stepMm }, 14 * stepMm, 0.06)!.periodMm;
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 20, noNaN: true }), (unit) => {
        expect(pitch(0.1 * unit) / unit / pitch(0.1) - 1).toBeCloseTo(0, 4);
      }),
      { ...runs, numRuns: 12 },
    );
  });
});
