import * as portable from '../../quantity/portable-math';
import { projectRow, type Vec3 } from '../2-card-pose/camera';
import { type AxisFrame, onAxisPlane } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { addLine, folded, folding } from './folded-light';
import type { LimbGrid } from './limb-patch';

/** How finely a limb is looked at to say where along the axis its crests are. */
export const turnLook: LimbGrid = {
  turns: 2,
  bins: 32,
  binsPerPitch: 16,
  binsInside: 20,
  phases: 24,
};

/** The thread's upper side, rows of azimuth from right to left, so many phases to a turn. */
export const faceLook = { turns: 2, rows: 24, phases: 24, widestRad: (70 * Math.PI) / 180 };
/** How far below the crests it is unrolled, in pitches. */
export const faceDepth = 0.3;
/** Sub-samples of a phase, and of a row. */
const sub = 2;

/** The turns about `middleS`; `radiusMm` over their crests. */
export interface FaceFold {
  readonly middleS: number;
  readonly pitchMm: number;
  readonly radiusMm: number;
  readonly halfTaper: number;
  readonly hand: 'right' | 'left';
}

/** A few turns of the upper side unrolled along their helix and folded on the pitch: mean over the turns less each row's,
 *  then spread; values[(channel·rows + row)·phases + phase]. Null where the photo ends. */
export function facePatch(
  { grey, camera }: PosedPhoto,
  frame: AxisFrame,
  { middleS, pitchMm, radiusMm, halfTaper, hand }: FaceFold,
): Float32Array | null {
  const { turns, rows, phases, widestRad } = faceLook;
  const depthMm = faceDepth * pitchMm;
  const along = pitchMm / (phases * sub);
  const columns = turns * phases * sub;
  const fold = folding({ rows, phases, turns, sub });
  const at = new Float64Array(2 * columns);
  const { along: d, left: l } = frame;
  const climbs = hand === 'right' ? -1 : 1;
  for (let j = 0; j < rows * sub; j++) {
    const azimuth = widestRad * ((2 * (j + 0.5)) / (rows * sub) - 1);
    const [a, b] = [portable.sin(azimuth), portable.cos(azimuth)];
    // Along a ridge of the helix all azimuths meet at one phase.
    const s = middleS + (climbs * azimuth * pitchMm) / (2 * Math.PI) - ((columns - 1) / 2) * along;
    const r = radiusMm - depthMm + halfTaper * (s - middleS);
    const axis = onAxisPlane(frame, s, 0);
    const start: Vec3 = [axis[0] + r * a * l[0], axis[1] + r * a * l[1], axis[2] - r * b];
    const grows = halfTaper * along;
    const step: Vec3 = [
      along * d[0] + grows * a * l[0],
      along * d[1] + grows * a * l[1],
      along * d[2] - grows * b,
    ];
    projectRow(camera, start, step, columns, at);
    if (!addLine(fold, grey, at, Math.floor(j / sub))) return null;
  }
  const out = folded(fold);
  levelRows(out, rows, phases);
  return out;
}

/** Each row less its mean, all over their common spread. */
export function levelRows(patch: Float32Array, rows: number, phases: number): void {
  const cells = rows * phases;
  let squares = 0;
  for (let j = 0; j < rows; j++) {
    const row = patch.subarray(j * phases, (j + 1) * phases);
    const mean = row.reduce((sum, v) => sum + v, 0) / phases;
    for (let i = 0; i < phases; i++) {
      row[i] -= mean;
      squares += row[i] * row[i];
    }
  }
  const spread = Math.max(0.03, Math.sqrt(squares / cells));
  for (let k = 0; k < cells; k++) {
    patch[k] = Math.max(-3, Math.min(3, patch[k] / spread));
    patch[cells + k] = Math.min(3, patch[cells + k] / spread);
  }
}
