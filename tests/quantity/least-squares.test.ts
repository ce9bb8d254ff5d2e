import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../src/quantity/least-squares';
import { invertSymmetric, multiply, solveLinear } from '../../src/quantity/matrix';

/** NIST StRD, nonlinear regression, data set Misra1a (lower difficulty), certified values from
 *  memory of the published file: b1 238.94212918, b2 5.5015643181e-4,
 *  sd 2.7070075241 and 7.2668688436e-6, residual sum of squares 0.12455138894. */
const misra1a = {
  y: [
    10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78,
  ],
  x: [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760],
};

describe('least squares', () => {
  it.each([[[500, 0.0001]], [[250, 0.0005]]])(
    'reaches the certified Misra1a fit from %j',
    (start) => {
      const { x, y } = misra1a;
      const fit = leastSquares({
        parameters: start,
        count: x.length,
        steps: [1e-3, 1e-9],
        residuals: (p, out) => {
          for (let i = 0; i < x.length; i++) out[i] = y[i] - p[0] * (1 - Math.exp(-p[1] * x[i]));
        },
        maxIterations: 200,
      });
      expect(fit.termination).toBe('converged');
      expect(fit.parameters[0] / 238.94212918).toBeCloseTo(1, 6);
      expect(fit.parameters[1] / 5.5015643181e-4).toBeCloseTo(1, 6);
      expect(2 * fit.cost).toBeCloseTo(0.12455138894, 8);
      const s2 = (2 * fit.cost) / (x.length - 2);
      expect(Math.sqrt(s2 * fit.covariance[0])).toBeCloseTo(2.7070075241, 4);
      expect(Math.sqrt(s2 * fit.covariance[3]) / 7.2668688436e-6).toBeCloseTo(1, 4);
    },
  );

  it('ends at the bottom of the Rosenbrock valley', () => {
    const fit = leastSquares({
      parameters: [-1.2, 1],
      count: 2,
      residuals: (p, out) => {
        out[0] = 10 * (p[1] - p[0] * p[0]);
        out[1] = 1 - p[0];
      },
      maxIterations: 200,
    });
    expect(fit.parameters[0]).toBeCloseTo(1, 6);
    expect(fit.parameters[1]).toBeCloseTo(1, 6);
  });

  it('gives the median’s robustness with a Cauchy loss and says what it cannot determine', () => {
    const data = [1.01, 0.99, 1.02, 0.98, 1, 25];
    const robust = leastSquares({
      parameters: [1.5],
      count: data.length,
      loss: 'cauchy',
      lossScale: 2,
      residuals: (p, out) => out.set(data.map((v) => (v - p[0]) / 0.02)),
    });
    expect(Math.abs(robust.parameters[0] - 1)).toBeLessThan(0.01);
    const blind = leastSquares({
      parameters: [1, 7],
      count: data.length,
      residuals: (p, out) => out.set(data.map((v) => v - p[0])),
    });
    expect(blind.parameters[1]).toBe(7);
    expect(blind.covariance.every(Number.isNaN)).toBe(true);
    const broken = leastSquares({ parameters: [1], count: 1, residuals: (_, o) => o.fill(NaN) });
    expect(broken.termination).toBe('failed');
  });

  it('takes 5000 residuals with 12 parameters in well under a second', () => {
    const m = 5000;
    const n = 12;
    const truth = Float64Array.from({ length: n }, (_, j) => 1 / (j + 1));
    const model = (p: ArrayLike<number>, i: number) => {
      let s = 0;
      for (let j = 0; j < n; j++) s += p[j] * Math.cos((j * i * Math.PI) / m);
      return s + 0.1 * s * s;
    };
    const began = performance.now();
    const fit = leastSquares({
      parameters: new Float64Array(n),
      count: m,
      residuals: (p, out) => {
        for (let i = 0; i < m; i++) out[i] = model(p, i) - model(truth, i);
      },
    });
    expect(performance.now() - began).toBeLessThan(2000);
    for (let j = 0; j < n; j++) expect(fit.parameters[j]).toBeCloseTo(truth[j], 6);
  });
});

describe('matrix', () => {
  it('inverts across twelve orders of magnitude of units', () => {
    const A = [4e12, 1e6, 1e6, 2];
    const product = multiply(A, invertSymmetric(A, 2)!, 2, 2, 2);
    for (const [i, v] of [1, 0, 0, 1].entries()) expect(product[i]).toBeCloseTo(v, 6);
    expect(invertSymmetric([1, 2, 2, 1], 2)).toBeNull();
  });
  it('solves an unsymmetric system that needs a row exchange', () => {
    expect([...solveLinear([0, 2, 1, 1], [4, 3], 2)!]).toEqual([1, 2]);
    expect(solveLinear([1, 2, 2, 4], [1, 2], 2)).toBeNull();
  });
});
