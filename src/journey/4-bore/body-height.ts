import * as portable from '../../quantity/portable-math';
import type { RingEdges } from './ring-edges';

/** A body that stands on the card: how high its mouth is, by its base and its upright edges. Millimetres; `a` is half
 *  across flats or the radius of a round body, at the card. */
export interface StandingBody {
  readonly heightMm: number;
  readonly a: number;
  readonly round: boolean;
  /** Mean agreement of base and upright edges with what is seen, −2…2. */
  readonly score: number;
}

/** Height of the mouth over all bodies that are about as well seen as the best. */
export interface MouthHeight {
  readonly heightMm: number;
  readonly uMm: number;
  readonly body: StandingBody;
}

/** Score by which a body is e times less likely: what noise and a fold of the paper do to it. */
const scoreUnit = 0.05;

export function mouthHeight(view: StandingView): MouthHeight | null {
  const bodies = standingBodies(view);
  const [best] = bodies;
  if (!best) return null;
  let all = 0;
  let mean = 0;
  let square = 0;
  for (const { heightMm, score } of bodies) {
    const w = portable.exp((score - best.score) / scoreUnit);
    all += w;
    mean += w * heightMm;
    square += w * heightMm * heightMm;
  }
  mean /= all;
  return {
    heightMm: mean,
    uMm: Math.sqrt(Math.max(0, square / all - mean * mean)),
    body: best,
  };
}

export interface StandingView {
  readonly edges: RingEdges;
  /** Below the camera, on the card; in the view's mm. */
  readonly foot: readonly [number, number];
  readonly cameraHeightMm: number;
  /** Middle of the mouth's rim and its radius, as the view shows them. */
  readonly mouth: readonly [number, number];
  readonly rim: number;
  /** Radius of the face's outer edge, as the view shows it, and how well that ring is seen. */
  readonly outer: number;
  readonly outerShare: number;
}

/** Heights over the rim's radius: a nut is about as high as its thread is wide (common practice); an adaptor longer. */
const heights = { from: 0.7, to: 7, usual: 2.3, uLn: 0.5 };
/** Logarithm of how much rarer a round body is than a hex (common practice). */
const roundRarer = 3;
/** Half across flats over the radius of the face's outer edge: a hex is chamfered to about 0.95 of its flats (common
 *  practice), a round body a little or not at all. */
const bodies = { from: 0.96, to: 1.12, usual: 1.03, spread: 0.035 };

const hexAngles = 12;

/** Bodies by how well their base and upright edges are seen, best first; on the card plane verticals point at the
 *  camera's foot. */
function standingBodies(view: StandingView): StandingBody[] {
  const { foot, mouth, rim, outer, outerShare, cameraHeightMm } = view;
  const out: StandingBody[] = [];
  const reach = Math.hypot(mouth[0] - foot[0], mouth[1] - foot[1]);
  const toward = portable.atan2(foot[1] - mouth[1], foot[0] - mouth[0]);
  const step = 0.05 * rim;
  for (let h = heights.from * rim; h <= heights.to * rim; h += step) {
    if (h > 0.6 * cameraHeightMm) break;
    const shrink = (cameraHeightMm - h) / cameraHeightMm;
    const ax = foot[0] + shrink * (mouth[0] - foot[0]);
    const ay = foot[1] + shrink * (mouth[1] - foot[1]);
    const usualHeight = -0.5 * (portable.log(h / rim / heights.usual) / heights.uLn) ** 2;
    for (let ratio = bodies.from; ratio <= bodies.to; ratio += 0.02) {
      const a = ratio * outer * shrink;
      if (a > 0.9 * reach * shrink) break;
      const base = { at: [ax, ay], a, heightMm: h } as const;
      const usual =
        scoreUnit * usualHeight +
        outerShare * portable.exp(-0.5 * ((ratio - bodies.usual) / bodies.spread) ** 2);
      const round = roundScore(view, base, toward) + usual - scoreUnit * roundRarer;
      out.push({ heightMm: h, a, round: true, score: round });
      let best = Number.NEGATIVE_INFINITY;
      for (let k = 0; k < hexAngles; k++)
        best = Math.max(best, hexScore(view, base, (k * Math.PI) / 3 / hexAngles));
      out.push({ heightMm: h, a, round: false, score: best + usual });
    }
  }
  return out.sort((p, q) => q.score - p.score);
}

