import { expect, test } from 'vitest';
import { fitShares } from '../../src/cli/calibrate/fit-shares';
import { spreadMm } from '../../src/journey/5-measurement/learnt-spread';
import { seededRandom } from '../../src/quantity/random';

/** Invented residuals whose spread is known: twice the fit's own, and a hundredth of the pitch. */
test('shares are found again from residuals drawn with them', () => {
  const { uniform, normal } = seededRandom(3);
  const truth = { fit: 2, apart: 0, known: 0, pitch: 0.01, pixel: 0 };
  const rows = Array.from({ length: 600 }, () => {
    const traces = {
      fitMm: 0.01 + 0.1 * uniform(),
      apartMm: 0.1 * uniform(),
      knownMm: 0.1 * uniform(),
      pitchMm: 1 + 2 * uniform(),
      pixelMm: 0.1,
    };
    return { errorMm: spreadMm(traces, truth) * normal(), sharedMm: 0, traces };
  });
  const found = fitShares(rows, { fit: 1, apart: 0.3, known: 0.3, pitch: 0.005, pixel: 0.1 });
  const held = rows.filter((q) => Math.abs(q.errorMm) < 1.96 * spreadMm(q.traces, found)).length;
  expect(held / rows.length).toBeGreaterThan(0.94);
  expect(held / rows.length).toBeLessThan(0.965);
  const ratios = rows
    .map((q) => spreadMm(q.traces, found) / spreadMm(q.traces, truth))
    .sort((a, b) => a - b);
  expect(ratios[60]).toBeGreaterThan(0.7);
  expect(ratios[540]).toBeLessThan(1.4);
});
