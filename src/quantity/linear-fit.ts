import { solveLinear } from './matrix';

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
