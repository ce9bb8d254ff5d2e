import { expect, test } from 'vitest';
import { fitSpread } from '../../src/cli/calibrate/fit-spread';
import { spreadMm } from '../../src/journey/5-measurement/learnt-spread';
import { seededRandom } from '../../src/quantity/random';

const { uniform, normal } = seededRandom(3);
const truth = { base: -3, fit: 0.8, limb: 0.4, score: -0.5, dark: 0.7, least: 0, most: 9 };
/** Invented errors whose spread is known. */
const rows = Array.from({ length: 600 }, () => {
  const pitchMm = 1 + 2 * uniform();
  const traces = {
    pitchMm,
    fitMm: pitchMm * Math.exp(-6 + 3 * uniform()),
    limbMm: pitchMm * Math.exp(-4 + 2 * uniform()),
    score: -uniform(),
    dark: uniform() < 0.4,
  };
  return { errorMm: spreadMm(traces, truth) * normal(), sharedMm: 0, traces };
});

test('a spread is found again from errors drawn with it', () => {
  const found = fitSpread(rows);
  const held = rows.filter((q) => Math.abs(q.errorMm) < 1.96 * spreadMm(q.traces, found)).length;
  expect(held / rows.length).toBeGreaterThan(0.94);
  expect(held / rows.length).toBeLessThan(0.965);
  const ratios = rows
    .map((q) => spreadMm(q.traces, found) / spreadMm(q.traces, truth))
    .sort((a, b) => a - b);
  expect(ratios[60]).toBeGreaterThan(0.75);
  expect(ratios[540]).toBeLessThan(1.35);
});

test('a spread stays within what photos have shown', () => {
  const found = fitSpread(rows);
  const { traces } = rows[0]!;
  const far = { ...traces, fitMm: 50 * traces.pitchMm, limbMm: 50 * traces.pitchMm };
  expect(spreadMm(far, found)).toBeCloseTo(found.most * traces.pitchMm, 12);
  expect(spreadMm({ ...traces, fitMm: 1e-9, limbMm: 0 }, found)).toBeCloseTo(
    found.least * traces.pitchMm,
    12,
  );
});
