import type { GreyImage } from '../../vision/grey-image';
import { type PosedCamera, projectRow, type Vec3 } from './camera';

/** A plane as the photo shows it, rows of `width` grey values from 0 to 255, between pixels by bilinear
 *  interpolation; beyond the photo its nearest pixel. `rowFrom`: where a row begins, card frame, mm; `step`: from
 *  one value to the next. */
export function planeGrey(
  grey: GreyImage,
  camera: PosedCamera,
  { width, height }: { readonly width: number; readonly height: number },
  rowFrom: (row: number) => Vec3,
  step: Vec3,
): Uint8Array {
  const data = new Uint8Array(width * height);
  const at = new Float64Array(2 * width);
  const d = grey.data;
  for (let j = 0; j < height; j++) {
    projectRow(camera, rowFrom(j), step, width, at);
    for (let i = 0; i < width; i++) {
      const x = Math.max(0, Math.min(grey.width - 1.001, at[2 * i]));
      const y = Math.max(0, Math.min(grey.height - 1.001, at[2 * i + 1]));
      const x0 = Math.floor(x);
      const y0 = Math.floor(y);
      const k = y0 * grey.width + x0;
      const fx = x - x0;
      const fy = y - y0;
      data[j * width + i] =
        (d[k] * (1 - fx) + d[k + 1] * fx) * (1 - fy) +
        (d[k + grey.width] * (1 - fx) + d[k + grey.width + 1] * fx) * fy +
        0.5;
    }
  }
  return data;
}
