import { solveLinear } from './matrix';

/** Sums about the mean, from which a straight line y(x) follows: its slope is sxy / sxx. */
export function aboutMean<T>(
  points: readonly T[],
  x: (point: T) => number,
  y: (point: T) => number,
): { readonly x: number; readonly y: number; readonly sxx: number; readonly sxy: number } {
  const meanX = points.reduce((sum, q) => sum + x(q), 0) / points.length;
  const meanY = points.reduce((sum, q) => sum + y(q), 0) / points.length;
  let sxx = 0;
  let sxy = 0;
  for (const q of points) {
    sxx += (x(q) - meanX) ** 2;
    sxy += (x(q) - meanX) * (y(q) - meanY);
  }
  return { x: meanX, y: meanY, sxx, sxy };
}

/** Linear least squares, equation by equation: `row`·x ≈ `value`. */
export function linearFit(unknowns: number) {
  const A = new Float64Array(unknowns * unknowns);
  const b = new Float64Array(unknowns);
  return {
    add(row: ArrayLike<number>, value: number): void {
      for (let i = 0; i < unknowns; i++) {
        b[i] += row[i] * value;
        for (let j = 0; j < unknowns; j++) A[i * unknowns + j] += row[i] * row[j];
      }
    },
    /** Null where the equations leave something open. */
    solve: (): Float64Array | null => solveLinear(A, b, unknowns),
  };
}
