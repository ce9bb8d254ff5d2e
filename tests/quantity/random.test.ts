import { describe, expect, it } from 'vitest';
import { erf } from '../../src/quantity/erf';
import { seededRandom } from '../../src/quantity/random';

describe('seeded random numbers', () => {
  it('repeat for one seed and differ between neighbours', () => {
    const first = (seed: number) => {
      const random = seededRandom(seed);
      return [random.uniform(), random.normal(), random.integer(1000)];
    };
    expect(first(7)).toEqual(first(7));
    expect(first(7)).not.toEqual(first(8));
  });

  it('follow the normal distribution', () => {
    const random = seededRandom(5);
    const n = 100_000;
    const values = Float64Array.from({ length: n }, () => random.normal()).sort();
    // Kolmogorov–Smirnov: 1.63/√n is the 1 % point.
    let worst = 0;
    for (let i = 0; i < n; i++) {
      const expected = 0.5 * (1 + erf(values[i] / Math.SQRT2));
      worst = Math.max(worst, Math.abs((i + 0.5) / n - expected));
    }
    expect(worst).toBeLessThan(1.63 / Math.sqrt(n));
  });
});

describe('error function', () => {
  // Abramowitz & Stegun, table 7.1.
  it.each([
    [0, 0],
    [0.5, 0.5204998778],
    [1, 0.8427007929],
    [2, 0.995322265],
    [-1, -0.8427007929],
  ])('erf(%f)', (x, expected) => {
    expect(Math.abs(erf(x) - expected)).toBeLessThan(1.3e-7);
  });
});
