import { card, markers } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { PhotoPoint } from '../overlay';
import { type PosedCamera, project, type Vec3 } from './camera';
import { type Bow, bowHeightMm } from './card-bow';
import { fitEdge } from './edge-profile';
import { sampleLinear } from './sampling';

/** A point measured on a marker's side. */
export interface EdgePoint {
  readonly markerId: number;
  /** 4 · marker + side: points of one side share print and interpolation errors. */
  readonly side: number;
  /** Where the side's print edge lies, card frame, nominal: before the printer's stretch. */
  readonly onCard: Vec3;
  /** Unit normal of the side on the card, pointing out of the marker. */
  readonly outward: Vec3;
  /** Between the ends of its edge, −1 … 1; for references of few edges. */
  readonly alongEdge?: number;
  readonly measured: PhotoPoint;
  readonly uPx: number;
  readonly blurPx: number;
}

const segmentsPerSide = 6;
const linesPerSegment = 5;
/** Directions out of a marker across its sides, card frame, in the order of `EdgePoint.side`. */
export const outward: readonly Vec3[] = [
  [0, -1, 0],
  [1, 0, 0],
  [0, 1, 0],
  [-1, 0, 0],
];

/** Where the print's edges are expected in a photo. */
export interface PrintView {
  readonly grey: GreyImage;
  readonly camera: PosedCamera;
  readonly bow: Bow;
  readonly printScale: { readonly x: number; readonly y: number };
}

/** Edge points on the four sides of each listed marker, sought within `reachMm` of where they are
 *  expected. Lines fitted to sides are unbiased where stock corners are drawn inwards by about 0.2 px. */
export function markerEdges(view: PrintView, ids: readonly number[], reachMm: number): EdgePoint[] {
  const points: EdgePoint[] = [];
  for (const id of ids)
    for (let side = 0; side < 4; side++)
      for (let segment = 0; segment < segmentsPerSide; segment++) {
        const point = edgePoint(view, { id, side, segment }, reachMm);
        if (point) points.push(point);
      }
  return points;
}

function edgePoint(
  { grey, camera, bow, printScale }: PrintView,
  { id, side, segment }: { id: number; side: number; segment: number },
  reachMm: number,
): EdgePoint | null {
  const { xMm: x, yMm: y } = markers[id];
  const n = outward[side];
  const half = card.markerSideMm / 2;
  // The corners' rounding by blur stays out of the middle 76 % of a side.
  const span = 0.76 * card.markerSideMm;
  const along = -span / 2 + (span * (segment + 0.5)) / segmentsPerSide;
  const nominal = (a: number, out: number): Vec3 => [
    x + n[0] * (half + out) - n[1] * a,
    y + n[1] * (half + out) + n[0] * a,
    0,
  ];
  // Where the print has it: a search at the nominal place slides along the side, off its end on a
  // print some per cent small, and leans the residual where the view is oblique.
  const at = (a: number, out: number): Vec3 => {
    const [px, py] = nominal(a, out);
    const [qx, qy] = [px * printScale.x, py * printScale.y];
    return [qx, qy, -bowHeightMm(bow, qx, qy)];
  };
  const middle = project(camera, at(along, 0));
  const beyond = project(camera, at(along, 0.1));
  const pxPerMm = Math.hypot(beyond[0] - middle[0], beyond[1] - middle[1]) / 0.1;
  const nx = (beyond[0] - middle[0]) / (0.1 * pxPerMm);
  const ny = (beyond[1] - middle[1]) / (0.1 * pxPerMm);
  const reachPx = Math.max(3, Math.min(reachMm * pxPerMm, 14));
  const stepPx = 0.5;
  const count = 2 * Math.round(reachPx / stepPx) + 1;
  const samples = new Float64Array(count);
  for (let line = 0; line < linesPerSegment; line++) {
    const a =
      along + ((line - (linesPerSegment - 1) / 2) * span) / segmentsPerSide / linesPerSegment;
    const origin = project(camera, at(a, 0));
    const px = origin[0];
    const py = origin[1];
    for (let i = 0; i < count; i++) {
      const d = (i - (count - 1) / 2) * stepPx;
      samples[i] += sampleLinear(grey, px + d * nx, py + d * ny) / linesPerSegment;
    }
  }
  if (!samples.every(Number.isFinite)) return null;
  const fit = fitEdge(samples, steepestRise(samples), 1.2 / stepPx);
  if (!fit || fit.after <= fit.before || fit.contrastToNoise < 4) return null;
  const d = (fit.position - (count - 1) / 2) * stepPx;
  return {
    markerId: id,
    side: 4 * id + side,
    onCard: nominal(along, 0),
    outward: n,
    measured: [middle[0] + d * nx, middle[1] + d * ny],
    uPx: fit.u * stepPx,
    blurPx: fit.sigma * stepPx,
  };
}

function steepestRise(samples: Float64Array): number {
  let at = samples.length >> 1;
  let best = 0;
  for (let i = 2; i < samples.length - 2; i++) {
    const d = samples[i + 2] - samples[i - 2];
    if (d > best) {
      best = d;
      at = i;
    }
  }
  return at;
}
