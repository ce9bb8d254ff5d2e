import * as portable from '../../quantity/portable-math';
import type { PosedCamera } from '../2-card-pose/camera';
import { leanAt, middleOf } from '../4-thread-signal/axis-frame';
import { type CrestPlaces, crestPlaces } from './crest-places';
import type { TurnPhases, WoundBody } from './turn-phases';

/** How far a helix is bent as a camera sees it. */
export interface HelixBend {
  /** By how much its top is displaced along the axis against its two limbs, periods, −½…½: seen with the right lean a
   *  helix shows none. */
  readonly bend: number;
  /** How the camera's view leans along its axis (axis-frame.ts). */
  readonly lean: number;
}

/** Null where no window shows all three crests. */
export function helixBend(
  camera: PosedCamera,
  body: WoundBody,
  phases: readonly TurnPhases[],
): HelixBend | null {
  let re = 0;
  let im = 0;
  for (const phase of phases) {
    const turn = 2 * Math.PI * displaced(crestPlaces(camera, body, phase), body);
    const weight = Math.min(phase.left.sureness, phase.right.sureness, phase.face.sureness);
    re += weight * portable.cos(turn);
    im += weight * portable.sin(turn);
  }
  if (re === 0 && im === 0) return null;
  const lean = leanAt(camera, body.frame, middleOf(body.zone));
  return { bend: portable.atan2(im, re) / (2 * Math.PI), lean };
}

/** Of the top against the mean of both limbs, which lie a quarter of a turn from it either way. */
function displaced(at: CrestPlaces, { pitchMm, hand }: WoundBody): number {
  const quarter = hand === 'right' ? 0.25 : -0.25;
  const left = (at.left - at.face) / pitchMm + quarter;
  const right = (at.right - at.face) / pitchMm - quarter;
  const apart = right - left;
  return left + (apart - Math.round(apart)) / 2;
}
