import * as portable from '../../quantity/portable-math';
import { projectRow, type Vec3 } from '../2-card-pose/camera';
import { sampleLinear } from '../2-card-pose/sampling';
import { darkLight, levelLight } from '../4-limbs/level-light';
import { type LimbGrid, limbPatch } from '../4-limbs/limb-patch';
import { type AxisFrame, type Extent, middleOf, onAxisPlane } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';

/** A thread as it has been measured, its frame running from the free end towards the hex; `radiusMm` and `halfTaper`
 *  (its growth along s) are those of the crests, at the middle of the zone. */
export interface PlacedThread {
  readonly frame: AxisFrame;
  readonly zone: Extent;
  readonly pitchMm: number;
  readonly radiusMm: number;
  readonly halfTaper: number;
}

/** Rows of one side, and of both. */
const sideRows = 32;
export const threadRows = 2 * sideRows;
export const profilePhases = 32;
export const taperColumns = 64;

const profileGrid: Omit<LimbGrid, 'turns'> = {
  bins: sideRows,
  binsPerPitch: 20,
  binsInside: 21,
  phases: profilePhases,
};
const mostTurns = 12;

/** All turns folded on one pitch, the outermost row of the left side first and that of the right side last; 64 rows of 32
 *  phases, levelled logarithm of light. Null where the photo ends. */
export function profilePatch(photo: PosedPhoto, thread: PlacedThread): Float32Array | null {
  const { frame, zone, pitchMm, radiusMm, halfTaper } = thread;
  const turns = Math.max(2, Math.min(mostTurns, Math.floor((zone.toS - zone.fromS) / pitchMm)));
  const fold = { middleS: middleOf(zone), pitchMm, radiusMm, halfTaper };
  const patch = limbPatch(photo, frame, { ...profileGrid, turns }, fold);
  if (!patch) return null;
  const { phases } = profileGrid;
  const out = new Float32Array(threadRows * phases);
  for (let row = 0; row < sideRows; row++)
    for (let k = 0; k < phases; k++) {
      out[(sideRows - 1 - row) * phases + k] = patch.left[row * phases + k];
      out[(sideRows + row) * phases + k] = patch.right[row * phases + k];
    }
  return out;
}

const taperRowsPerPitch = 12;
const taperRowsInside = 16;
/** How far before the thread and behind it the window reaches, of the thread's length: towards the hex a tapered thread
 *  runs out, a straight one ends at a relief. */
const ahead = 0.12;
const behind = 0.3;
/** Sub-samples of a cell along and across. */
const sub = 3;

/** Both limbs along the whole thread, beside lines parallel to the axis through the crests at its middle; rows as in
 *  `profilePatch`, 64 columns from before the first turn to behind the last. */
export function taperPatch({ grey, camera }: PosedPhoto, thread: PlacedThread): Float32Array {
  const { frame, zone, pitchMm, radiusMm } = thread;
  const length = zone.toS - zone.fromS;
  const along = ((1 + ahead + behind) * length) / (taperColumns * sub);
  const across = pitchMm / taperRowsPerPitch / sub;
  const firstS = zone.fromS - ahead * length + along / 2;
  const step = frame.along.map((d) => along * d) as unknown as Vec3;
  const columns = taperColumns * sub;
  const at = new Float64Array(2 * columns);
  const out = new Float32Array(threadRows * taperColumns);
  for (const side of [1, -1] as const)
    for (let j = 0; j < sideRows * sub; j++) {
      const r = radiusMm + (j + 0.5 - taperRowsInside * sub) * across;
      projectRow(camera, onAxisPlane(frame, firstS, side * r), step, columns, at);
      const inner = Math.floor(j / sub);
      const row = (side === 1 ? sideRows - 1 - inner : sideRows + inner) * taperColumns;
      for (let i = 0; i < columns; i++)
        out[row + Math.floor(i / sub)] +=
          portable.log(sampleLinear(grey, at[2 * i], at[2 * i + 1]) + darkLight) / (sub * sub);
    }
  levelLight([out]);
  return out;
}
