import type { PhotoPoint } from '../../journey/overlay';
import type { ViewBox } from '../inspection/view-box';

/** Where the middle of a loupe lies, in the frame of `box`: above the finger that holds the mark, else below it,
 *  else beside it, wherever all of it is seen; in a view too small for that, above. */
export function loupePlace(
  [x, y]: PhotoPoint,
  box: ViewBox,
  { radius, offset }: { readonly radius: number; readonly offset: number },
): PhotoPoint {
  const across = within(x, box.x + radius, box.x + box.width - radius);
  const along = within(y, box.y + radius, box.y + box.height - radius);
  const places: readonly PhotoPoint[] = [
    [across, y - offset],
    [across, y + offset],
    [x - offset, along],
    [x + offset, along],
  ];
  const isSeen = ([px, py]: PhotoPoint) =>
    px - radius >= box.x &&
    px + radius <= box.x + box.width &&
    py - radius >= box.y &&
    py + radius <= box.y + box.height;
  return places.find(isSeen) ?? places[0]!;
}

const within = (value: number, least: number, most: number) =>
  Math.max(least, Math.min(most, value));
