import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';
import { type AxisFrame, middleOf } from '../4-thread-signal/axis-frame';
import { straighten } from '../4-thread-signal/straightened';
import { darkLight, levelLight } from './level-light';

/** The whole part along its thread's axis, both sides, in units of the thread's radius: columns of a
 *  sixth of it along, rows of a twenty-fourth across, from the axis outwards. */
export interface HexPatch {
  /** Levelled logarithm of light, values[row·columns + column]. */
  readonly left: Float32Array;
  readonly right: Float32Array;
  /** 1 where the thread is. */
  readonly thread: Float32Array;
}

export const hexRows = 72;
export const hexColumns = 80;
export const rowsPerRadius = 24;
const columnsPerRadius = 6;
const sub = 2;

export function hexPatch(
  grey: GreyImage,
  camera: PosedCamera,
  frame: AxisFrame,
  zone: { readonly fromS: number; readonly toS: number },
  radiusMm: number,
): HexPatch {
  const along = radiusMm / columnsPerRadius;
  const middle = middleOf(zone);
  const fromS = middle - (hexColumns / 2) * along;
  const [x, y, z] = frame.left;
  const left = side(grey, camera, frame, fromS, radiusMm);
  const right = side(grey, camera, { ...frame, left: [-x, -y, -z] }, fromS, radiusMm);
  levelLight([left, right]);
  const thread = new Float32Array(hexRows * hexColumns);
  for (let i = 0; i < hexColumns; i++) {
    const s = fromS + (i + 0.5) * along;
    if (s < zone.fromS || s > zone.toS) continue;
    for (let j = 0; j < hexRows; j++) thread[j * hexColumns + i] = 1;
  }
  return { left, right, thread };
}

function side(
  grey: GreyImage,
  camera: PosedCamera,
  frame: AxisFrame,
  fromS: number,
  radiusMm: number,
): Float32Array {
  const along = radiusMm / (columnsPerRadius * sub);
  const across = radiusMm / (rowsPerRadius * sub);
  const columns = hexColumns * sub;
  const out = new Float32Array(hexRows * hexColumns);
  for (let j = 0; j < hexRows * sub; j++) {
    const r = (j + 0.5) * across;
    const strip = straighten(
      grey,
      camera,
      frame,
      { fromS: fromS + along / 2, toS: fromS + (columns - 0.5) * along, fromR: r, toR: r },
      along,
    );
    const row = Math.floor(j / sub) * hexColumns;
    for (let i = 0; i < columns; i++)
      out[row + Math.floor(i / sub)] += portable.log(strip.values[i] + darkLight) / (sub * sub);
  }
  return out;
}
