import { middleValue } from '../../quantity/order';
import type { Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import { planeGrey } from '../2-card-pose/plane-grey';
import { crossings } from '../2-reference/polygon';
import type { Reference, SearchRegion } from '../2-reference/reference';

/** Where the fitting may lie, seen square-on at a reduced scale, for finding it.
 *  Pixel (i, j) shows card point (originMm + i/pxPerMm, originMm + j/pxPerMm), z = 0. */
export interface WindowView extends GreyImage {
  readonly pxPerMm: number;
  readonly originXMm: number;
  readonly originYMm: number;
  /** Pixels that are not 0 show what is not to be looked at; null when all of the view is. */
  readonly outside: Uint8Array | null;
}

export function windowView(
  grey: GreyImage,
  { camera, search }: Reference,
  pxPerMm: number,
): WindowView {
  const xs = search.polygon.map(([x]) => x);
  const ys = search.polygon.map(([, y]) => y);
  const originXMm = Math.min(...xs);
  const originYMm = Math.min(...ys);
  const width = Math.round((Math.max(...xs) - originXMm) * pxPerMm);
  const height = Math.round((Math.max(...ys) - originYMm) * pxPerMm);
  const data = planeGrey(
    grey,
    camera,
    { width, height },
    (row) => [originXMm, originYMm + row / pxPerMm, 0],
    [1 / pxPerMm, 0, 0],
  );
  const seen = { width, height, pxPerMm, originXMm, originYMm };
  return { ...seen, data, outside: outsideOf(search, seen) };
}

function outsideOf(
  { polygon, holes }: SearchRegion,
  { width, height, pxPerMm, originXMm, originYMm }: Omit<WindowView, 'data' | 'outside'>,
): Uint8Array | null {
  const outside = new Uint8Array(width * height).fill(1);
  const fill = (shape: SearchRegion['polygon'], value: 0 | 1) => {
    for (let j = 0; j < height; j++) {
      const spans = crossings(shape, originYMm + (j + 0.5) / pxPerMm);
      for (let k = 0; k + 1 < spans.length; k += 2) {
        const from = Math.max(0, Math.round((spans[k] - originXMm) * pxPerMm));
        const to = Math.min(width, Math.round((spans[k + 1] - originXMm) * pxPerMm));
        if (to > from) outside.fill(value, j * width + from, j * width + to);
      }
    }
  };
  fill(polygon, 0);
  for (const hole of holes) fill(hole, 1);
  return outside.includes(1) ? outside : null;
}

/** Which card it is, from the window's rim: the fitting covers little of it. */
export function fieldOf(view: WindowView, paperLevel: number): Field {
  const rim: number[] = [];
  for (let i = 0; i < view.width; i += 4) {
    rim.push(view.data[2 * view.width + i], view.data[(view.height - 3) * view.width + i]);
  }
  return middleValue(rim) < 0.5 * paperLevel ? 'dark' : 'light';
}
