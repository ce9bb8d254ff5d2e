import { linearFit } from '../../quantity/linear-fit';
import { middleValue } from '../../quantity/order';
import type { GreyImage } from '../../vision/grey-image';
import { type EdgeFit, fitEdge, steepest } from '../2-card-pose/edge-profile';
import { homography } from '../2-card-pose/homography';
import { sampleLinear } from '../2-card-pose/sampling';
import type { PhotoPoint } from '../overlay';

/** A point measured on one side of a rectangle's outline. */
export interface SidePoint {
  /** 0 … 3, from corner i to corner i + 1. */
  readonly side: number;
  /** Place along that side, 0 … 1. */
  readonly along: number;
  readonly measured: PhotoPoint;
  readonly uPx: number;
  readonly blurPx: number;
}

export interface OutlineSides {
  readonly points: readonly SidePoint[];
  /** Where straight lines through the sides meet. */
  readonly corners: readonly PhotoPoint[];
}

/** Outwards across a side the light rises, falls, or does both in turn: beside gloss, a stripe or a shadow a card
 *  is here brighter than the table and there darker. Either way is taken only where one way shows no side. */
type Way = 1 | -1 | 0;

/** Rounded corners and their blur stay out of the middle 80 % of a side. */
const span = 0.8;
const stations = 72;
/** Neighbours share what the table looks like there, and count as one point: their mean. */
const neighbours = 6;

/** Sides of an outline near a rough quad, by lines first and edge profiles then. Corners are never looked
 *  for: an ID-1 card has none. */
export function outlineSides(
  grey: GreyImage,
  quad: readonly PhotoPoint[],
  brightInside: boolean,
  reachPx: number,
): OutlineSides | null {
  const sign = brightInside ? -1 : 1;
  const lines = [0, 1, 2, 3].map((side) => {
    const rough = (way: Way) => roughSide(grey, quad[side], quad[(side + 1) % 4], way, reachPx);
    return rough(sign) ?? rough(0);
  });
  if (lines.some((line) => line === null)) return null;
  const corners = [0, 1, 2, 3].map((i) => meeting(lines[(i + 3) % 4]!, lines[i]!));
  if (corners.some((c) => c === null)) return null;
  const met = corners as PhotoPoint[];
  const kept = [0, 1, 2, 3].map((side) => {
    const fine = (way: Way) => smoothed(finePoints(grey, met, side, lines[side]!.bend, way));
    return fine(sign) ?? fine(0);
  });
  if (kept.some((k) => k === null)) return null;
  return {
    points: kept.flatMap((points) => points!),
    corners: met,
  };
}

interface RoughSide {
  readonly from: PhotoPoint;
  readonly to: PhotoPoint;
  /** Of the side away from its line in the middle, px: lens distortion. */
  readonly bend: number;
}

