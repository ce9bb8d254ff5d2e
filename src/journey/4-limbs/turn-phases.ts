import { project } from '../2-card-pose/camera';
import {
  type AxisFrame,
  type Extent,
  leanAt,
  middleOf,
  onAxisPlane,
  photoAt,
} from '../4-thread-signal/axis-frame';
import { mmPerPxAt } from '../4-thread-signal/axis-moves';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import type { PhotoPoint } from '../overlay';
import { limbPatch } from './limb-patch';
import { type PhaseBelief, phaseTeller } from './phase-network';
import { faceDepth, faceLook, facePatch, turnLook } from './turn-patch';
import { weightsOf } from './weights';

const limbPhase = phaseTeller(() => weightsOf('turn'), turnLook.bins);
export const facePhase = phaseTeller(() => weightsOf('face'), faceLook.rows);

/** A crest, where a window along the thread shows it. */
export interface CrestSeen {
  readonly at: PhotoPoint;
  /** Concentration of its phase (phase-network.ts). */
  readonly sureness: number;
}

/** One window's crests: on both limbs, and on the upper side, as deep below the crests as that is unrolled. */
export interface TurnPhases {
  readonly left: CrestSeen;
  readonly right: CrestSeen;
  readonly face: CrestSeen;
}

/** A thread where it lies; `radiusMm` at the middle of its zone. */
export interface WoundBody {
  readonly frame: AxisFrame;
  readonly zone: Extent;
  readonly pitchMm: number;
  readonly radiusMm: number;
  readonly halfTaper: number;
  readonly hand: 'right' | 'left';
}

/** Where the upper side is unrolled at a place along the axis, of the card frame. */
export function topOf({ frame, zone, ...body }: WoundBody, s: number) {
  const [x, y, z] = onAxisPlane(frame, s, 0);
  const r = body.radiusMm + body.halfTaper * (s - middleOf(zone)) - faceDepth * body.pitchMm;
  return [x, y, z - r] as const;
}

/** Crests of windows of two turns, a turn apart, all along a thread. */
export function turnPhases(photo: PosedPhoto, body: WoundBody): TurnPhases[] {
  const { camera } = photo;
  const { frame, zone, pitchMm, halfTaper, hand } = body;
  const pitchPx = pitchMm / mmPerPxAt(camera, frame, zone);
  const length = zone.toS - zone.fromS - turnLook.turns * pitchMm;
  const count = Math.max(2, Math.ceil(length / pitchMm) + 1);
  const phases: TurnPhases[] = [];
  for (let k = 0; k < count; k++) {
    const middleS = zone.fromS + (turnLook.turns / 2) * pitchMm + (length * k) / (count - 1);
    const radiusMm = body.radiusMm + halfTaper * (middleS - middleOf(zone));
    const fold = { middleS, pitchMm, radiusMm, halfTaper };
    const limbs = limbPatch(photo, frame, turnLook, fold);
    const face = facePatch(photo, frame, { ...fold, hand });
    if (!limbs || !face) continue;
    const lean = leanAt(camera, frame, middleS);
    const seen = (belief: PhaseBelief, at: (s: number) => PhotoPoint): CrestSeen => {
      // The crest next to the window's middle.
      const s = middleS + pitchMm * (belief.phase > 0.5 ? belief.phase - 1 : belief.phase);
      return { at: at(s), sureness: belief.sureness };
    };
    const limb = (side: 'left' | 'right') =>
      seen(limbPhase(limbs[side], lean, pitchPx), (s) =>
        photoAt(camera, frame, s, side === 'left' ? radiusMm : -radiusMm),
      );
    phases.push({
      left: limb('left'),
      right: limb('right'),
      face: seen(facePhase(face, lean, pitchPx), (s) => project(camera, topOf(body, s))),
    });
  }
  return phases;
}
