import { expect, test } from 'vitest';
import { fitSurface } from '../../src/cli/calibrate/fit-surface';
import { surfaceU } from '../../src/journey/5-measurement/learnt-spread';
import { seededRandom } from '../../src/quantity/random';

test('what sets how far the surface is trusted finds the spread that errors were drawn from', () => {
  const { uniform, normal } = seededRandom(7);
  const truth = { even: 0.001, drift: 0.02 };
  const rows = Array.from({ length: 400 }, () => {
    const turns = 4 + 10 * uniform();
    const shared = 0.001 * uniform();
    const astray = uniform() < 0.04;
    const error = astray
      ? 0.04 * (uniform() - 0.5)
      : normal() * Math.hypot(shared, surfaceU(turns, truth));
    return { error, shared, turns };
  });
  const found = fitSurface(rows);
  for (const turns of [5, 8, 12])
    expect(surfaceU(turns, found) / surfaceU(turns, truth)).toSatisfy(
      (ratio: number) => ratio > 0.85 && ratio < 1.15,
    );
});
