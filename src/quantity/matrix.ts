/** Small dense matrices: row-major, Float64Array, plain functions. Sizes up to about 20. */

/** Lower triangle L with A = L·Lᵀ, from the lower triangle of A; null unless A is positive definite. */
export function cholesky(A: ArrayLike<number>, n: number): Float64Array | null {
  const L = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let s = A[i * n + j];
      for (let k = 0; k < j; k++) s -= L[i * n + k] * L[j * n + k];
      if (i !== j) L[i * n + j] = s / L[j * n + j];
      else if (s > 0) L[i * n + i] = Math.sqrt(s);
      else return null;
    }
  return L;
}

/** A scaled to unit diagonal and factored: columns of very different units (px, rad, mm) would
 *  otherwise cost digits. */
function scaledCholesky(
  A: ArrayLike<number>,
  n: number,
): { L: Float64Array; d: Float64Array } | null {
  const d = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    if (!(A[i * n + i] > 0)) return null;
    d[i] = 1 / Math.sqrt(A[i * n + i]);
  }
  const S = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) S[i * n + j] = A[i * n + j] * d[i] * d[j];
  const L = cholesky(S, n);
  return L && { L, d };
}

function substitute(L: Float64Array, x: Float64Array, n: number): void {
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i] -= L[i * n + k] * x[k];
    x[i] /= L[i * n + i];
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i] -= L[k * n + i] * x[k];
    x[i] /= L[i * n + i];
  }
}

/** x of A·x = b for symmetric positive definite A; null otherwise. */
export function solveSymmetric(
  A: ArrayLike<number>,
  b: ArrayLike<number>,
  n: number,
): Float64Array | null {
  const factor = scaledCholesky(A, n);
  if (!factor) return null;
  const { L, d } = factor;
  const x = Float64Array.from(b, (v, i) => v * d[i]);
  substitute(L, x, n);
  for (let i = 0; i < n; i++) x[i] *= d[i];
  return x;
}

/** Inverse of a symmetric positive definite A; null otherwise. */
export function invertSymmetric(A: ArrayLike<number>, n: number): Float64Array | null {
  const factor = scaledCholesky(A, n);
  if (!factor) return null;
  const { L, d } = factor;
  const out = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    const x = new Float64Array(n);
    x[j] = d[j];
    substitute(L, x, n);
    for (let i = 0; i < n; i++) out[i * n + j] = x[i] * d[i];
  }
  return out;
}

/** x of A·x = b for any regular A, by elimination with row exchanges; null when A is singular. */
export function solveLinear(
  A: ArrayLike<number>,
  b: ArrayLike<number>,
  n: number,
): Float64Array | null {
  const M = Float64Array.from(A);
  const x = Float64Array.from(b);
  for (let c = 0; c < n; c++) {
    let pivot = c;
    for (let r = c + 1; r < n; r++)
      if (Math.abs(M[r * n + c]) > Math.abs(M[pivot * n + c])) pivot = r;
    if (!(Math.abs(M[pivot * n + c]) > 1e-300)) return null;
    if (pivot !== c) {
      for (let k = c; k < n; k++) {
        const held = M[c * n + k];
        M[c * n + k] = M[pivot * n + k];
        M[pivot * n + k] = held;
      }
      const held = x[c];
      x[c] = x[pivot];
      x[pivot] = held;
    }
    for (let r = c + 1; r < n; r++) {
      const f = M[r * n + c] / M[c * n + c];
      if (f === 0) continue;
      for (let k = c; k < n; k++) M[r * n + k] -= f * M[c * n + k];
      x[r] -= f * x[c];
    }
  }
  for (let r = n - 1; r >= 0; r--) {
    for (let k = r + 1; k < n; k++) x[r] -= M[r * n + k] * x[k];
    x[r] /= M[r * n + r];
  }
  return x;
}

/** (rows × inner)·(inner × columns). */
export function multiply(
  A: ArrayLike<number>,
  B: ArrayLike<number>,
  rows: number,
  inner: number,
  columns: number,
): Float64Array {
  const out = new Float64Array(rows * columns);
  for (let i = 0; i < rows; i++)
    for (let k = 0; k < inner; k++) {
      const a = A[i * inner + k];
      if (a === 0) continue;
      for (let j = 0; j < columns; j++) out[i * columns + j] += a * B[k * columns + j];
    }
  return out;
}

function transpose(A: ArrayLike<number>, rows: number, columns: number): Float64Array {
  const out = new Float64Array(rows * columns);
  for (let i = 0; i < rows; i++)
    for (let j = 0; j < columns; j++) out[j * rows + i] = A[i * columns + j];
  return out;
}

/** J·Σ·Jᵀ, m × m, for J of m × n. */
export function sandwich(
  J: ArrayLike<number>,
  sigma: ArrayLike<number>,
  m: number,
  n: number,
): Float64Array {
  return multiply(multiply(J, sigma, m, n, n), transpose(J, m, n), m, n, m);
}
