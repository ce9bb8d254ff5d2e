import { expect, test } from 'vitest';
import { coneAngleDeg, coneAngleU } from '../../../src/journey/6-candidates/cone-angle';
import { seededRandom } from '../../../src/quantity/random';

test('plain geometry: a cone as long as it narrows on one side stands at 45°', () => {
  expect(coneAngleDeg(10, 6, 2)).toBeCloseTo(45, 9);
  // tan 37° = 0.75355.
  expect(coneAngleDeg(10, 6, 2 / 0.75355)).toBeCloseTo(37, 2);
});

test('its uncertainty is what repeated measuring would scatter', () => {
  const random = seededRandom(5);
  const angles = Array.from({ length: 20_000 }, () =>
    coneAngleDeg(
      9.2 + 0.1 * random.normal(),
      5.4 + 0.1 * random.normal(),
      2.5 + 0.15 * random.normal(),
    ),
  );
  const mean = angles.reduce((a, b) => a + b, 0) / angles.length;
  const u = Math.sqrt(angles.reduce((sum, a) => sum + (a - mean) ** 2, 0) / angles.length);
  expect(coneAngleU(9.2, 5.4, 2.5)).toBeCloseTo(u, 1);
});
