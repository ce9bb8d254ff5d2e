import { expect, test } from 'vitest';
import { fitSeats } from '../../src/cli/calibrate/fit-seats';
import { seatOdds } from '../../src/journey/4-limbs/seat-odds';
import { seededRandom } from '../../src/quantity/random';

/** Invented seats that are right as often as known weights say; what does not count is among the traits. */
test('odds of seats are found again from seats drawn with them', () => {
  const { uniform } = seededRandom(5);
  const truth = { base: 3, score: 2, size: 1, evidence: 1.5, share: 1, hex: 0 };
  const photos = Array.from({ length: 800 }, () =>
    Array.from({ length: 4 }, () => {
      const traits = {
        score: -2 * uniform(),
        size: -uniform(),
        evidence: -3 * uniform(),
        share: -uniform(),
        hex: -2 * uniform(),
      };
      return { traits, right: uniform() < 1 / (1 + Math.exp(-seatOdds(traits, truth))) };
    }),
  );
  const found = fitSeats(photos);
  expect(found.base).toBeGreaterThan(2.5);
  expect(found.base).toBeLessThan(3.5);
  expect(found.score).toBeGreaterThan(1.6);
  expect(found.score).toBeLessThan(2.4);
  expect(found.evidence).toBeGreaterThan(1.2);
  expect(found.evidence).toBeLessThan(1.8);
  expect(found.hex).toBeLessThan(0.15);
  const said = photos.flat().map(({ traits }) => 1 / (1 + Math.exp(-seatOdds(traits, found))));
  const right = photos.flat().filter((seat) => seat.right).length;
  expect(said.reduce((sum, p) => sum + p, 0) / right).toBeCloseTo(1, 1);
});