/** Where a body stands on the card, half its width there, and how high it is. */
interface Base {
  readonly at: readonly [number, number];
  readonly a: number;
  readonly heightMm: number;
}

function hexScore(view: StandingView, base: Base, turn: number): number {
  const { foot, edges } = view;
  const {
    at: [ax, ay],
    a,
    heightMm,
  } = base;
  const corner = (k: number): [number, number] => {
    const t = turn + (k * Math.PI) / 3;
    const r = a * 1.1547;
    return [ax + r * portable.cos(t), ay + r * portable.sin(t)];
  };
  const visible = (k: number) => {
    const t = turn + ((k + 0.5) * Math.PI) / 3;
    const nx = portable.cos(t);
    const ny = portable.sin(t);
    return (foot[0] - ax) * nx + (foot[1] - ay) * ny > a;
  };
  let seen = 0;
  let length = 0;
  let upright = 0;
  let uprights = 0;
  for (let k = 0; k < 6; k++) {
    const here = visible(k);
    const p = corner(k);
    if (here) {
      const q = corner(k + 1);
      const side = Math.hypot(q[0] - p[0], q[1] - p[1]);
      seen += side * alongSegment(edges, p[0], p[1], q[0], q[1]);
      length += side;
    }
    if (here || visible(k + 5)) {
      upright += uprightShare(view, p[0], p[1], heightMm);
      uprights++;
    }
  }
  return length > 0 ? seen / length + upright / Math.max(1, uprights) : -2;
}

function roundScore(view: StandingView, base: Base, toward: number): number {
  const { edges, foot } = view;
  const {
    at: [ax, ay],
    a,
    heightMm,
  } = base;
  const half = portable.acos(a / Math.hypot(foot[0] - ax, foot[1] - ay));
  const n = 24;
  let seen = 0;
  for (let k = 0; k <= n; k++) {
    const t = toward + half * ((2 * k) / n - 1);
    seen += response(edges, ax + a * portable.cos(t), ay + a * portable.sin(t), 2 * t);
  }
  let upright = 0;
  for (const side of [1, -1]) {
    const t = toward + side * half;
    upright += uprightShare(view, ax + a * portable.cos(t), ay + a * portable.sin(t), heightMm) / 2;
  }
  return seen / (n + 1) + upright;
}

/** The edge from a point of the base straight up, most of the way to the chamfer. */
function uprightShare(view: StandingView, x: number, y: number, h: number): number {
  const { foot, cameraHeightMm: z, edges } = view;
  const m = z / (z - 0.85 * h);
  const m0 = z / (z - 0.1 * h);
  return alongSegment(
    edges,
    foot[0] + m0 * (x - foot[0]),
    foot[1] + m0 * (y - foot[1]),
    foot[0] + m * (x - foot[0]),
    foot[1] + m * (y - foot[1]),
  );
}

function alongSegment(edges: RingEdges, x0: number, y0: number, x1: number, y1: number): number {
  const angle = 2 * portable.atan2(y1 - y0, x1 - x0) + Math.PI;
  const length = Math.hypot(x1 - x0, y1 - y0);
  const n = Math.max(4, Math.round(length / 0.5));
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const t = (i + 0.5) / n;
    sum += response(edges, x0 + t * (x1 - x0), y0 + t * (y1 - y0), angle);
  }
  return sum / n;
}

/** Of an edge whose normal has half of `twiceNormal` as its direction. */
function response(edges: RingEdges, x: number, y: number, twiceNormal: number): number {
  const { width, height, pxPerMm, cos2, sin2 } = edges;
  const i = Math.round(x * pxPerMm);
  const j = Math.round(y * pxPerMm);
  if (i < 1 || j < 1 || i >= width - 1 || j >= height - 1) return 0;
  const at = j * width + i;
  return cos2[at] * portable.cos(twiceNormal) + sin2[at] * portable.sin(twiceNormal);
}
