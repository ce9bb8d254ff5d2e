import { rescaleCoordinate } from '../../vision/pixel-scale';
import type { PhotoPoint } from '../overlay';
import { isInside } from './polygon';
import { rectangles } from './rectangles';

/** Of the card's rim that stays: its edges are what is measured, and nothing is printed so near to them
 *  that it names anybody (ISO/IEC 7811-1 embosses further in, from memory). */
const rimMm = 2;

/** Paints the face of an ID-1 card over, in place, with the one colour that it has on average: no number,
 *  name or picture is left, and the card's edges still are. RGBA rows from the top; `outline` as in
 *  `Reference`, in pixels of the upright photo of `measured` size. Returns how many pixels were painted. */
export function paintFace(
  picture: {
    readonly width: number;
    readonly height: number;
    readonly data: Uint8ClampedArray | Uint8Array;
  },
  outline: readonly PhotoPoint[],
  measured: { readonly width: number; readonly height: number },
): number {
  const { width, height, data } = picture;
  const inner = withoutRim(outline).map(
    ([x, y]) =>
      [
        rescaleCoordinate(x, measured.width, width),
        rescaleCoordinate(y, measured.height, height),
      ] as const,
  );
  const xs = inner.map(([x]) => x);
  const ys = inner.map(([, y]) => y);
  const inside: number[] = [];
  const sum = [0, 0, 0];
  for (let y = Math.max(0, Math.floor(Math.min(...ys))); y < Math.min(height, Math.max(...ys)); y++)
    for (
      let x = Math.max(0, Math.floor(Math.min(...xs)));
      x < Math.min(width, Math.max(...xs));
      x++
    ) {
      if (!isInside(inner, x, y)) continue;
      const at = 4 * (y * width + x);
      inside.push(at);
      for (let k = 0; k < 3; k++) sum[k] += data[at + k];
    }
  for (const at of inside)
    for (let k = 0; k < 3; k++) data[at + k] = Math.round(sum[k] / inside.length);
  return inside.length;
}

/** Corners in the order of `outline`: its first side is a long one of the card. */
function withoutRim([a, b, c, d]: readonly PhotoPoint[]): PhotoPoint[] {
  const id1 = rectangles.find(({ kind }) => kind === 'id1');
  if (!id1) throw new Error('ID-1 is one of the rectangles');
  const [u, v] = [rimMm / id1.widthMm, rimMm / id1.heightMm];
  const between = (p: PhotoPoint, q: PhotoPoint, t: number): PhotoPoint => [
    p[0] + t * (q[0] - p[0]),
    p[1] + t * (q[1] - p[1]),
  ];
  const at = (s: number, t: number) => between(between(a, b, s), between(d, c, s), t);
  return [at(u, v), at(1 - u, v), at(1 - u, 1 - v), at(u, 1 - v)];
}
