import * as portable from '../../quantity/portable-math';
import type { RingEdges } from './ring-edges';

/** A ring in the view, mm from its first pixel, and how much of it lies on edges that run along it: 1 all of it,
 *  0 as much along as across. */
export interface Ring {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly share: number;
}

export interface RingSearch {
  /** Where its middle may lie, mm. */
  readonly fromX: number;
  readonly toX: number;
  readonly fromY: number;
  readonly toY: number;
  readonly fromRadius: number;
  readonly toRadius: number;
}

const angles = 48;
const cosines = Float64Array.from({ length: angles }, (_, k) =>
  portable.cos((2 * Math.PI * k) / angles),
);
const sines = Float64Array.from({ length: angles }, (_, k) =>
  portable.sin((2 * Math.PI * k) / angles),
);
/** Twice an angle of the table is every other entry, wrapped. */
const twice = (k: number) => (2 * k) % angles;

/** `every`: how many of the angles are passed over, for a first look. */
export function ringShare(
  edges: RingEdges,
  x: number,
  y: number,
  radius: number,
  every = 1,
): number {
  const { width, height, pxPerMm, cos2, sin2 } = edges;
  let sum = 0;
  for (let k = 0; k < angles; k += every) {
    const i = Math.round((x + radius * cosines[k]) * pxPerMm);
    const j = Math.round((y + radius * sines[k]) * pxPerMm);
    if (i < 1 || j < 1 || i >= width - 1 || j >= height - 1) continue;
    const at = j * width + i;
    const t = twice(k);
    sum += cos2[at] * cosines[t] + sin2[at] * sines[t];
  }
  return (sum * every) / angles;
}

/** Steps of the search: within them the blurred edges still answer. */
const hopPx = 3;
const radiusHopPx = 2;
/** How far a ring may reach out of the part's box, in its radii: the box of a part's crisp edges may miss some. */
const mostOutside = 0.3;

/** How much a ring stands out against chance: what agrees by chance falls with the root of its length, and there are
 *  more small things than large ones. */
export const weightOf = ({ radius, share }: Pick<Ring, 'radius' | 'share'>): number =>
  share * Math.sqrt(radius * Math.sqrt(radius));

/** The rings that stand out most, best first: none has another, better one within `apartMm` of middle and radius. */
export function findRings(edges: RingEdges, search: RingSearch, most: number): Ring[] {
  const found: Ring[] = [];
  const hopMm = hopPx / edges.pxPerMm;
  const radiusHopMm = radiusHopPx / edges.pxPerMm;
  for (let y = search.fromY; y <= search.toY; y += hopMm)
    for (let x = search.fromX; x <= search.toX; x += hopMm)
      for (let r = search.fromRadius; r <= search.toRadius; r += radiusHopMm) {
        const out = Math.max(
          search.fromX + r - x,
          x + r - search.toX,
          search.fromY + r - y,
          y + r - search.toY,
        );
        if (out > mostOutside * r) break;
        if (ringShare(edges, x, y, r, 4) < 0.25) continue;
        const share = ringShare(edges, x, y, r);
        if (share > 0.25) found.push({ x, y, radius: r, share });
      }
  found.sort((a, b) => weightOf(b) - weightOf(a));
  const kept: Ring[] = [];
  for (const ring of found) {
    if (kept.some((q) => near(q, ring))) continue;
    kept.push(refined(edges, ring));
    if (kept.length === most) break;
  }
  return kept;
}

const apartMm = 0.9;
const near = (a: Ring, b: Ring) =>
  Math.abs(a.radius - b.radius) < apartMm && Math.hypot(a.x - b.x, a.y - b.y) < 2 * apartMm;

/** By ever smaller steps. */
function refined(edges: RingEdges, ring: Ring): Ring {
  let best = ring;
  for (let h = hopPx / edges.pxPerMm / 2; h > 0.03; h /= 2)
    for (let again = 0; again < 3; again++) {
      const middle = best;
      for (const [dx, dy, dr] of steps) {
        const x = middle.x + h * dx;
        const y = middle.y + h * dy;
        const radius = middle.radius + h * dr;
        const share = ringShare(edges, x, y, radius);
        if (share > best.share) best = { x, y, radius, share };
      }
      if (best === middle) break;
    }
  return best;
}

const steps = [-1, 0, 1].flatMap((dx) =>
  [-1, 0, 1].flatMap((dy) => [-1, 0, 1].map((dr) => [dx, dy, dr] as const)),
);
