import { erf } from '../../quantity/erf';
import type { Estimate } from '../../quantity/estimate';
import * as portable from '../../quantity/portable-math';
import { accumulate, levels, positionVariance, solve4 } from '../2-card-pose/edge-profile';

/** How the rim of a round body mirrors what lies behind it, over depth inside the outline: 1 at the
 *  outline, falling as (1 − cos θ)⁵ (Schlick 1994) with cos θ = √(2·depth/radius), blurred like the
 *  edge; and its slope. Samples `rimStep` apart. */
export interface RimShape {
  readonly sigma: number;
  readonly from: number;
  readonly values: Float64Array;
  readonly slopes: Float64Array;
}

const rimStep = 0.1;

const known = new Map<string, RimShape>();

/** Radius of the body, to a tenth, and blur, in sample units. */
export function rimShape(sigma: number, radius: number): RimShape {
  const rounded = portable.exp(Math.round(10 * portable.log(Math.max(4, radius))) / 10);
  const key = `${sigma} ${rounded}`;
  let shape = known.get(key);
  if (!shape) {
    if (known.size > 40) known.clear();
    shape = computed(sigma, rounded);
    known.set(key, shape);
  }
  return shape;
}

function computed(sigma: number, radius: number): RimShape {
  const fine = rimStep / 2;
  const reach = 4 * sigma;
  // Deeper than this the rim has sunk to a thousandth.
  const deepest = 0.28 * radius;
  const from = -reach;
  const n = Math.ceil((Math.min(deepest, 30) + 2 * reach) / rimStep) + 2;
  // Averages over cells of the depth, since the cusp at the outline is finer than any grid.
  const cells = Math.ceil((deepest + reach) / fine);
  const integral = (depth: number) => {
    const c = Math.min(1, Math.sqrt((2 * Math.max(0, depth)) / radius));
    const cube = (1 - c) * (1 - c) * (1 - c);
    // ∫ (1 − c)⁵ dd, d = r c²/2.
    return (radius * (1 - cube * cube * (1 + 6 * c))) / 42;
  };
  const light = Float64Array.from(
    { length: cells },
    (_, k) => integral((k + 1) * fine) - integral(k * fine),
  );
  const values = new Float64Array(n);
  const slopes = new Float64Array(n);
  for (let k = 0; k < n; k++) {
    const x = from + k * rimStep;
    const first = Math.max(0, Math.floor((x - reach) / fine));
    const last = Math.min(cells - 1, Math.ceil((x + reach) / fine));
    for (let j = first; j <= last; j++) {
      const z = ((j + 0.5) * fine - x) / sigma;
      const w = (light[j] * portable.exp(-0.5 * z * z) * 0.3989422804014327) / sigma;
      values[k] += w;
      slopes[k] += (w * z) / sigma;
    }
  }
  return { sigma, from, values, slopes };
}

export interface RimEdgeFit {
  /** Position of the outline along the profile, sample units from the first sample. */
  readonly position: number;
  readonly u: number;
  /** Level beyond the outline, and inside it below the rim. */
  readonly outside: number;
  readonly inside: number;
  readonly contrastToNoise: number;
  /** Mean square residual over the step's square. */
  readonly misfit: number;
}

/** Share of the step that the rim takes back. Metal is rough, so less than a mirror's: 0.35 on
 *  path-traced metal, and little of it is seen on one profile. */
export const usualRim: Estimate = { value: 0.35, u: 0.2 };

/** Outline of a round body that mirrors what lies behind it the more the nearer its rim, samples
 *  running from inside outwards: y = outside + step·[(t < position) − share·rim(position − t)], blurred.
 *  A bare step, or a step with a free blur, puts the edge inside the body.
 *  Gauss–Newton over [position, outside, step, share]. */
export function fitRimEdge(
  samples: ArrayLike<number>,
  start: number,
  shape: RimShape,
  rim: Estimate = usualRim,
): RimEdgeFit | null {
  const { sigma } = shape;
  const n = samples.length;
  const [inside0, outside0] = levels(samples, start);
  let t0 = start;
  let outside = outside0;
  let step = inside0 - outside0;
  let share = rim.value;
  const H = new Float64Array(16);
  const g = new Float64Array(4);
  let rss = 0;
  for (let iteration = 0; iteration < 14; iteration++) {
    H.fill(0);
    g.fill(0);
    rss = 0;
    for (let i = 0; i < n; i++) {
      const z = (i - t0) / sigma;
      const body = 0.5 * (1 - erf(z * Math.SQRT1_2));
      const density = portable.exp(-0.5 * z * z) * 0.3989422804014327;
      const at = Math.max(0, (t0 - i - shape.from) / rimStep);
      const k = Math.min(shape.values.length - 2, Math.floor(at));
      const f = Math.min(1, at - k);
      const mirrored = shape.values[k] * (1 - f) + shape.values[k + 1] * f;
      const rise = shape.slopes[k] * (1 - f) + shape.slopes[k + 1] * f;
      const seen = body - share * mirrored;
      const r = samples[i] - outside - step * seen;
      rss += r * r;
      accumulate(H, g, step * (density / sigma - share * rise), 1, seen, -step * mirrored, r);
    }
    const variance = Math.max(rss / Math.max(1, n - 4), 1e-4 * step * step, 1e-6);
    const prior = variance / rim.u ** 2;
    H[15] += prior;
    g[3] -= prior * (share - rim.value);
    const move = solve4(H, g);
    if (!move) return null;
    t0 += Math.max(-0.8 * sigma, Math.min(0.8 * sigma, move[0]));
    outside += move[1];
    step += move[2];
    share = Math.max(-0.5, Math.min(1, share + move[3]));
    if (t0 < 1 || t0 > n - 2) return null;
    if (Math.abs(move[0]) < 1e-3) break;
  }
  const noise = Math.sqrt(rss / Math.max(1, n - 4)) + 1e-3;
  const variance = positionVariance(H);
  if (!(variance > 0)) return null;
  return {
    position: t0,
    u: noise * Math.sqrt(variance),
    outside,
    inside: outside + step,
    contrastToNoise: Math.abs(step) / noise,
    misfit: rss / n / (step * step),
  };
}
