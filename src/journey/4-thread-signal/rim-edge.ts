import type { Estimate } from '../../quantity/estimate';
import type { Field } from '../../scale-card/geometry';
import { accumulate, levels, positionVariance, solve4 } from '../2-card-pose/edge-profile';
import { type CutShape, tableStep } from './cut-shape';

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

/** Share of the step that the rim takes back, from what path-traced metal of known size leaves over.
 *  Metal is rough, so it is less than a mirror's; beside black the rim mirrors paper and room sooner
 *  than the black. */
export const usualRim: Record<Field, Estimate> = {
  light: { value: 0.4, u: 0.2 },
  dark: { value: 0.1, u: 0.2 },
};

/** Outline of a round body that mirrors what lies behind it the more the nearer its rim, samples
 *  running from inside outwards: y = outside + step·[body(position − t) − share·rim(position − t)].
 *  A bare step puts the edge inside the body. Gauss–Newton over [position, outside, step, share]. */
export function fitRimEdge(
  samples: ArrayLike<number>,
  start: number,
  { sigma, from, body, bodySlope, rim, rimSlope }: CutShape,
  usual: Estimate,
): RimEdgeFit | null {
  const n = samples.length;
  const [inside0, outside0] = levels(samples, start);
  let t0 = start;
  let outside = outside0;
  let step = inside0 - outside0;
  let share = usual.value;
  const H = new Float64Array(16);
  const g = new Float64Array(4);
  const J = new Float64Array(4);
  let rss = 0;
  const last = body.length - 2;
  for (let iteration = 0; iteration < 14; iteration++) {
    H.fill(0);
    g.fill(0);
    rss = 0;
    for (let i = 0; i < n; i++) {
      const at = Math.min(last, Math.max(0, (t0 - i - from) / tableStep));
      const k = Math.floor(at);
      const f = at - k;
      const mirrored = rim[k] + f * (rim[k + 1] - rim[k]);
      const seen = body[k] + f * (body[k + 1] - body[k]) - share * mirrored;
      const slope =
        bodySlope[k] +
        f * (bodySlope[k + 1] - bodySlope[k]) -
        share * (rimSlope[k] + f * (rimSlope[k + 1] - rimSlope[k]));
      const r = samples[i] - outside - step * seen;
      rss += r * r;
      J[0] = step * slope;
      J[1] = 1;
      J[2] = seen;
      J[3] = -step * mirrored;
      accumulate(H, g, J, r);
    }
    const variance = Math.max(rss / Math.max(1, n - 4), 1e-4 * step * step, 1e-6);
    const prior = variance / usual.u ** 2;
    H[15] += prior;
    g[3] -= prior * (share - usual.value);
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
