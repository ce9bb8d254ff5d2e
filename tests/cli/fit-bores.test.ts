import { expect, test } from 'vitest';
import type { BoreSeen } from '../../src/cli/calibrate/bore-residual';
import { fitBores, spreadOfBores } from '../../src/cli/calibrate/fit-bores';
import { boreOdds } from '../../src/journey/4-bore/bore-odds';
import { coveringU } from '../../src/journey/5-measurement/local-spread';
import { seededRandom } from '../../src/quantity/random';

/** Invented bores that are right as often as known weights say. */
test('odds of bores are found again from bores drawn with them', () => {
  const { uniform } = seededRandom(11);
  const truth = { base: 4, score: 2.5, turn: 0.5, size: 1, multiple: 0, mouth: 1.5 };
  const bores = Array.from({ length: 1500 }, (_, i): BoreSeen => {
    const traits = {
      score: -3 * uniform(),
      turn: -3 * uniform(),
      size: -uniform(),
      multiple: -uniform(),
      mouth: -uniform(),
    };
    const right = uniform() < 1 / (1 + Math.exp(-boreOdds(traits, truth)));
    return { name: `${i}`, pose: 'standing', right, periods: [{ right, traits }], off: null };
  });
  const found = fitBores(bores);
  expect(Math.abs(found.score - truth.score)).toBeLessThan(0.6);
  const said = bores.map(({ periods }) => 1 / (1 + Math.exp(-boreOdds(periods[0]!.traits, found))));
  const right = bores.filter((bore) => bore.right).length;
  expect(said.reduce((sum, p) => sum + p, 0) / right).toBeCloseTo(1, 1);
});

/** Normal deviates of known spread, and one height that is wrong by a third. */
test('errors of bores are told by their parts, and a bias of the diameter is taken off', () => {
  const { normal } = seededRandom(3);
  const off = Array.from({ length: 600 }, (_, i) => ({
    pitch: 0.004 * normal(),
    diameter: 0.01 + (i % 10 === 0 ? 0.12 : 0.02) * normal(),
    heightMm: { error: i === 0 ? 6 : 0.4 * normal(), u: 0.4, value: 20 },
  }));
  const spread = spreadOfBores(off);
  expect(spread.diameter.over).toBeCloseTo(1.01, 2);
  expect(Math.abs(spread.diameter.u / 0.02 - 1)).toBeLessThan(0.12);
  expect(Math.abs(spread.diameter.far / 0.12 - 1)).toBeLessThan(0.3);
  expect(spread.diameter.astray).toBeCloseTo(0.1, 1);
  expect(Math.abs(coveringU(spread.pitch) / 0.004 - 1)).toBeLessThan(0.12);
  expect(spread.height.ofHeight).toBeLessThan(0.03);
});
