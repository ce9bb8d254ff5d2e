import type { Estimate } from '../../quantity/estimate';
import type { AxisFrame, Extent } from '../4-thread-signal/axis-frame';
import { middleOf } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { surfacePeriodNear } from '../4-thread-signal/surface-period';
import { ridgesUnrolled } from '../4-thread-signal/unrolled-surface';
import type { ThreadFit } from './fit-thread';
import { pitchByPhases } from './pitch-by-phases';

/** Who tells a thread's pitch beside its outline: how its surface ripples, and where its crests are seen to be. */
export interface PitchWitnesses {
  readonly surface: Estimate;
  readonly phases: Estimate | null;
}

/** Where a fit has a thread. */
export interface FittedPlace {
  readonly frame: AxisFrame;
  readonly zone: Extent;
  readonly fit: Pick<ThreadFit, 'pitchMm' | 'crestRadiusMm' | 'halfTaper' | 'middleS'>;
}

/** Share of the pitch within which the surface is asked again. */
const nearby = 0.012;

/** The surface's period near a fit's, unrolled about its axis, mm; null where it shows too little. */
export function surfaceAbout(photo: PosedPhoto, { frame, zone, fit }: FittedPlace): number | null {
  const { crestRadiusMm: radiusMm, halfTaper, middleS, pitchMm } = fit;
  const view = ridgesUnrolled(photo, frame, zone, { radiusMm, halfTaper, middleS }, pitchMm);
  return surfacePeriodNear(view, pitchMm, nearby)?.periodMm ?? null;
}

/** The pitch by the crests' phases along a fitted thread. */
export function phasesAbout(
  photo: PosedPhoto,
  { frame, zone, fit }: FittedPlace,
  hand: 'right' | 'left',
): Estimate | null {
  const { crestRadiusMm, halfTaper, middleS, pitchMm } = fit;
  const radiusMm = crestRadiusMm + halfTaper * (middleOf(zone) - middleS);
  return pitchByPhases(photo, { frame, zone, pitchMm, radiusMm, halfTaper, hand });
}

/** What both say, each weighed by its own u. */
export function agreedPitch({ surface, phases }: PitchWitnesses): Estimate {
  if (!phases) return surface;
  const share = phases.u ** 2 / (surface.u ** 2 + phases.u ** 2);
  return {
    value: share * surface.value + (1 - share) * phases.value,
    u: Math.sqrt(share) * surface.u,
  };
}

/** What they leave to doubt: how sure the phases are, and how far they lie from the surface, mm. */
export const pitchDoubt = ({ surface, phases }: PitchWitnesses): number =>
  phases ? Math.hypot(phases.u, phases.value - surface.value) : surface.u;
