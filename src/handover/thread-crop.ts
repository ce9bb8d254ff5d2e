import type { Overlay, PhotoPoint } from '../journey/overlay';

/** The thread cut out of its photo and turned level, free end to the left, dimensioned as on a
 *  drawing (ISO 129-1: dimension lines outside the part, extension lines, arrows).
 *  Frame: drawing units, x right, y down; the same on the screen, the shared picture and paper. */
export interface ThreadCrop {
  readonly width: number;
  readonly height: number;
  /** Photo px → drawing: x' = a·x + c·y + e, y' = b·x + d·y + f, as SVG and canvas take it. */
  readonly matrix: readonly [a: number, b: number, c: number, d: number, e: number, f: number];
  readonly lines: readonly (readonly [from: PhotoPoint, to: PhotoPoint])[];
  /** Tips of arrows, and the direction they point to. */
  readonly arrows: readonly { readonly at: PhotoPoint; readonly towards: PhotoPoint }[];
  readonly plates: readonly {
    readonly of: 'diameter' | 'pitch';
    readonly at: PhotoPoint;
    readonly anchor: 'start' | 'middle';
  }[];
}

const width = 360;
const height = 190;
const room = { left: 64, right: 48, top: 44, bottom: 44 } as const;

/** Null where the drawing of what was found did not come along. */
export function threadCrop(overlay: Overlay | null): ThreadCrop | null {
  const axis = overlay?.axis;
  if (!axis || overlay.contactLines.length < 2) return null;
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

/** Corners of an arrow head of this length. */
export function arrowHead(
  { at: [x, y], towards: [dx, dy] }: ThreadCrop['arrows'][number],
  size = 8,
): readonly [PhotoPoint, PhotoPoint, PhotoPoint] {
  const half = size * 0.28;
  const [bx, by] = [x - dx * size, y - dy * size];
  return [
    [x, y],
    [bx - dy * half, by + dx * half],
    [bx + dy * half, by - dx * half],
  ];
}

/** The photo's part of the crop, `pxPerUnit` pixels for each unit of the drawing. Browser only. */
export function paintCrop(
  bitmap: ImageBitmap,
  crop: ThreadCrop,
  pxPerUnit: number,
): OffscreenCanvas | null {
  const canvas = new OffscreenCanvas(
    Math.round(crop.width * pxPerUnit),
    Math.round(crop.height * pxPerUnit),
  );
  const context = canvas.getContext('2d');
  if (!context) return null;
  const [a, b, c, d, e, f] = crop.matrix.map((value) => value * pxPerUnit);
  context.fillStyle = '#fff';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.setTransform(a, b, c, d, e, f);
  context.imageSmoothingQuality = 'high';
  // Pixel centres at integers.
  context.drawImage(bitmap, -0.5, -0.5);
  return canvas;
}
