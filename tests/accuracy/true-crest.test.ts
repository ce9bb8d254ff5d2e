import { expect, test } from 'vitest';
import { trueCrestMm } from '../../src/cli/accuracy/true-crest';

test('a taper grows until it meets the cylinder it is cut into; a straight thread is the same all along', () => {
  // 1/4 NPT of 14.04 mm, whose last two millimetres are cut into a bar of 14.023 mm.
  const taper = { crest_major_at_start_mm: 13.283, crest_major_at_end_mm: 14.023, taper: 0.0625 };
  expect(2 * trueCrestMm(taper, 0)).toBeCloseTo(13.283, 9);
  expect(2 * trueCrestMm(taper, 7)).toBeCloseTo(13.283 + 7 / 16, 9);
  expect(2 * trueCrestMm(taper, 13)).toBe(14.023);
  const straight = { crest_major_at_start_mm: 18.9, crest_major_at_end_mm: 18.9, taper: 0 };
  expect(2 * trueCrestMm(straight, 5)).toBeCloseTo(18.9, 9);
});