/** The line on which most of the steepest places across a rough side lie. */
function roughSide(
  grey: GreyImage,
  from: PhotoPoint,
  to: PhotoPoint,
  way: Way,
  reachPx: number,
): RoughSide | null {
  const { nx, ny } = outwardOf(from, to);
  const count = 2 * Math.ceil(reachPx) + 1;
  const profile = new Float64Array(count);
  const seen: [t: number, d: number][] = [];
  for (let k = 0; k < stations; k++) {
    const t = (1 - span) / 2 + (span * (k + 0.5)) / stations;
    const x = from[0] + t * (to[0] - from[0]);
    const y = from[1] + t * (to[1] - from[1]);
    for (let i = 0; i < count; i++) {
      const d = i - (count - 1) / 2;
      profile[i] = sampleLinear(grey, x + d * nx, y + d * ny);
    }
    if (!profile.every(Number.isFinite)) continue;
    const at = steepest(profile, 2, way);
    if (at >= 0) seen.push([t, at - (count - 1) / 2]);
  }
  if (seen.length < stations / 2) return null;
  const tolerance = Math.max(1.5, 0.12 * reachPx);
  let best: [a: number, b: number] = [0, 0];
  let most = -1;
  for (let i = 0; i < seen.length; i += 2)
    for (let j = i + 12; j < seen.length; j += 3) {
      const slope = (seen[j][1] - seen[i][1]) / (seen[j][0] - seen[i][0]);
      const start = seen[i][1] - slope * seen[i][0];
      let n = 0;
      for (const [t, d] of seen) if (Math.abs(d - start - slope * t) < tolerance) n++;
      if (n > most) {
        most = n;
        best = [start, slope];
      }
    }
  if (most < 0.4 * stations) return null;
  const near = seen.filter(([t, d]) => Math.abs(d - best[0] - best[1] * t) < tolerance);
  const [c0, c1, c2] = parabola(near);
  const off = (t: number) => c0 + c1 * (t - 0.5) + c2 * ((t - 0.5) ** 2 - 1 / 12);
  // The straight part through the parabola's ends, so that sides meet where corners are.
  const [d0, d1] = [off(0), off(1)];
  return {
    from: [from[0] + d0 * nx, from[1] + d0 * ny],
    to: [to[0] + d1 * nx, to[1] + d1 * ny],
    bend: off(0.5) - (d0 + d1) / 2,
  };
}

function outwardOf(from: PhotoPoint, to: PhotoPoint) {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  // Clockwise as seen, y down: the outside lies to the left of the way.
  return { nx: (to[1] - from[1]) / length, ny: -(to[0] - from[0]) / length };
}

function meeting(a: RoughSide, b: RoughSide): PhotoPoint | null {
  const [ax, ay] = [a.to[0] - a.from[0], a.to[1] - a.from[1]];
  const [bx, by] = [b.to[0] - b.from[0], b.to[1] - b.from[1]];
  const det = ax * by - ay * bx;
  if (Math.abs(det) < 1e-6) return null;
  const k = ((b.from[0] - a.from[0]) * by - (b.from[1] - a.from[1]) * bx) / det;
  return [a.from[0] + k * ax, a.from[1] + k * ay];
}

/** Mean-free powers of t − ½: constant, slope and bend by least squares. */
function parabola(points: readonly (readonly [number, number])[]): [number, number, number] {
  const fit = linearFit(3);
  for (const [t, d] of points) fit.add([1, t - 0.5, (t - 0.5) ** 2 - 1 / 12], d);
  const solved = fit.solve();
  return solved ? [solved[0], solved[1], solved[2]] : [0, 0, 0];
}

export const unitCorners = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
] as const;
const stepPx = 0.5;
const linesPerStation = 5;
const fineReachPx = 6;
/** Beside a card's edge lies its shadow, a pixel or two wide, and then the table: told by levels from further
 *  away, an edge of little contrast was drawn inwards by up to half a pixel (renders). So the edge is fitted
 *  again to what lies within this of its blur. */
const nearPx = 1;
/** Where the card is as white as a photo can be, its edge spreads outwards by up to 0.3 px (renders). */
const white = { level: 250, uPx: 0.25 };

interface Fine {
  readonly point: SidePoint;
  /** From the side's straight line, px. */
  readonly off: number;
  readonly white: boolean;
}

