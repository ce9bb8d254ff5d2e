import type { PhotoPoint } from '../overlay';
import { isInside } from './polygon';
import type { EdgeField, StraightEdge } from './straight-edges';

/** Four straight edges that meet in four corners, light on the same side of each: an outline. */
export interface Quad {
  /** Clockwise as seen, pixels of the edge field. */
  readonly corners: readonly PhotoPoint[];
  /** Whether the inside is brighter than what lies around it. */
  readonly brightInside: boolean;
  /** How much of the inside is steep: print, wood grain, whatever lies there. */
  readonly steepShare: number;
  readonly score: number;
}

/** How far from a plain outline a quad may be. */
export interface Leeway {
  /** Of corners beyond the field, as a share of its long side. */
  readonly outside: number;
  /** Sides along which the light changes over, as where gloss, a stripe or a shadow meets them. */
  readonly turnedSides: number;
}

/** A sheet is often not quite in (renders: up to 0.065), and lines are measured along their sides. */
const ofPhotos: Leeway = { outside: 0.07, turnedSides: 1 };
/** Of a side, so much must lie in the photo. */
const leastVisible = 0.6;
const leastAreaShare = 0.02;
const leastSupport = 0.5;
const leastMeanSupport = 0.72;
/** Of the side along which the light changes over: a line was found by that much of it. */
const leastOwn = 0.25;

/** Best first; a quad that shares its corners with a better one is left out. */
export function findQuads(
  field: EdgeField,
  edges: readonly StraightEdge[],
  most: number,
  leeway = ofPhotos,
): Quad[] {
  const quads: Omit<Quad, 'steepShare'>[] = [];
  const towards = (a: StraightEdge, b: StraightEdge) => a.nx * b.nx + a.ny * b.ny;
  // Opposite sides face each other within 35°; neighbours meet at 55 to 125°, as under any usual tilt.
  for (let i = 0; i < edges.length; i++)
    for (let k = i + 1; k < edges.length; k++) {
      if (towards(edges[i], edges[k]) > -0.82) continue;
      for (let j = 0; j < edges.length; j++) {
        if (Math.abs(towards(edges[i], edges[j])) > 0.57) continue;
        // Of the pair across, j is the one to the right of i's normal.
        if (edges[i].nx * edges[j].ny - edges[i].ny * edges[j].nx < 0) continue;
        for (let l = 0; l < edges.length; l++) {
          if (towards(edges[j], edges[l]) > -0.82) continue;
          if (Math.abs(towards(edges[i], edges[l])) > 0.57) continue;
          const quad = quadOf(field, leeway, [edges[i], edges[j], edges[k], edges[l]]);
          if (quad) quads.push(quad);
        }
      }
    }
  quads.sort((a, b) => b.score - a.score);
  const kept: Omit<Quad, 'steepShare'>[] = [];
  for (const quad of quads) {
    if (kept.length === most) break;
    if (kept.every((other) => apartPx(other, quad) > 0.012 * field.width)) kept.push(quad);
  }
  return kept.map((quad) => ({ ...quad, steepShare: steepShare(field, quad.corners) }));
}

/** Of every other place well inside the outline. */
function steepShare({ width, height, gx, gy }: EdgeField, corners: readonly PhotoPoint[]): number {
  const [mx, my] = [0, 1].map((c) => corners.reduce((s, p) => s + p[c], 0) / 4);
  const inner = corners.map(([x, y]) => [mx + 0.94 * (x - mx), my + 0.94 * (y - my)] as const);
  const bound = (c: number, pick: (...v: number[]) => number, most: number) =>
    Math.min(most, Math.max(0, Math.round(pick(...inner.map((p) => p[c])))));
  let all = 0;
  let steep = 0;
  const right = bound(0, Math.max, width - 1);
  const bottom = bound(1, Math.max, height - 1);
  for (let y = bound(1, Math.min, height - 1); y <= bottom; y += 2)
    for (let x = bound(0, Math.min, width - 1); x <= right; x += 2) {
      if (!isInside(inner, x, y)) continue;
      all++;
      if (gx[y * width + x] !== 0 || gy[y * width + x] !== 0) steep++;
    }
  return steep / Math.max(1, all);
}

type Corners = { readonly corners: readonly PhotoPoint[] };

function apartPx(a: Corners, b: Corners): number {
  return Math.max(
    ...a.corners.map(([x, y]) => Math.min(...b.corners.map(([u, v]) => Math.hypot(u - x, v - y)))),
  );
}

