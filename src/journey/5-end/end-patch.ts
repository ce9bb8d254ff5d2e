import * as portable from '../../quantity/portable-math';
import { projectRow, type Vec3 } from '../2-card-pose/camera';
import { sampleLinear } from '../2-card-pose/sampling';
import { darkLight, levelLight } from '../4-limbs/level-light';
import { type AxisFrame, type Extent, onAxisPlane } from '../4-thread-signal/axis-frame';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';

/** What lies before the thread's first turn (`nose`) or between its last one and the hex (`base`), seen along the
 *  axis from one side to the other, in units of the thread's radius: columns along, rows across. */
export interface EndPatches {
  /** Levelled logarithm of light, values[row·columns + column]; both look away from the thread, so that columns run
   *  from the thread outwards. */
  readonly nose: Float32Array;
  readonly base: Float32Array;
}

export const endRows = 64;
export const endColumns = 64;
/** Both windows are two radii long; so much of that lies on the thread. */
const onThread = 0.5;
const lengthRadii = 2;
const acrossRadii = 2.7;
/** Sub-samples of a cell along and across. */
const sub = 3;

/** `frame` runs from the free end towards the hex, `zone` is the thread's whole turns in it. */
export function endPatches(
  photo: PosedPhoto,
  frame: AxisFrame,
  zone: Extent,
  radiusMm: number,
): EndPatches {
  return {
    nose: window(photo, frame, zone.fromS + onThread * radiusMm, -radiusMm),
    base: window(photo, frame, zone.toS - onThread * radiusMm, radiusMm),
  };
}

/** A window that begins on the thread at `fromS`; `radiusMm` is negative where it runs against the axis. */
function window(
  { grey, camera }: PosedPhoto,
  frame: AxisFrame,
  fromS: number,
  radiusMm: number,
): Float32Array {
  const along = (lengthRadii * radiusMm) / (endColumns * sub);
  const across = (acrossRadii * Math.abs(radiusMm)) / (endRows * sub);
  const step = frame.along.map((d) => along * d) as unknown as Vec3;
  const columns = endColumns * sub;
  const at = new Float64Array(2 * columns);
  const out = new Float32Array(endRows * endColumns);
  for (let j = 0; j < endRows * sub; j++) {
    const r = (j + 0.5) * across - (acrossRadii * Math.abs(radiusMm)) / 2;
    projectRow(camera, onAxisPlane(frame, fromS + along / 2, r), step, columns, at);
    const row = Math.floor(j / sub) * endColumns;
    for (let i = 0; i < columns; i++)
      out[row + Math.floor(i / sub)] +=
        portable.log(sampleLinear(grey, at[2 * i], at[2 * i + 1]) + darkLight) / (sub * sub);
  }
  levelLight([out]);
  return out;
}
