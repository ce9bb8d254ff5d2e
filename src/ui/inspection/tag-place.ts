import type { PhotoPoint } from '../../journey/overlay';
import type { ViewBox } from './view-box';

/** Viewer px. Room about a name, from its line, and of a letter: a figure is up to 0.63 of its size wide. */
const half = { height: 14, padding: 8, letter: 4.1 };
const gap = 6;

interface Named {
  readonly lines: readonly (readonly PhotoPoint[])[];
  /** Middle of the thread, if it is known. */
  readonly threadAt: PhotoPoint | null;
  /** How many the name has. */
  readonly letters: number;
}

/** Middle of the name of what is drawn by these lines, viewer px: beside one of them, away from the thread, whose crests
 *  are drawn too; beside the upper one where both have the room. Null where no line is in view. */
export function tagPlace(
  { lines, threadAt, letters }: Named,
  box: ViewBox,
  scale: number,
): { readonly x: number; readonly y: number } | null {
  const inViewer = ([x, y]: PhotoPoint): PhotoPoint => [(x - box.x) / scale, (y - box.y) / scale];
  const [width, height] = [box.width / scale, box.height / scale];
  const middles = lines.map((line) => inViewer(middleOf(line)));
  const from = threadAt ? inViewer(threadAt) : middleOf(middles);
  const halfWidth = half.padding + half.letter * letters;
  const places = middles
    .filter(([x, y]) => x >= 0 && y >= 0 && x <= width && y <= height)
    .map((middle) => {
      const wanted = beside(middle, from, halfWidth);
      const x = within(wanted[0], halfWidth, width - halfWidth);
      const y = within(wanted[1], half.height, height - half.height);
      return { x, y, moved: Math.round(Math.hypot(x - wanted[0], y - wanted[1])) };
    });
  const [best] = places.sort((a, b) => a.moved - b.moved || a.y - b.y);
  return best ?? null;
}

/** Where a name touches neither its line nor what lies towards `from`. */
function beside(middle: PhotoPoint, from: PhotoPoint, halfWidth: number): PhotoPoint {
  const [dx, dy] = [middle[0] - from[0], middle[1] - from[1]];
  const away = Math.hypot(dx, dy) || 1;
  const [ux, uy] = [dx / away, dy / away];
  const reach = gap + Math.abs(ux) * halfWidth + Math.abs(uy) * half.height;
  return [middle[0] + ux * reach, middle[1] + uy * reach];
}

export const middleOf = (points: readonly PhotoPoint[]): PhotoPoint => [
  points.reduce((sum, [x]) => sum + x, 0) / points.length,
  points.reduce((sum, [, y]) => sum + y, 0) / points.length,
];

const within = (value: number, least: number, most: number) =>
  Math.max(least, Math.min(most, value));
