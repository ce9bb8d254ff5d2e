import type { GreyImage } from '../../vision/grey-image';

/** Turns and mirrors an image as stored into one as seen, after EXIF's orientation tag
 *  (CIPA DC-008, 4.6.4: which sides of the scene row 0 and column 0 of the file are). */
export function makeUpright(image: GreyImage, orientation: number): GreyImage {
  if (orientation === 1) return image;
  const { width, height, data } = image;
  const swaps = orientation >= 5;
  const seenWidth = swaps ? height : width;
  const seenHeight = swaps ? width : height;
  const flipsX = [2, 3, 7, 8].includes(orientation);
  const flipsY = [3, 4, 6, 7].includes(orientation);
  // In the file's own directions: where the seen pixel (0, 0) lies and how far one step moves.
  const stepX = swaps ? (flipsY ? -width : width) : flipsX ? -1 : 1;
  const stepY = swaps ? (flipsX ? -1 : 1) : flipsY ? -width : width;
  const origin = (flipsX ? width - 1 : 0) + (flipsY ? width * (height - 1) : 0);
  const seen = new Uint8Array(data.length);
  const copy = { from: data, to: seen, width: seenWidth, height: seenHeight, origin, stepX, stepY };
  if (swaps) copyInTiles(copy);
  else copyRows(copy);
  return { width: seenWidth, height: seenHeight, data: seen };
}

/** `origin` and the steps are places in `from`; width and height are those of `to`. */
interface Copy {
  readonly from: Uint8Array;
  readonly to: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly origin: number;
  readonly stepX: number;
  readonly stepY: number;
}

function copyRows({ from, to, width, height, origin, stepX, stepY }: Copy): void {
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0, at = origin + y * stepY; x < width; x++, at += stepX) to[i++] = from[at];
  }
}

/** A transposition reads across rows: in tiles, what a cache line brings in is used before it goes. */
function copyInTiles({ from, to, width, height, origin, stepX, stepY }: Copy): void {
  const side = 64;
  for (let top = 0; top < height; top += side) {
    for (let left = 0; left < width; left += side) {
      const bottom = Math.min(top + side, height);
      const right = Math.min(left + side, width);
      for (let y = top; y < bottom; y++) {
        let at = origin + y * stepY + left * stepX;
        for (let i = y * width + left; i < y * width + right; i++, at += stepX) to[i] = from[at];
      }
    }
  }
}