function quadOf(
  field: EdgeField,
  { outside, turnedSides }: Leeway,
  sides: readonly StraightEdge[],
): Omit<Quad, 'steepShare'> | null {
  const corners: PhotoPoint[] = [];
  for (let i = 0; i < 4; i++) {
    const at = meeting(sides[(i + 3) % 4], sides[i]);
    if (!at) return null;
    const [x, y] = at;
    const marginPx = outside * Math.max(field.width, field.height);
    if (x < -marginPx || y < -marginPx) return null;
    if (x > field.width - 1 + marginPx || y > field.height - 1 + marginPx) return null;
    corners.push(at);
  }
  const area = signedArea(corners);
  if (Math.abs(area) < leastAreaShare * field.width * field.height) return null;
  // From the middle every side must be seen with the light the same way.
  const [mx, my] = [0, 1].map((c) => corners.reduce((s, p) => s + p[c], 0) / 4);
  const inward = sides.map((e) => e.nx * mx + e.ny * my - e.offset > 0);
  if (inward.some((v) => v !== inward[0])) return null;
  const lengths = corners.map((p, i) => {
    const q = corners[(i + 1) % 4];
    return Math.hypot(q[0] - p[0], q[1] - p[1]);
  });
  const ratio = (lengths[0] + lengths[2]) / (lengths[1] + lengths[3]);
  if (ratio > 3 || ratio < 1 / 3) return null;
  let sum = 0;
  let beyond = 0;
  let reversed = 0;
  for (let i = 0; i < 4; i++) {
    const ends = [corners[i], corners[(i + 1) % 4]] as const;
    const share = support(field, sides[i], ends, [0.08, 0.92]);
    if (share < leastSupport) {
      if (share < leastOwn || ++reversed > turnedSides) return null;
      const opposite = support(field, turned(sides[i]), ends, [0.08, 0.92]);
      if (share + opposite < leastMeanSupport) return null;
      sum += Math.min(1, share + opposite) / 4;
    } else sum += share / 4;
    beyond += support(field, sides[i], ends, [-0.12, -0.03]) / 8;
    beyond += support(field, sides[i], ends, [1.03, 1.12]) / 8;
  }
  if (sum < leastMeanSupport) return null;
  return {
    corners: area > 0 ? corners : [corners[0], corners[3], corners[2], corners[1]],
    brightInside: inward[0],
    // An inner line of a card (a stripe, a frame) ends on lines that go on beyond it.
    score: sum - 0.7 * beyond + 0.1 * Math.sqrt(Math.abs(area) / (field.width * field.height)),
  };
}

const turned = ({ nx, ny, offset, ...rest }: StraightEdge): StraightEdge => ({
  ...rest,
  nx: -nx,
  ny: -ny,
  offset: -offset,
});

function meeting(a: StraightEdge, b: StraightEdge): PhotoPoint | null {
  const det = a.nx * b.ny - a.ny * b.nx;
  if (Math.abs(det) < 0.3) return null;
  return [(a.offset * b.ny - b.offset * a.ny) / det, (a.nx * b.offset - b.nx * a.offset) / det];
}

/** Positive when clockwise as seen, y down. */
function signedArea(p: readonly PhotoPoint[]): number {
  return (
    ((p[2][0] - p[0][0]) * (p[3][1] - p[1][1]) - (p[3][0] - p[1][0]) * (p[2][1] - p[0][1])) / 2
  );
}

/** Share of a stretch of a side, as far as the photo shows it, where it is steep the side's way within a pixel or
 *  two; 0 when it shows too little. */
function support(
  { width, height, gx, gy }: EdgeField,
  side: StraightEdge,
  [from, to]: readonly [PhotoPoint, PhotoPoint],
  [start, end]: readonly [number, number],
): number {
  const count = 40;
  let visible = 0;
  let seen = 0;
  for (let k = 0; k < count; k++) {
    const t = start + ((end - start) * (k + 0.5)) / count;
    const x = from[0] + t * (to[0] - from[0]);
    const y = from[1] + t * (to[1] - from[1]);
    if (x < 0 || y < 0 || x > width - 1 || y > height - 1) continue;
    visible++;
    for (let d = -2; d <= 2; d++) {
      const px = Math.round(x + d * side.nx);
      const py = Math.round(y + d * side.ny);
      if (px < 0 || py < 0 || px >= width || py >= height) continue;
      const i = py * width + px;
      const along = side.nx * gx[i] + side.ny * gy[i];
      if (along > 0 && Math.abs(side.nx * gy[i] - side.ny * gx[i]) < 0.4 * along) {
        seen++;
        break;
      }
    }
  }
  return visible < leastVisible * count ? 0 : seen / visible;
}
