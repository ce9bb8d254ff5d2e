import { projectRow, type Vec3 } from '../2-card-pose/camera';
import { type AxisFrame, onAxisPlane } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { addLine, foldChannels, folded, folding } from './folded-light';

/** A few turns of a thread folded on one pitch, both sides: what a limb looks like whatever its size. */
export interface LimbPatch {
  /** Per side: mean over the turns, then spread, of the levelled logarithm of light;
   *  values[(channel·bins + bin)·phases + phase]. */
  readonly left: Float32Array;
  readonly right: Float32Array;
  /** Where the bins begin at the middle of the turns, mm from the axis outwards. */
  readonly fromR: number;
  readonly binMm: number;
}

export const limbChannels = foldChannels;

/** How finely a limb is looked at: bins across, so many to a pitch and so many of them inside the radius that is
 *  expected, and phases along. What lies inside is metal to level by; the rest is for what lies outside. */
export interface LimbGrid {
  readonly turns: number;
  readonly bins: number;
  readonly binsPerPitch: number;
  readonly binsInside: number;
  readonly phases: number;
}

/** For a radius that is known within a pitch or two, and one that is known within half a pitch. */
export const firstLook: LimbGrid = {
  turns: 4,
  bins: 80,
  binsPerPitch: 12,
  binsInside: 44,
  phases: 16,
};
export const closeLook: LimbGrid = {
  turns: 2,
  bins: 48,
  binsPerPitch: 24,
  binsInside: 28,
  phases: 24,
};
/** Sub-samples of a cell along and across. */
const sub = 2;

/** What to fold: the turns about `middleS`. `radiusMm` is where the crests are expected there, `halfTaper` how that
 *  grows along s. */
export interface Fold {
  readonly middleS: number;
  readonly pitchMm: number;
  readonly radiusMm: number;
  readonly halfTaper: number;
}

/** Null where the photo ends. */
export function limbPatch(
  photo: PosedPhoto,
  frame: AxisFrame,
  grid: LimbGrid,
  fold: Fold,
): LimbPatch | null {
  const binMm = fold.pitchMm / grid.binsPerPitch;
  const fromR = fold.radiusMm - grid.binsInside * binMm;
  const [x, y, z] = frame.left;
  const mirrored = { ...frame, left: [-x, -y, -z] as const };
  const left = foldedSide(photo, frame, grid, fold, fromR);
  const right = foldedSide(photo, mirrored, grid, fold, fromR);
  if (!left || !right) return null;
  level(left, right);
  return { left, right, fromR, binMm };
}

function foldedSide(
  { grey, camera }: PosedPhoto,
  frame: AxisFrame,
  { turns, bins, binsPerPitch, phases }: LimbGrid,
  { middleS, pitchMm, halfTaper }: Fold,
  fromR: number,
): Float32Array | null {
  const across = pitchMm / binsPerPitch / sub;
  const along = pitchMm / (phases * sub);
  const columns = turns * phases * sub;
  const firstS = middleS - ((columns - 1) / 2) * along;
  const { along: d, left: l } = frame;
  const step = [0, 1, 2].map((k) => along * (d[k] + halfTaper * l[k])) as unknown as Vec3;
  const fold = folding({ rows: bins, phases, turns, sub });
  const at = new Float64Array(2 * columns);
  for (let j = 0; j < bins * sub; j++) {
    const r = fromR + (j + 0.5) * across + halfTaper * (firstS - middleS);
    projectRow(camera, onAxisPlane(frame, firstS, r), step, columns, at);
    if (!addLine(fold, grey, at, Math.floor(j / sub))) return null;
  }
  return folded(fold);
}

/** Both sides less their common mean, over their common spread. */
function level(left: Float32Array, right: Float32Array): void {
  const cells = left.length / limbChannels;
  let sum = 0;
  let squares = 0;
  for (const side of [left, right])
    for (let k = 0; k < cells; k++) {
      sum += side[k];
      squares += side[k] * side[k];
    }
  const mean = sum / (2 * cells);
  const spread = Math.max(0.05, Math.sqrt(Math.max(0, squares / (2 * cells) - mean * mean)));
  for (const side of [left, right])
    for (let k = 0; k < cells; k++) {
      side[k] = Math.max(-3, Math.min(3, (side[k] - mean) / spread));
      side[cells + k] = Math.min(3, side[cells + k] / spread);
    }
}
