import { expect, test } from 'vitest';
import { erf } from '../../src/quantity/erf';

/** From Python 3's math.erf, which is the C library's. */
test.each([
  [0, 0],
  [0.02, 0.022564574691844943],
  [0.1, 0.1124629160182849],
  [0.5, 0.5204998778130465],
  [0.777, 0.7281638565505876],
  [1, 0.8427007929497149],
  [1.5, 0.9661051464753108],
  [2, 0.9953222650189527],
  [3.3, 0.9999969422902035],
  [5.999, 1],
])('erf(%f)', (x, value) => {
  expect(Math.abs(erf(x) - value)).toBeLessThan(1e-9);
  expect(erf(-x)).toBe(-erf(x) || 0);
});

test('beyond the table, and of nothing', () => {
  expect(erf(40)).toBe(1);
  expect(erf(Number.NEGATIVE_INFINITY)).toBe(-1);
  expect(erf(Number.NaN)).toBeNaN();
});

test('rises everywhere, and its slope is that of the bell', () => {
  for (let x = -4; x < 4; x += 0.0037) {
    const h = 1e-3;
    const slope = (erf(x + h) - erf(x - h)) / (2 * h);
    expect(Math.abs(slope - (2 / Math.sqrt(Math.PI)) * Math.exp(-x * x))).toBeLessThan(2e-6);
  }
});
