import type { Estimate } from '../../quantity/estimate';
import type { Field } from '../../scale-card/geometry';
import type { PosedCamera } from '../2-card-pose/camera';
import { type AxisFrame, type Extent, middleOf } from '../4-thread-signal/axis-frame';
import { type RidgeFit, ridgeDepth } from '../4-thread-signal/ridges';
import { raggedMm } from './outline-scatter';

/** By how much of a period the brightness pattern moves against the ridges from end to end: crest and
 *  flanks share the light differently as the view turns. Seen on renders and on drawn photos without
 *  noise; paper lights the flanks from below, black does not. */
const ridgeDrift = { light: 0.04, dark: 0.022 };
/** The more aslant the view along the thread, the more of each flank is hidden, and the more that changes
 *  from end to end: slope of the view at which the drift is √2 of that seen square. */
const aslant = 0.25;

/** Ridges lie on a cylinder whose radius is uncertain by part of the thread's depth: nearer to the
 *  camera everything looks larger. */
export function ridgeEstimate(
  ridges: RidgeFit,
  { camera, field }: { readonly camera: PosedCamera; readonly field: Field },
  { frame, zone }: { readonly frame: AxisFrame; readonly zone: Extent },
  { radiusMm, scatterMm }: { readonly radiusMm: number; readonly scatterMm: number },
): Estimate {
  const turns = (zone.toS - zone.fromS) / ridges.pitchMm;
  const range = frame.origin[2] - camera.centre[2];
  const uRadius = Math.hypot(
    0.8 * ridgeDepth.u * ridges.pitchMm,
    raggedMm(scatterMm, ridges.pitchMm),
  );
  const depth = uRadius / (range - radiusMm);
  const slope = viewSlope(camera, frame, middleOf(zone));
  const relative = Math.hypot(
    (1.5 * ridges.uMm) / ridges.pitchMm,
    depth,
    (ridgeDrift[field] / turns) * Math.hypot(1, slope / aslant),
  );
  return { value: ridges.pitchMm, u: ridges.pitchMm * relative };
}

/** How far along the axis the camera stands from square above a place on it, over its distance. */
function viewSlope({ centre }: PosedCamera, { origin, along }: AxisFrame, s: number): number {
  const [x, y, z] = [0, 1, 2].map((i) => centre[i] - origin[i] - s * along[i]);
  const ahead = x * along[0] + y * along[1] + z * along[2];
  return ahead / Math.sqrt(Math.max(1, x * x + y * y + z * z - ahead * ahead));
}
