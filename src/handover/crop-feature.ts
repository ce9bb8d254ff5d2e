import type { EndFeature, PhotoPoint } from '../journey/overlay';
import { type CropFeature, cropSize } from './crop-drawing';

const { width, height } = cropSize;

/** What is drawn of a seat, in the drawing's units. A cone's name stands in the upper left corner, a ring's or a
 *  shoulder's in the lower right one: the dimensions have the others. */
export function cropFeature(
  { seat, lines }: EndFeature,
  place: (p: PhotoPoint) => PhotoPoint,
): CropFeature {
  const drawn = lines.map((line) => line.map(place));
  const cone = seat.startsWith('cone-');
  const near = drawn.map(middleOf).reduce((a, b) => (cone === b[1] < a[1] ? b : a));
  return {
    seat,
    lines: drawn,
    leader: [cone ? [34, 23] : [width - 34, height - 22], near],
    plate: cone
      ? { at: [6, 13], anchor: 'start' }
      : { at: [width - 6, height - 12], anchor: 'end' },
  };
}

/** Half way along a line of two points, or of the middle stretch of a bracket. */
function middleOf(line: readonly PhotoPoint[]): PhotoPoint {
  const [from, to] = [line[(line.length >> 1) - 1], line[line.length >> 1]];
  return [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
}
