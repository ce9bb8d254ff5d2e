import { expect, test } from 'vitest';
import { fitApart } from '../../src/cli/calibrate/fit-apart';

/** Invented: the outline is the better one as long as it keeps to the limbs. */
test('the outline is believed up to where the limbs become the better', () => {
  const photos = Array.from({ length: 100 }, (_, i) => {
    const apart = 0.04 * i;
    return { apart, outlineErrorMm: apart < 2.5 ? 0.01 : -0.2, limbsErrorMm: 0.05, pitchMm: 1.5 };
  });
  expect(fitApart(photos)).toBeCloseTo(2.5, 1);
  const never = photos.map((photo) => ({ ...photo, outlineErrorMm: 0.2 }));
  expect(fitApart(never)).toBe(0);
  // One gross error among good ones is within what chance does.
  const once = photos.map((photo, i) => ({ ...photo, outlineErrorMm: i === 20 ? 0.2 : 0.01 }));
  expect(fitApart(once)).toBeGreaterThan(3.9);
});
