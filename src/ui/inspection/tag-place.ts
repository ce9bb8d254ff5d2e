import type { PhotoPoint } from '../../journey/overlay';
import type { ViewBox } from './view-box';

/** Viewer px. Room about a name, from its line, and of a letter: a figure is up to 0.63 of its size wide. */
const half = { height: 22, padding: 10, letter: 4.5 };
const gap = 6;

interface Named {
  readonly lines: readonly (readonly PhotoPoint[])[];
  /** Middle of the thread, if it is known. */
  readonly threadAt: PhotoPoint | null;
  /** How many the name has. */
  readonly letters: number;
}

/** Middle of the name of what is drawn by these lines, viewer px: beside the upper line, away from the thread, whose
 *  crests are drawn too. Null where that line is out of view. */
export function tagPlace(
  { lines, threadAt, letters }: Named,
  box: ViewBox,
  scale: number,
): { readonly x: number; readonly y: number } | null {
  const inViewer = ([x, y]: PhotoPoint): PhotoPoint => [(x - box.x) / scale, (y - box.y) / scale];
  const middles = lines.map((line) => inViewer(middleOf(line)));
  const upper = middles.reduce((a, b) => (b[1] < a[1] ? b : a));
  const [width, height] = [box.width / scale, box.height / scale];
  if (upper[0] < 0 || upper[1] < 0 || upper[0] > width || upper[1] > height) return null;
  const from = threadAt ? inViewer(threadAt) : middleOf(middles);
  const [dx, dy] = [upper[0] - from[0], upper[1] - from[1]];
  const away = Math.hypot(dx, dy) || 1;
  const halfWidth = Math.max(half.height, half.padding + half.letter * letters);
  const [ux, uy] = [dx / away, dy / away];
  const reach = gap + Math.abs(ux) * halfWidth + Math.abs(uy) * half.height;
  return {
    x: within(upper[0] + ux * reach, halfWidth, width - halfWidth),
    y: within(upper[1] + uy * reach, half.height, height - half.height),
  };
}

export const middleOf = (points: readonly PhotoPoint[]): PhotoPoint => [
  points.reduce((sum, [x]) => sum + x, 0) / points.length,
  points.reduce((sum, [, y]) => sum + y, 0) / points.length,
];

const within = (value: number, least: number, most: number) =>
  Math.max(least, Math.min(most, value));
