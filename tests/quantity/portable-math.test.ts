import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as portable from '../../src/quantity/portable-math';

const { atan2: _atan2, pow: _pow, ...ours } = portable;

/** Against the engine's own functions, which are good to a unit in the last place. */
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

function expectClose(actual: number, expected: number, relative = 1e-15, absolute = 1e-300): void {
  if (!Number.isFinite(expected)) expect(actual).toBe(expected);
  else
    expect(Math.abs(actual - expected)).toBeLessThanOrEqual(
      absolute + relative * Math.abs(expected),
    );
}

test.each([
  ['exp', between(-760, 720), 1e-15, 1e-300],
  ['log', between(1e-300, 1e300), 1e-15, 1e-16],
  ['log', between(0.5, 2), 1e-15, 1e-16],
  ['log1p', between(-0.9, 10), 1e-15, 1e-16],
  ['log1p', between(-1, 1e308), 1e-15, 1e-16],
  ['log2', between(1e-6, 1e6), 1e-15, 1e-15],
  ['sin', between(-1000, 1000), 1e-15, 1e-16],
  ['cos', between(-1000, 1000), 1e-15, 1e-16],
  ['tan', between(-1.5, 1.5), 2e-15, 1e-100],
  ['atan', between(-1e6, 1e6), 1e-15, 1e-100],
  ['asin', between(-1, 1), 1e-15, 1e-100],
  ['acos', between(-1, 1), 1e-15, 1e-100],
] as const)('%s', (name, argument, relative, absolute) => {
  fc.assert(
    fc.property(argument, (x) => expectClose(ours[name](x), Math[name](x), relative, absolute)),
    { numRuns: 3000, seed: 3 },
  );
});

test('pow and atan2', () => {
  fc.assert(
    fc.property(between(0, 1), between(0.1, 4), (x, y) =>
      expectClose(portable.pow(x, y), x ** y, 1e-13),
    ),
    { numRuns: 3000, seed: 4 },
  );
  fc.assert(
    fc.property(between(-9, 9), between(-9, 9), (y, x) => {
      // Zero has no sign here.
      if (x !== 0 || y !== 0) expectClose(portable.atan2(y, x), Math.atan2(y + 0, x));
    }),
    { numRuns: 3000, seed: 5 },
  );
});

test('edges', () => {
  expect(portable.exp(0)).toBe(1);
  expect(portable.exp(-800)).toBe(0);
  expect(portable.exp(800)).toBe(Number.POSITIVE_INFINITY);
  expect(portable.exp(Number.NEGATIVE_INFINITY)).toBe(0);
  expect(portable.exp(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
  expectClose(portable.exp(709.7), Math.exp(709.7));
  expect(portable.log1p(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
  expect(portable.exp(Number.NaN)).toBeNaN();
  expect(portable.log(0)).toBe(Number.NEGATIVE_INFINITY);
  expect(portable.log(-1)).toBeNaN();
  expect(portable.log(1)).toBe(0);
  expectClose(portable.log(5e-324), Math.log(5e-324));
  expect(portable.sin(0)).toBe(0);
  expect(portable.cos(0)).toBe(1);
  expect(portable.atan2(0, -1)).toBe(Math.PI);
  expect(portable.atan2(1, 0)).toBe(Math.PI / 2);
  expect(portable.acos(1)).toBe(0);
});
