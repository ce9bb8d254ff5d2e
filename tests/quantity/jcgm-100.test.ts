import { describe, expect, it } from 'vitest';
import { budgetBySource, propagate } from '../../src/quantity/propagate';
import { seededRandom } from '../../src/quantity/random';
import { correlation, diagonal } from './covariance';
import { monteCarlo, normalDraw } from './monte-carlo';

/** Worked examples of JCGM 100:2008 (GUM), Annex H; published values beside each check. */

describe('H.1, end gauge', () => {
  // lS/nm, d/nm, δα/°C⁻¹, δθ/°C, αS/°C⁻¹, θ/°C
  const x = [50000623, 215, 0, 0, 11.5e-6, -0.1];
  const u = [25, 9.7, 0.58e-6, 0.029, 1.2e-6, 0.41];
  const length = (q: Float64Array) => [q[0] + q[1] - q[0] * (q[2] * q[5] + q[4] * q[3])];

  it('gives l = 50 000 838 nm with uc = 32 nm (H.1.5)', () => {
    const sigma = diagonal(u);
    const y = propagate(length, x, sigma);
    expect(y.values[0]).toBeCloseTo(50000838, 0);
    expect(Math.round(Math.sqrt(y.covariance[0]))).toBe(32);
    // Table H.1: 25, 9.7, 2.9 (δα), 16.6 (δθ) nm; αS and θ have zero sensitivity.
    const names = ['lS', 'd', 'dAlpha', 'dTheta', 'alphaS', 'theta'];
    const rows = budgetBySource(
      y,
      sigma,
      names.map((name, i) => ({ name, inputs: [i] })),
    );
    const published = [25, 9.7, 2.9, 16.6, 0, 0];
    for (const [i, row] of rows.entries()) expect(row.u[0]).toBeCloseTo(published[i]!, 0);
    const sum = rows.reduce((s, row) => s + row.u[0]! ** 2, 0);
    expect(sum).toBeCloseTo(y.covariance[0]!, 6);
  });

  it('gives 34 nm with second-order terms (H.1.7), here by Monte Carlo', () => {
    const [sample] = monteCarlo(length, normalDraw(x, diagonal(u)), 200_000, seededRandom(1));
    expect(Math.round(sample!.u)).toBe(34);
  });
});

describe('H.2, resistance and reactance measured together', () => {
  const V = [5.007, 4.994, 5.005, 4.99, 4.999];
  const I = [19.663, 19.639, 19.64, 19.685, 19.678].map((mA) => mA / 1000);
  const phi = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
  const columns = [V, I, phi];
  const means = columns.map((c) => c.reduce((s, v) => s + v, 0) / 5);
  // Covariance of the means, JCGM 100 (17).
  const sigma = columns.flatMap((a, i) =>
    columns.map(
      (b, j) => a.reduce((s, v, k) => s + (v - means[i]!) * (b[k]! - means[j]!), 0) / (5 * 4),
    ),
  );
  it('gives R, X, Z, their u and correlations (Table H.4)', () => {
    const y = propagate(
      ([v, i, p]) => [(v! / i!) * Math.cos(p!), (v! / i!) * Math.sin(p!), v! / i!],
      means,
      sigma,
    );
    const published = [
      [127.732, 0.071],
      [219.847, 0.295],
      [254.26, 0.236],
    ];
    for (const [i, [value, u]] of published.entries()) {
      expect(y.values[i]).toBeCloseTo(value!, 3);
      // One unit of the last printed digit: u(X) comes out as 0.2956 where 0.295 is printed, as
      // the Guide carries rounded correlations.
      expect(Math.abs(Math.sqrt(y.covariance[4 * i]!) - u!)).toBeLessThan(0.001);
    }
    expect(correlation(y.covariance, 0, 1)).toBeCloseTo(-0.588, 3);
    expect(correlation(y.covariance, 0, 2)).toBeCloseTo(-0.485, 3);
    expect(correlation(y.covariance, 1, 2)).toBeCloseTo(0.993, 3);
  });
});
