import type { Estimate } from '../../quantity/estimate';
import type { Field } from '../../scale-card/geometry';
import type { PosedCamera } from '../2-card-pose/camera';
import type { AxisFrame } from '../4-thread-signal/axis-frame';
import { type RidgeFit, ridgeDepth } from '../4-thread-signal/ridges';
import { raggedMm } from './outline-scatter';
import type { Extent } from './thread-extent';

/** By how much of a period the brightness pattern moves against the ridges from end to end: crest and
 *  flanks share the light differently as the view turns. Seen on renders and on drawn photos without
 *  noise; paper lights the flanks from below, black does not. */
const ridgeDrift = { light: 0.04, dark: 0.018 };

/** Ridges lie on a cylinder whose radius is uncertain by part of the thread's depth: nearer to the
 *  camera everything looks larger. */
export function ridgeEstimate(
  camera: PosedCamera,
  frame: AxisFrame,
  ridges: RidgeFit,
  radiusMm: number,
  zone: Extent,
  field: Field,
  scatterMm: number,
): Estimate {
  const turns = (zone.toS - zone.fromS) / ridges.pitchMm;
  const range = frame.origin[2] - camera.centre[2];
  const uRadius = Math.hypot(
    0.8 * ridgeDepth.u * ridges.pitchMm,
    raggedMm(scatterMm, ridges.pitchMm),
  );
  const depth = uRadius / (range - radiusMm);
  const relative = Math.hypot(
    (1.5 * ridges.uMm) / ridges.pitchMm,
    depth,
    ridgeDrift[field] / turns,
  );
  return { value: ridges.pitchMm, u: ridges.pitchMm * relative };
}
