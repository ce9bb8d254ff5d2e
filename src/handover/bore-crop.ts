import type { Overlay, PhotoPoint } from '../journey/overlay';
import { visibleRings } from '../journey/visible-rings';
import { cropSize, type ThreadCrop } from './crop-drawing';

const { width, height } = cropSize;
const room = { side: 40, top: 48, bottom: 38 } as const;

/** The mouth of a female end cut out of its photo, with the rings of its crests. The widest chord of a circle seen
 *  at a slant lies square to the slant and keeps its length: it is turned level, and bears the diameter.
 *  Null where no ring was found. */
export function boreCrop(overlay: Overlay): ThreadCrop | null {
  const rings = visibleRings(overlay);
  const [mouth] = rings;
  if (!mouth) return null;
  const [from, to] = widestChord(mouth);
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (!(length > 0)) return null;
  const [cos, sin] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const level = ([x, y]: PhotoPoint): PhotoPoint => [cos * x + sin * y, cos * y - sin * x];
  const all = mouth.map(level);
  const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = Math.min(
    (width - 2 * room.side) / (x1 - x0),
    (height - room.top - room.bottom) / (y1 - y0),
  );
  const e = (width - scale * (x0 + x1)) / 2;
  const f = room.top + (height - room.top - room.bottom - scale * (y0 + y1)) / 2;
  const place = (p: PhotoPoint): PhotoPoint => {
    const [x, y] = level(p);
    return [e + scale * x, f + scale * y];
  };
  const [a, b] = [place(from), place(to)];
  const dimensionY = f + scale * y0 - 14;
  return {
    width,
    height,
    matrix: [scale * cos, -scale * sin, scale * sin, scale * cos, e, f],
    lines: [
      ...rings.flatMap((ring) => {
        const placed = ring.map(place);
        return placed.slice(1).map((point, i) => [placed[i], point] as const);
      }),
      [a, [a[0], dimensionY - 5]],
      [b, [b[0], dimensionY - 5]],
      [a.with(1, dimensionY) as [number, number], b.with(1, dimensionY) as [number, number]],
    ],
    arrows: [
      { at: [a[0], dimensionY], towards: [-1, 0] },
      { at: [b[0], dimensionY], towards: [1, 0] },
    ],
    plates: [
      { of: 'diameter', at: [(a[0] + b[0]) / 2, 13], anchor: 'middle' },
      { of: 'pitch', at: [6, height - 12], anchor: 'start' },
    ],
    features: [],
  };
}

/** Between opposite points, from left to right. */
function widestChord(ring: readonly PhotoPoint[]): readonly [PhotoPoint, PhotoPoint] {
  const half = Math.floor((ring.length - 1) / 2);
  const chords = ring.slice(0, half).map((point, i) => [point, ring[i + half]] as const);
  const long = ([p, q]: readonly [PhotoPoint, PhotoPoint]) => Math.hypot(q[0] - p[0], q[1] - p[1]);
  const [p, q] = chords.reduce((most, chord) => (long(chord) > long(most) ? chord : most));
  return p[0] <= q[0] ? [p, q] : [q, p];
}
