/** Added to linear light (0…255) before its logarithm: noise of a dark pixel. */
export const darkLight = 0.7;

/** Takes patches that were seen together, logarithm of light, to their common mean and spread, in place; what lies beyond
 *  the photo (NaN) to 0. */
export function levelLight(patches: readonly Float32Array[]): void {
  let sum = 0;
  let squares = 0;
  let n = 0;
  for (const patch of patches)
    for (const v of patch) {
      if (Number.isNaN(v)) continue;
      sum += v;
      squares += v * v;
      n++;
    }
  const mean = n > 0 ? sum / n : 0;
  const spread = Math.max(0.05, Math.sqrt(Math.max(0, squares / Math.max(1, n) - mean * mean)));
  for (const values of patches)
    for (let k = 0; k < values.length; k++) {
      const v = (values[k] - mean) / spread;
      values[k] = Number.isNaN(v) ? 0 : Math.max(-3, Math.min(3, v));
    }
}
