import * as portable from '../../quantity/portable-math';
import { leanAt, middleOf } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import type { ThreadShows } from '../5-measurement/thread-measurement';
import type { ThreadSolution } from '../5-measurement/thread-solution';
import learnt from './allowances.json';
import { named, trusted, untrusted } from './end-look';
import { endLogits, profileKinds, taperKinds } from './end-network';
import { profilePatch, taperPatch } from './thread-patch';

type Looked = Pick<ThreadSolution, 'frame' | 'zone' | 'mmPerPx'> & {
  readonly fit: Pick<ThreadSolution['fit'], 'crestRadiusMm' | 'pitchMm' | 'halfTaper'>;
};

/** Pixels of a pitch about which the profile's network was told how fine a photo is. */
const usualPitchPx = 12;

/** Which profile the teeth of both limbs show, and whether the thread tapers: how likely each kind is, were all as common.
 *  Null where the photo ends beside the thread. */
export function threadLook(
  photo: PosedPhoto,
  { frame, zone, mmPerPx, fit }: Looked,
): ThreadShows | null {
  const { pitchMm, crestRadiusMm: radiusMm, halfTaper } = fit;
  const thread = { frame, zone, pitchMm, radiusMm, halfTaper };
  const teeth = profilePatch(photo, thread);
  if (!teeth) return null;
  const fineness = portable.log(pitchMm / mmPerPx / usualPitchPx);
  const lean = leanAt(photo.camera, frame, middleOf(zone));
  const profile = endLogits('profile', teeth, fineness);
  const taper = endLogits('taper', taperPatch(photo, thread), lean);
  return {
    profile: named(profileKinds, trusted(profile, learnt.profile)),
    taper: named(taperKinds, trusted(taper, learnt.taper)),
  };
}

/** What the networks said, from what was made of it with the trust of today. */
export const saidOfThread = ({ profile, taper }: ThreadShows) => ({
  profile: untrusted(
    profileKinds.map((kind) => profile[kind]),
    learnt.profile,
  ),
  taper: untrusted(
    taperKinds.map((kind) => taper[kind]),
    learnt.taper,
  ),
});
