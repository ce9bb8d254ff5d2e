import { beforeAll, describe, expect, it } from 'vitest';
import { casesInFolder } from '../../src/cli/accuracy/cases';
import { measureCases } from '../../src/cli/accuracy/measure-cases';
import type { Score } from '../../src/cli/accuracy/score';
import { summarise } from '../../src/cli/accuracy/summary';
import { summaryTable } from '../../src/cli/accuracy/tables';
import type { EndShows, ThreadShows } from '../../src/journey/5-measurement/thread-measurement';
import type { Estimate } from '../../src/quantity/estimate';

/** The photos with truth in fixtures/photos: path-traced renders, not photographs. Thresholds are the
 *  project's own (whole journey: pitch 1 %, diameter 2 % in nine of ten); `npm run accuracy` prints
 *  them all beside the finer targets. */
describe('photos with truth', () => {
  const scores: Score[] = [];
  const looks: { name: string; cone: boolean; ring: boolean; got: EndShows | undefined }[] = [];
  const threads: { name: string; tapered: boolean; got: ThreadShows | undefined }[] = [];
  const noses: { name: string; truthDeg: number | null; got: Estimate | null }[] = [];
  beforeAll(async () => {
    const cases = await casesInFolder('fixtures/photos');
    const truths = await Promise.all(cases.map(async (one) => (await one.load()).truth));
    await measureCases(cases, { bars: null, along: false }, (s, answer) => {
      const deg = truths[scores.length]!.nose_half_angle_deg;
      const got = answer.outcome === 'measured' ? answer.measurement.noseHalfAngleDeg : null;
      noses.push({ name: s.name, truthDeg: typeof deg === 'number' ? deg : null, got });
      const { nose, family } = truths[scores.length]!;
      looks.push({
        name: s.name,
        cone: nose === 'cone',
        ring: family === 'O-ring stud',
        got: answer.outcome === 'measured' ? answer.measurement.endShows : undefined,
      });
      threads.push({
        name: s.name,
        tapered: s.taperTrue > 0,
        got: answer.outcome === 'measured' ? answer.measurement.threadShows : undefined,
      });
      scores.push(s);
    });
    console.log(summaryTable(scores));
  }, 300_000);

  const share = (of: readonly Score[], holds: (s: Score) => boolean) =>
    of.filter(holds).length / of.length;

  it('are measured, not refused, in at least 22 of 26', () => {
    expect(scores.length).toBeGreaterThanOrEqual(12);
    expect(share(scores, (s) => s.outcome === 'measured')).toBeGreaterThanOrEqual(22 / 26);
  });

  it('have pitch within 1 % and diameter within 2 % in nine of ten', () => {
    const measured = scores.filter((s) => s.numbers && s.scaleKnown);
    const within = (get: (n: NonNullable<Score['numbers']>) => number, limit: number) =>
      share(measured, (s) => Math.abs(get(s.numbers!)) <= limit);
    expect(within((n) => n.pitchError, 0.01)).toBeGreaterThanOrEqual(0.9);
    expect(within((n) => n.majorError, 0.02)).toBeGreaterThanOrEqual(0.9);
  });

  it('are never settled wrongly, and no number is off by more than 4 u', () => {
    const summary = summarise(scores);
    expect(summary.verdicts.wrong).toBe(0);
    expect(summary.connectionsWrong).toBe(0);
    expect(summary.beyondFourU).toEqual([]);
  });

  it('lie in their 95 % intervals', () => {
    const { coverage } = summarise(scores);
    expect(coverage.pitch).toBeGreaterThanOrEqual(0.9);
    expect(coverage.major).toBeGreaterThanOrEqual(0.9);
  });

  // Of a renderer that the networks of the ends have never seen: four cones, two O-rings under the hex.
  it('are told a cone from none by what the end looks like, and show the O-ring that they have', () => {
    expect(looks.filter(({ cone }) => cone).length).toBeGreaterThanOrEqual(4);
    expect(looks.filter(({ ring }) => ring).length).toBeGreaterThanOrEqual(2);
    for (const { name, cone, ring, got } of looks) {
      expect(got, name).toBeDefined();
      expect(got!.nose.none < 0.5, name).toBe(cone);
      if (ring) expect(got!.base['o-ring'], name).toBeGreaterThan(0.5);
      // Where the thread runs up to the hex, its last turn may look like a ring: never for certain.
      expect(got!.base['o-ring'], name).toBeLessThan(0.985);
    }
  });

  // Nor have those of the thread's look; straight threads run up to the hex here, as tapered ones do.
  it('are told tapered from straight by what the thread looks like', () => {
    expect(threads.filter(({ tapered }) => tapered).length).toBeGreaterThanOrEqual(2);
    for (const { name, tapered, got } of threads) {
      expect(got, name).toBeDefined();
      expect(got!.taper.tapered > 0.5, name).toBe(tapered);
    }
  });

  // Four of these twelve have a cone: 45° and 37° twice each, one of them ten pixels long.
  it('have a nose angle within 3 u and within 3° where there is a cone', () => {
    const cones = noses.filter(({ truthDeg }) => truthDeg !== null);
    expect(cones.length).toBeGreaterThanOrEqual(4);
    for (const { name, truthDeg, got } of cones) {
      expect(got, name).not.toBeNull();
      expect(Math.abs(got!.value - truthDeg!), name).toBeLessThan(Math.min(3, 3 * got!.u));
    }
  });

  it('have none where there is none, chamfers notwithstanding', () => {
    const others = noses.filter(({ truthDeg }) => truthDeg === null);
    expect(others.length).toBeGreaterThanOrEqual(6);
    for (const { name, got } of others) expect(got, name).toBeNull();
  });
});
