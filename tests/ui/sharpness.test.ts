import { expect, test } from 'vitest';
import { sharpness } from '../../src/ui/shoot/sharpness';

const side = 200;

/** Stripes of a period of 10 px, blurred by averaging over `blurPx`, at `share` of the light. */
function stripes(blurPx: number, share: number) {
  const data = new Uint8ClampedArray(4 * side * side);
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++) {
      let sum = 0;
      for (let k = 0; k < blurPx; k++) sum += (x + k) % 10 < 5 ? 200 : 40;
      data[4 * (y * side + x) + 1] = (share * sum) / blurPx;
    }
  return { width: side, height: side, data };
}

test('the less blurred frame ranks higher, whatever the light', () => {
  const ranked = [1, 2, 3, 4].map((blur) => sharpness(stripes(blur, 1)));
  expect(ranked).toEqual(ranked.toSorted((a, b) => b - a));
  expect(sharpness(stripes(1, 0.5))).toBeGreaterThan(sharpness(stripes(2, 1)));
  expect(sharpness(stripes(1, 0.5)) / sharpness(stripes(1, 1))).toBeCloseTo(1, 2);
});

test('black and a single pixel are not sharp', () => {
  expect(sharpness({ width: 8, height: 8, data: new Uint8ClampedArray(256) })).toBe(0);
  expect(sharpness({ width: 1, height: 1, data: new Uint8ClampedArray(4) })).toBe(0);
});
