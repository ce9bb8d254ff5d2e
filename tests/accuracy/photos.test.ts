import { beforeAll, describe, expect, it } from 'vitest';
import { casesInFolder } from '../../src/cli/accuracy/cases';
import { measureCases } from '../../src/cli/accuracy/measure-cases';
import type { Score } from '../../src/cli/accuracy/score';
import { summarise } from '../../src/cli/accuracy/summary';
import { summaryTable } from '../../src/cli/accuracy/tables';

/** The photos with truth in fixtures/photos: path-traced renders, not photographs. Thresholds are the
 *  project's own (whole journey: pitch 1 %, diameter 2 % in nine of ten); `npm run accuracy` prints
 *  them all beside the finer targets. */
describe('photos with truth', () => {
  const scores: Score[] = [];
  beforeAll(async () => {
    await measureCases(await casesInFolder('fixtures/photos'), null, (s) => scores.push(s));
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
});
