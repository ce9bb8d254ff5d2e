import type { Estimate } from '../../quantity/estimate';
import { evenPitch } from '../4-limbs/even-crests';
import { phaseTeller } from '../4-limbs/phase-network';
import { weightsIn } from '../4-limbs/weights';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import type { Bore, WallWindow } from './bore-wall';
import { type WallFold, wallLook, wallPatch, wallView } from './wall-patch';
import trained from './weights.json';

const wallPhase = phaseTeller(() => weightsIn(trained.wall), wallLook.rows);
/** Windows of two turns follow one another by half a turn: little of a wall is seen. */
const hop = 0.5;

/** How far off a pitch is that the wall's ripple alone tells, a share of it, and how many of these it is sought within:
 *  `npm run calibrate-bores` found 0.005 standing and 0.012 lying before crests were looked for, on 92 seen renders. */
const uRipple = 0.012;
const within = 4.5;

/** The pitch by where a network sees the crests of a bore's far wall, about one by how that ripples; null where too few
 *  turns are seen. */
export function wallPitch(
  photo: PosedPhoto,
  bore: Bore,
  { fromMm, toMm }: WallWindow,
  { pitchMm, hand }: Omit<WallFold, 'middleMm'>,
): Estimate | null {
  const at: number[] = [];
  const sureness: number[] = [];
  const first = fromMm + (wallLook.turns / 2) * pitchMm;
  const last = toMm - (wallLook.turns / 2) * pitchMm;
  const count = Math.floor((last - first) / (hop * pitchMm)) + 1;
  for (let k = 0; k < count; k++) {
    const middleMm = first + ((last - first) * k) / Math.max(1, count - 1);
    const fold = { middleMm, pitchMm, hand };
    const patch = wallPatch(photo, bore, fold);
    if (!patch) continue;
    const { lean, pitchPx } = wallView(photo.camera, bore, fold);
    const belief = wallPhase(patch, lean, pitchPx);
    at.push(middleMm + pitchMm * (belief.phase > 0.5 ? belief.phase - 1 : belief.phase));
    sureness.push(belief.sureness);
  }
  return at.length < 2
    ? null
    : evenPitch([{ at, sureness }], { value: pitchMm, u: uRipple * pitchMm }, within * uRipple);
}
