import { sampleLinear } from '../2-card-pose/sampling';
import { type AxisFrame, photoAt } from '../4-thread-signal/axis-frame';
import type { OutlinePoint, OutlineView } from '../4-thread-signal/outline-edges';
import type { ThreadFit } from './fit-thread';

/** Which cuts, by the weight of their point and its distance from a crest's middle in pitches; and their
 *  samples: how many `stepPx` apart, the first so many inside the outline. */
export interface CrestCutSetting {
  readonly leastWeight: number;
  readonly phaseWithin: number;
  readonly stepPx: number;
  readonly inside: number;
  readonly length: number;
}

export interface CrestCut {
  readonly point: OutlinePoint;
  /** Linear light, from inside outwards. */
  readonly profile: Float64Array;
}

/** Light across the crests, where the outline runs square to the cut. Points and fit are in `frame`. */
export function crestCuts(
  { grey, camera, mmPerPx }: OutlineView,
  frame: AxisFrame,
  points: readonly OutlinePoint[],
  fit: ThreadFit,
  { leastWeight, phaseWithin, stepPx, inside, length }: CrestCutSetting,
): CrestCut[] {
  const stepMm = stepPx * mmPerPx;
  const rangeMm = frame.origin[2] - camera.centre[2];
  return points.flatMap((point, i) => {
    const { side, s, r } = point;
    const phase = fit.phaseOf(side, s);
    if (fit.weights[i] < leastWeight || Math.abs(phase - Math.round(phase)) > phaseWithin)
      return [];
    const sign = side === 'left' ? 1 : -1;
    const profile = Float64Array.from({ length }, (_, k) => {
      const at = r + (k - inside) * stepMm;
      const [x, y] = photoAt(camera, frame, s, sign * at * Math.hypot(1, at / rangeMm));
      return sampleLinear(grey, x, y);
    });
    return profile.every(Number.isFinite) ? [{ point, profile }] : [];
  });
}
