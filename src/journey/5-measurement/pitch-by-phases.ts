import type { Estimate } from '../../quantity/estimate';
import { crestPlaces } from '../4-limbs/crest-places';
import { evenPitch } from '../4-limbs/even-crests';
import { turnPhases, type WoundBody } from '../4-limbs/turn-phases';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';

/** Share of the expected pitch within which it is sought. */
const span = 0.02;

/** The pitch by where crests of limbs and upper side are seen all along a thread. Null where too few windows are seen. */
export function pitchByPhases(photo: PosedPhoto, body: WoundBody): Estimate | null {
  const phases = turnPhases(photo, body);
  if (phases.length < 2) return null;
  const places = phases.map((one) => crestPlaces(photo.camera, body, one));
  const lines = (['left', 'right', 'face'] as const).map((side) => ({
    at: places.map((one) => one[side]),
    sureness: phases.map((one) => one[side].sureness),
  }));
  return evenPitch(lines, { value: body.pitchMm, u: Number.POSITIVE_INFINITY }, span);
}
