import type { Estimate } from './estimate';

export interface LineFit {
  /** At x = `origin`. */
  readonly intercept: Estimate;
  readonly slope: Estimate;
  /** Between intercept and slope. */
  readonly correlation: number;
  /** Root of Σ wᵢ rᵢ² / (n − 2): 1 where the given σ are true. */
  readonly scatter: number;
  at(x: number): Estimate;
}

/** y = intercept + slope·(x − origin) by weighted least squares; JCGM 100:2008, H.3, with
 *  weights 1/σ². Without σ the uncertainties come from the scatter about the line; with σ they come
 *  from σ alone, and `scatter` tells whether to believe them. Null for fewer than 2 points (3 without
 *  σ) or when all x agree. */
export function fitLine(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  origin: number,
  sigma?: ArrayLike<number>,
): LineFit | null {
  const n = x.length;
  let w = 0;
  let wx = 0;
  let wy = 0;
  for (let i = 0; i < n; i++) {
    const k = sigma ? 1 / sigma[i] ** 2 : 1;
    w += k;
    wx += k * (x[i] - origin);
    wy += k * y[i];
  }
  const meanX = wx / w;
  const meanY = wy / w;
  let sxx = 0;
  let sxy = 0;
  for (let i = 0; i < n; i++) {
    const k = sigma ? 1 / sigma[i] ** 2 : 1;
    const d = x[i] - origin - meanX;
    sxx += k * d * d;
    sxy += k * d * (y[i] - meanY);
  }
  if (n < (sigma ? 2 : 3) || !(sxx > 0)) return null;
  const slope = sxy / sxx;
  const intercept = meanY - slope * meanX;
  let rss = 0;
  for (let i = 0; i < n; i++)
    rss += (y[i] - intercept - slope * (x[i] - origin)) ** 2 / (sigma ? sigma[i] ** 2 : 1);
  const scatter = n > 2 ? Math.sqrt(rss / (n - 2)) : 0;
  const s2 = sigma ? 1 : scatter * scatter;
  const varSlope = s2 / sxx;
  const varMean = s2 / w;
  const varIntercept = varMean + meanX * meanX * varSlope;
  return {
    intercept: { value: intercept, u: Math.sqrt(varIntercept) },
    slope: { value: slope, u: Math.sqrt(varSlope) },
    correlation: (-meanX * varSlope) / Math.sqrt(varIntercept * varSlope),
    scatter,
    at: (position) => {
      const d = position - origin - meanX;
      return { value: meanY + slope * d, u: Math.sqrt(varMean + d * d * varSlope) };
    },
  };
}
