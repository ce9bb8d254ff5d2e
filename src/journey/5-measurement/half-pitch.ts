import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { ridgeDepth, ridgePitch } from '../4-thread-signal/ridges';
import { unrollLight } from '../4-thread-signal/unrolled-light';
import type { ThreadSolution } from './thread-solution';

/** Ridges that keep this share of what they explain at half the pitch have no odd harmonic: the pitch
 *  found is two. */
const sameShare = 0.9;

/** The true pitch when a solution took two turns for one, else null. Where the outline has faded,
 *  nothing in stage 5 tells them apart. */
export function halfPitch(
  photo: PosedPhoto,
  { frame, fit, zone, mmPerPx, ridges }: ThreadSolution,
): number | null {
  if (!ridges) return null;
  const half = fit.pitchMm / 2;
  if (half < 4 * mmPerPx) return null;
  const surface = {
    radiusMm: fit.crestRadiusMm - ridgeDepth.value * half,
    halfTaper: fit.halfTaper,
    middleS: fit.middleS,
  };
  // Both on the same strip: the running mean that is taken off differs with the period.
  const view = unrollLight(photo, frame, zone, surface, { mmPerPx, periodMm: fit.pitchMm });
  const whole = ridgePitch(view, fit.pitchMm, 0.02);
  const halved = ridgePitch(view, half, 0.02);
  return whole && halved && halved.explained > sameShare * whole.explained ? halved.pitchMm : null;
}
