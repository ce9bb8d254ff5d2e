import type { GreyImage } from '../../vision/grey-image';
import { type PosedCamera, projectRow, type Vec3 } from '../2-card-pose/camera';
import { sampleLinear } from '../2-card-pose/sampling';
import { type AxisFrame, onAxisPlane } from './axis-frame';

/** The fitting laid straight: columns along the axis, rows across, in linear light.
 *  value[j·columns + i] lies at s = fromS + i·step, r = fromR + j·step (axis frame, axis plane); NaN outside
 *  the photo. */
export interface Straightened {
  readonly values: Float32Array;
  readonly columns: number;
  readonly rows: number;
  readonly fromS: number;
  readonly fromR: number;
  readonly stepMm: number;
}

export function straighten(
  grey: GreyImage,
  camera: PosedCamera,
  frame: AxisFrame,
  range: { fromS: number; toS: number; fromR: number; toR: number },
  stepMm: number,
): Straightened {
  const columns = Math.max(1, Math.round((range.toS - range.fromS) / stepMm) + 1);
  const rows = Math.max(1, Math.round((range.toR - range.fromR) / stepMm) + 1);
  const values = new Float32Array(columns * rows);
  const { along } = frame;
  const step: Vec3 = [along[0] * stepMm, along[1] * stepMm, along[2] * stepMm];
  const at = new Float64Array(2 * columns);
  for (let j = 0; j < rows; j++) {
    const start = onAxisPlane(frame, range.fromS, range.fromR + j * stepMm);
    projectRow(camera, start, step, columns, at);
    for (let i = 0; i < columns; i++)
      values[j * columns + i] = sampleLinear(grey, at[2 * i], at[2 * i + 1]);
  }
  return { values, columns, rows, fromS: range.fromS, fromR: range.fromR, stepMm };
}
