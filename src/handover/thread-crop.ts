import type { Overlay, PhotoPoint } from '../journey/overlay';
import { boreCrop } from './bore-crop';
import { cropSize, type ThreadCrop } from './crop-drawing';

const { width, height } = cropSize;
const room = { left: 64, right: 48, top: 44, bottom: 44 } as const;

/** A male thread with its free end to the left, or the mouth of a female one; null where the drawing of what was
 *  found did not come along. */
export function threadCrop(overlay: Overlay | null): ThreadCrop | null {
  const axis = overlay?.axis;
  if (!axis) return null;
  if (overlay.contactLines.length < 2) return boreCrop(overlay);
  const [[ax, ay], [bx, by]] = axis;
  const length = Math.hypot(bx - ax, by - ay);
  if (!(length > 0)) return null;
  const [cos, sin] = [(bx - ax) / length, (by - ay) / length];
  const level = ([x, y]: PhotoPoint): PhotoPoint => [
    cos * (x - ax) + sin * (y - ay),
    cos * (y - ay) - sin * (x - ax),
  ];
  const ends = overlay.contactLines.flat().map(level);
  const xs = ends.map(([x]) => x);
  const ys = ends.map(([, y]) => y);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  if (!(x1 > x0 && y1 > y0)) return null;
  const scale = Math.min(
    (width - room.left - room.right) / (x1 - x0),
    (height - room.top - room.bottom) / (y1 - y0),
  );
  const left = room.left + (width - room.left - room.right - scale * (x1 - x0)) / 2;
  const e = left - scale * x0;
  const f = height / 2 - (scale * (y0 + y1)) / 2;
  const place = (p: PhotoPoint): PhotoPoint => {
    const [x, y] = level(p);
    return [e + scale * x, f + scale * y];
  };
  const top = f + scale * y0;
  const bottom = f + scale * y1;
  const atX = Math.max(14, left - 30);
  const upper = overlay.crests
    .map((crest) => place(crest.at))
    .filter(([, y]) => y < (top + bottom) / 2)
    .sort((p, q) => p[0] - q[0]);
  const middle = Math.max(0, Math.floor(upper.length / 2) - 1);
  const [one, next] = [upper[middle], upper[middle + 1]];
  const pitchY = top - 14;
  const stub = 16;
  return {
    width,
    height,
    matrix: [
      scale * cos,
      -scale * sin,
      scale * sin,
      scale * cos,
      e - scale * (cos * ax + sin * ay),
      f - scale * (cos * ay - sin * ax),
    ],
    lines: [
      [
        [left + 6, top],
        [atX - 5, top],
      ],
      [
        [left + 6, bottom],
        [atX - 5, bottom],
      ],
      [
        [atX, top],
        [atX, bottom],
      ],
      ...(one && next
        ? ([
            [one, [one[0], pitchY - 5]],
            [next, [next[0], pitchY - 5]],
            [[one[0] - stub, pitchY], one.with(1, pitchY)],
            [next.with(1, pitchY), [next[0] + stub, pitchY]],
          ] as [PhotoPoint, PhotoPoint][])
        : []),
    ],
    arrows: [
      { at: [atX, top], towards: [0, -1] },
      { at: [atX, bottom], towards: [0, 1] },
      ...(one && next
        ? ([
            { at: [one[0], pitchY], towards: [1, 0] },
            { at: [next[0], pitchY], towards: [-1, 0] },
          ] as const)
        : []),
    ],
    plates: [
      { of: 'diameter', at: [6, height - 12], anchor: 'start' },
      // Without marks on the crests the figure still stands, only not at a turn.
      {
        of: 'pitch',
        at: [one && next ? (one[0] + next[0]) / 2 : (left + e + scale * x1) / 2, 13],
        anchor: 'middle',
      },
    ],
  };
}
