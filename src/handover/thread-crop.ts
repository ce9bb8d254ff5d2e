import type { EndFeature, Overlay, PhotoPoint } from '../journey/overlay';
import { boreCrop } from './bore-crop';
import { cropSize, type ThreadCrop } from './crop-drawing';
import { cropFeature } from './crop-feature';

const { width, height } = cropSize;
const room = { left: 64, right: 48, top: 44, bottom: 44 } as const;

/** Half of the pitch's plate at its longest, and where the name of a cone before it ends. */
const pitchPlate = { half: 80, clearOf: 96 } as const;

/** A male thread with its free end to the left and what is `drawn` of its seat, or the mouth of a female one; null where
 *  the drawing of what was found did not come along. Seats that are no longer drawn keep their room: the picture stays
 *  as it is when one of them is denied. */
export function threadCrop(
  overlay: Overlay | null,
  drawn: readonly EndFeature[] = [],
): ThreadCrop | null {
  if (!overlay?.axis) return null;
  if (overlay.contactLines.length < 2) return boreCrop(overlay);
  const own = (overlay.ends ?? []).filter(isOwn);
  const laid = laidLevel(overlay, own);
  if (!laid) return null;
  const { place, left, right, thread, top, bottom } = laid;
  const atX = Math.max(14, left - 30);
  const pitch = pitchMarks(overlay, laid);
  const middle = pitch ? (pitch[0][0] + pitch[1][0]) / 2 : (thread + right) / 2;
  return {
    width,
    height,
    matrix: laid.matrix,
    lines: [
      [
        [thread + 6, top],
        [atX - 5, top],
      ],
      [
        [thread + 6, bottom],
        [atX - 5, bottom],
      ],
      [
        [atX, top],
        [atX, bottom],
      ],
      ...(pitch ? pitchLines(pitch, top - pitchRise) : []),
    ],
    arrows: [
      { at: [atX, top], towards: [0, -1] },
      { at: [atX, bottom], towards: [0, 1] },
      ...(pitch
        ? ([
            { at: [pitch[0][0], top - pitchRise], towards: [1, 0] },
            { at: [pitch[1][0], top - pitchRise], towards: [-1, 0] },
          ] as const)
        : []),
    ],
    plates: [
      { of: 'diameter', at: [6, height - 12], anchor: 'start' },
      // Without marks on the crests the figure still stands, only not at a turn.
      {
        of: 'pitch',
        at: [Math.max(middle, own.length > 0 ? pitchPlate.half + pitchPlate.clearOf : 0), 13],
        anchor: 'middle',
      },
    ],
    features: drawn.filter(isOwn).map((feature) => cropFeature(feature, place)),
  };
}

const isOwn = ({ end }: EndFeature) => end === 0;

interface LaidLevel {
  readonly matrix: ThreadCrop['matrix'];
  readonly place: (p: PhotoPoint) => PhotoPoint;
  /** What is drawn of the part, in drawing units; `thread` is the thread's own left end. */
  readonly left: number;
  readonly right: number;
  readonly thread: number;
  readonly top: number;
  readonly bottom: number;
}

/** Turned about the axis and scaled so that thread and seat fill the room. */
function laidLevel(overlay: Overlay, own: readonly EndFeature[]): LaidLevel | null {
  const [[ax, ay], [bx, by]] = overlay.axis!;
  const length = Math.hypot(bx - ax, by - ay);
  if (!(length > 0)) return null;
  const [cos, sin] = [(bx - ax) / length, (by - ay) / length];
  const level = ([x, y]: PhotoPoint): PhotoPoint => [
    cos * (x - ax) + sin * (y - ay),
    cos * (y - ay) - sin * (x - ax),
  ];
  const ends = overlay.contactLines.flat().map(level);
  const seats = own.flatMap(({ lines }) => lines.flat()).map(level);
  const xs = [...ends, ...seats].map(([x]) => x);
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
  return {
    matrix: [
      scale * cos,
      -scale * sin,
      scale * sin,
      scale * cos,
      e - scale * (cos * ax + sin * ay),
      f - scale * (cos * ay - sin * ax),
    ],
    place: (p) => {
      const [x, y] = level(p);
      return [e + scale * x, f + scale * y];
    },
    left,
    right: e + scale * x1,
    thread: e + scale * Math.min(...ends.map(([x]) => x)),
    top: f + scale * y0,
    bottom: f + scale * y1,
  };
}

const pitchRise = 14;
const stub = 16;

/** Two crests that follow one another, in the middle of the upper side. */
function pitchMarks(
  { crests }: Overlay,
  { place, top, bottom }: LaidLevel,
): readonly [PhotoPoint, PhotoPoint] | null {
  const upper = crests
    .map((crest) => place(crest.at))
    .filter(([, y]) => y < (top + bottom) / 2)
    .sort((p, q) => p[0] - q[0]);
  const middle = Math.max(0, Math.floor(upper.length / 2) - 1);
  const [one, next] = [upper[middle], upper[middle + 1]];
  return one && next ? [one, next] : null;
}

const pitchLines = ([one, next]: readonly [PhotoPoint, PhotoPoint], y: number) =>
  [
    [one, [one[0], y - 5]],
    [next, [next[0], y - 5]],
    [
      [one[0] - stub, y],
      [one[0], y],
    ],
    [
      [next[0], y],
      [next[0] + stub, y],
    ],
  ] as const satisfies ThreadCrop['lines'];
