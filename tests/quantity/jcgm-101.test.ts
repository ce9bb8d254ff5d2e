import { describe, expect, it } from 'vitest';
import { propagate } from '../../src/quantity/propagate';
import { type Random, seededRandom } from '../../src/quantity/random';
import { diagonal } from './covariance';
import { monteCarlo } from './monte-carlo';

/** JCGM 101:2008, 9.2: Y = X1 + X2 + X3 + X4, rectangular inputs of expectation 0. */
const sum = (x: Float64Array) => [x[0] + x[1] + x[2] + x[3]];
const rectangulars = (u: readonly number[]) => (random: Random) =>
  Float64Array.from(u, (v) => v * Math.sqrt(3) * (2 * random.uniform() - 1));

describe('JCGM 101, 9.2', () => {
  it('9.2.3: four unit rectangulars, u = 2.0, 95 % interval ±3.88', () => {
    const [y] = monteCarlo(sum, rectangulars([1, 1, 1, 1]), 400_000, seededRandom(2));
    expect(y!.u).toBeCloseTo(2, 1);
    expect(Math.abs(y!.high - 3.88)).toBeLessThan(0.02);
    expect(Math.abs(y!.low + 3.88)).toBeLessThan(0.02);
  });

  it('9.2.4: one of u = 10, u = 10.1, ±17.0 where the framework says ±19.9', () => {
    const u = [1, 1, 1, 10];
    const [y] = monteCarlo(sum, rectangulars(u), 400_000, seededRandom(3));
    expect(y!.u).toBeCloseTo(10.1, 1);
    expect(Math.abs(y!.high - 17)).toBeLessThan(0.1);
    expect(Math.abs(y!.low + 17)).toBeLessThan(0.1);
    const framework = propagate(sum, [0, 0, 0, 0], diagonal(u));
    expect(1.96 * Math.sqrt(framework.covariance[0]!)).toBeCloseTo(19.9, 1);
  });
});
