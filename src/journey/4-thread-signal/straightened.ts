import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';
import { sampleLinear } from '../2-card-pose/sampling';
import { type AxisFrame, photoAt } from './axis-frame';

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
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      const at = photoAt(camera, frame, range.fromS + i * stepMm, range.fromR + j * stepMm);
      values[j * columns + i] = sampleLinear(grey, at[0], at[1]);
    }
  }
  return { values, columns, rows, fromS: range.fromS, fromR: range.fromR, stepMm };
}
