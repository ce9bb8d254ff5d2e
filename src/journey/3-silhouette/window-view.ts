import { card, type Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import { type PosedCamera, projectRow } from '../2-card-pose/camera';

/** The card's window seen square-on at a reduced scale, for finding the fitting.
 *  Pixel (i, j) shows card point (originMm + i/pxPerMm, originMm + j/pxPerMm), z = 0. */
export interface WindowView extends GreyImage {
  readonly pxPerMm: number;
  readonly originXMm: number;
  readonly originYMm: number;
}

/** A little inside the window: the printed border of the dark field is an edge too. */
const insetMm = 1;

export function windowView(
  grey: GreyImage,
  camera: PosedCamera,
  scale: { readonly x: number; readonly y: number },
  pxPerMm: number,
): WindowView {
  const { window } = card;
  const width = Math.round((window.widthMm - 2 * insetMm) * scale.x * pxPerMm);
  const height = Math.round((window.heightMm - 2 * insetMm) * scale.y * pxPerMm);
  const originXMm = (window.xMm + insetMm) * scale.x;
  const originYMm = (window.yMm + insetMm) * scale.y;
  const data = new Uint8Array(width * height);
  const at = new Float64Array(2 * width);
  const d = grey.data;
  for (let j = 0; j < height; j++) {
    projectRow(camera, [originXMm, originYMm + j / pxPerMm, 0], [1 / pxPerMm, 0, 0], width, at);
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
  return { width, height, data, pxPerMm, originXMm, originYMm };
}

/** Which card it is, from the window's rim: the fitting covers little of it. */
export function fieldOf(view: WindowView, paperLevel: number): Field {
  const rim: number[] = [];
  for (let i = 0; i < view.width; i += 4) {
    rim.push(view.data[2 * view.width + i], view.data[(view.height - 3) * view.width + i]);
  }
  rim.sort((a, b) => a - b);
  return rim[rim.length >> 1] < 0.5 * paperLevel ? 'dark' : 'light';
}
