import { expect, test } from 'vitest';
import { greedyAgainstExhaustive } from './greedy-against-exhaustive';
import { targetRows } from './report';
import { matchingFigures } from './run-matching-accuracy';

/** A short run of `npm run accuracy -- --matching`; the targets are those of the full one, but for
 *  speed, which a shared machine cannot promise: it gets three times as long. */
test('the matching core reaches its targets on 2000 simulated fittings', () => {
  const figures = matchingFigures({ cases: 2000, seed: 20 });
  const rows = targetRows(figures, greedyAgainstExhaustive(40, 20));
  const missed = rows.filter((row) => !row.met && !row.target.endsWith(' s'));
  expect(missed).toEqual([]);
  expect(figures.secondsPer10k).toBeLessThan(60);
  expect(figures.threadSettled).toBeGreaterThan(1500);
  expect(figures.readingsAlone.threadWrong).toBe(0);
});