function finePoints(
  grey: GreyImage,
  corners: readonly PhotoPoint[],
  side: number,
  bend: number,
  way: Way,
): Fine[] {
  const H = homography(unitCorners.map((card, i) => ({ card, photo: corners[i] })));
  if (!H) return [];
  const [from, to] = [unitCorners[side], unitCorners[(side + 1) % 4]];
  const { nx, ny } = outwardOf(corners[side], corners[(side + 1) % 4]);
  const place = (t: number) => {
    const u = from[0] + t * (to[0] - from[0]);
    const v = from[1] + t * (to[1] - from[1]);
    const w = H[6] * u + H[7] * v + H[8];
    const off = bend * (1 - (2 * t - 1) ** 2);
    return [
      (H[0] * u + H[1] * v + H[2]) / w + off * nx,
      (H[3] * u + H[4] * v + H[5]) / w + off * ny,
    ] as const;
  };
  const count = (2 * fineReachPx) / stepPx + 1;
  const fine: Fine[] = [];
  for (let k = 0; k < stations; k++) {
    const along = (1 - span) / 2 + (span * (k + 0.5)) / stations;
    const samples = new Float64Array(count);
    for (let line = 0; line < linesPerStation; line++) {
      const t = along + ((line - (linesPerStation - 1) / 2) * span) / stations / linesPerStation;
      const [x, y] = place(t);
      for (let i = 0; i < count; i++) {
        const d = (i - (count - 1) / 2) * stepPx;
        samples[i] += sampleLinear(grey, x + d * nx, y + d * ny) / linesPerStation;
      }
    }
    if (!samples.every(Number.isFinite)) continue;
    const fit = fitNear(samples, steepest(samples, 2, way));
    if (!fit || (fit.after - fit.before) * way < 0 || fit.contrastToNoise < 4) continue;
    const d = (fit.position - (count - 1) / 2) * stepPx;
    const [x, y] = place(along);
    fine.push({
      point: {
        side,
        along,
        measured: [x + d * nx, y + d * ny],
        uPx: fit.u * stepPx,
        blurPx: fit.sigma * stepPx,
      },
      off: d,
      white: Math.max(fit.before, fit.after) > white.level,
    });
  }
  return fine;
}

function fitNear(samples: Float64Array, start: number): EdgeFit | null {
  const wide = fitEdge(samples, start, 1.2 / stepPx);
  if (!wide) return null;
  const reach = nearPx / stepPx + 2 * wide.sigma;
  const from = Math.max(0, Math.ceil(wide.position - reach));
  const to = Math.min(samples.length - 1, Math.floor(wide.position + reach));
  const fit = fitEdge(samples.subarray(from, to + 1), wide.position - from, wide.sigma);
  return fit && { ...fit, position: fit.position + from };
}

/** Means of neighbours that lie on one smooth side; their u is what they scatter by. */
function smoothed(fine: readonly Fine[]): SidePoint[] | null {
  let near = fine;
  let residual = (_: Fine) => 0;
  for (const times of [9, 4.5, 3]) {
    if (near.length < stations / 3) return null;
    const [c0, c1, c2] = parabola(near.map(({ point, off }) => [point.along, off]));
    residual = ({ point: { along }, off }) =>
      off - c0 - c1 * (along - 0.5) - c2 * ((along - 0.5) ** 2 - 1 / 12);
    const typical = 1.4826 * middleValue(near.map((f) => Math.abs(residual(f))));
    near = fine.filter((f) => Math.abs(residual(f)) < Math.max(0.3, times * typical));
  }
  const groups: Fine[][] = [];
  for (const f of near) {
    const last = groups.at(-1);
    if (last && last.length < neighbours) last.push(f);
    else groups.push([f]);
  }
  const means = groups.map((g) => mean(g.map(residual)));
  const together = 1.4826 * middleValue(means.map(Math.abs));
  return groups.map((group) => {
    const single = Math.hypot(...group.map((f) => f.point.uPx)) / group.length;
    const of = (pick: (p: SidePoint) => number) => mean(group.map((f) => pick(f.point)));
    return {
      side: group[0].point.side,
      along: of((p) => p.along),
      measured: [of((p) => p.measured[0]), of((p) => p.measured[1])],
      // Neighbours that are all too white err alike.
      uPx: Math.hypot(
        Math.max(single, together),
        mean(group.map((f) => (f.white ? white.uPx : 0))),
      ),
      blurPx: of((p) => p.blurPx),
    };
  });
}

const mean = (values: readonly number[]) => values.reduce((s, v) => s + v, 0) / values.length;
