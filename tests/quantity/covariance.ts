/** Covariance of independent quantities with these standard uncertainties. */
export function diagonal(u: ArrayLike<number>): Float64Array {
  const n = u.length;
  const out = new Float64Array(n * n);
  for (let i = 0; i < n; i++) out[i * n + i] = u[i] * u[i];
  return out;
}

export function correlation(covariance: ArrayLike<number>, i: number, j: number): number {
  const n = Math.sqrt(covariance.length);
  return covariance[i * n + j] / Math.sqrt(covariance[i * n + i] * covariance[j * n + j]);
}
