import { erf } from '../../quantity/erf';
import * as portable from '../../quantity/portable-math';

export interface EdgeFit {
  /** Position of the edge along the profile, in sample units from the first sample. */
  readonly position: number;
  /** Standard uncertainty of `position` from the residual scatter, same unit. */
  readonly u: number;
  /** Gaussian blur of the edge, sample units. */
  readonly sigma: number;
  readonly before: number;
  readonly after: number;
  /** Step height over residual scatter. */
  readonly contrastToNoise: number;
}

/** Blurred step fitted to a profile by Gauss–Newton:
 *  y(t) = before + (after − before)·Φ((t − position)/sigma).
 *  Close to the Cramér–Rao bound for white noise (tests/accuracy). Samples must be finite.
 *  Returns null when the fit leaves the profile or the step is buried in noise. */
export function fitEdge(
  samples: ArrayLike<number>,
  start: number,
  startSigma: number,
): EdgeFit | null {
  const n = samples.length;
  let t0 = start;
  let sigma = startSigma;
  let a = 0;
  let b = 0;
  const H = new Float64Array(16);
  const g = new Float64Array(4);
  const J = new Float64Array(4);
  let rss = 0;
  [a, b] = levels(samples, t0);
  for (let iteration = 0; iteration < 12; iteration++) {
    H.fill(0);
    g.fill(0);
    rss = 0;
    for (let i = 0; i < n; i++) {
      const z = (i - t0) / sigma;
      const phi = 0.5 * (1 + erf(z * Math.SQRT1_2));
      const density = portable.exp(-0.5 * z * z) * 0.3989422804014327;
      const r = samples[i] - a - (b - a) * phi;
      J[0] = (-(b - a) * density) / sigma;
      J[1] = J[0] * z;
      J[2] = 1 - phi;
      J[3] = phi;
      rss += r * r;
      accumulate(H, g, J, r);
    }
    const step = solve4(H, g);
    if (!step) return null;
    const limit = 0.7 * sigma;
    t0 += Math.max(-limit, Math.min(limit, step[0]));
    sigma = Math.max(
      0.35,
      Math.min(n / 2, sigma + Math.max(-0.4 * sigma, Math.min(0.4 * sigma, step[1]))),
    );
    a += step[2];
    b += step[3];
    if (t0 < 0 || t0 > n - 1) return null;
    if (Math.abs(step[0]) < 1e-4 && Math.abs(step[1]) < 1e-3) break;
  }
  const noise = Math.sqrt(rss / Math.max(1, n - 4)) + 1e-3;
  const variance = positionVariance(H);
  if (!(variance > 0)) return null;
  return {
    position: t0,
    u: noise * Math.sqrt(variance),
    sigma,
    before: a,
    after: b,
    contrastToNoise: Math.abs(b - a) / noise,
  };
}

/** Index of the steepest rise or fall, by central difference over ±reach samples. */
export function steepest(samples: ArrayLike<number>, reach: number, sign: 1 | -1 | 0): number {
  let best = -1;
  let at = -1;
  for (let i = reach; i < samples.length - reach; i++) {
    const d = samples[i + reach] - samples[i - reach];
    const s = sign === 0 ? Math.abs(d) : sign * d;
    if (s > best) {
      best = s;
      at = i;
    }
  }
  return at;
}

export function levels(samples: ArrayLike<number>, t0: number): [number, number] {
  let a = 0;
  let na = 0;
  let b = 0;
  let nb = 0;
  for (let i = 0; i < samples.length; i++) {
    if (i < t0) {
      a += samples[i];
      na++;
    } else {
      b += samples[i];
      nb++;
    }
  }
  return [a / Math.max(1, na), b / Math.max(1, nb)];
}

/** One sample's share of the normal equations: its residual and the four derivatives of what it should be. */
export function accumulate(H: Float64Array, g: Float64Array, J: Float64Array, r: number): void {
  const j0 = J[0];
  const j1 = J[1];
  const j2 = J[2];
  const j3 = J[3];
  H[0] += j0 * j0;
  H[1] += j0 * j1;
  H[2] += j0 * j2;
  H[3] += j0 * j3;
  H[5] += j1 * j1;
  H[6] += j1 * j2;
  H[7] += j1 * j3;
  H[10] += j2 * j2;
  H[11] += j2 * j3;
  H[15] += j3 * j3;
  g[0] += j0 * r;
  g[1] += j1 * r;
  g[2] += j2 * r;
  g[3] += j3 * r;
}

// One photo has thousands of edges with a dozen steps each: arrays made per step kept the collector
// busier than the arithmetic.
const L = new Float64Array(16);
const solution = new Float64Array(4);

/** Cholesky into `L` on the upper triangle; small ridge keeps a flat profile from dividing by zero. */
function factor4(H: Float64Array): boolean {
  for (let i = 0; i < 4; i++) {
    for (let j = 0; j <= i; j++) {
      let s = H[j * 4 + i] + (i === j ? 1e-9 : 0);
      for (let k = 0; k < j; k++) s -= L[i * 4 + k] * L[j * 4 + k];
      if (i === j) {
        if (s <= 0) return false;
        L[i * 4 + i] = Math.sqrt(s);
      } else L[i * 4 + j] = s / L[j * 4 + j];
    }
  }
  return true;
}

/** The result is overwritten by the next call. */
export function solve4(H: Float64Array, g: ArrayLike<number>): Float64Array | null {
  if (!factor4(H)) return null;
  const x = solution;
  x.set(g);
  for (let i = 0; i < 4; i++) {
    for (let k = 0; k < i; k++) x[i] -= L[i * 4 + k] * x[k];
    x[i] /= L[i * 4 + i];
  }
  for (let i = 3; i >= 0; i--) {
    for (let k = i + 1; k < 4; k++) x[i] -= L[k * 4 + i] * x[k];
    x[i] /= L[i * 4 + i];
  }
  return x;
}

export function positionVariance(H: Float64Array): number {
  return solve4(H, [1, 0, 0, 0])?.[0] ?? Number.NaN;
}
