import { linearFit } from '../../quantity/linear-fit';
import type { PhotoPoint } from '../overlay';
import { type Camera, rotationVector } from './camera';

export interface Correspondence {
  /** Card plane, mm. */
  readonly card: readonly [number, number];
  readonly photo: PhotoPoint;
}

/** Card plane → photo, row-major 3 × 3 with last entry 1, by linear least squares on n ≥ 4 points
 *  centred and scaled first (Hartley 1997), good to a pixel or so: a start, not a result. */
export function homography(points: readonly Correspondence[]): Float64Array | null {
  const c = scaling(points.map((p) => p.card));
  const q = scaling(points.map((p) => p.photo));
  const fit = linearFit(8);
  for (const { card, photo } of points) {
    const x = (card[0] - c.x) * c.k;
    const y = (card[1] - c.y) * c.k;
    const u = (photo[0] - q.x) * q.k;
    const v = (photo[1] - q.y) * q.k;
    fit.add([x, y, 1, 0, 0, 0, -u * x, -u * y], u);
    fit.add([0, 0, 0, x, y, 1, -v * x, -v * y], v);
  }
  const h = fit.solve();
  if (!h) return null;
  const N = [...h, 1];
  const out = new Float64Array(9);
  // T_q⁻¹ · N · T_c, with T = scale·(p − centre).
  for (let j = 0; j < 3; j++) {
    const column = (i: number) =>
      j < 2 ? N[i * 3 + j] * c.k : N[i * 3 + 2] - c.k * (N[i * 3] * c.x + N[i * 3 + 1] * c.y);
    const w = column(2);
    out[j] = column(0) / q.k + q.x * w;
    out[3 + j] = column(1) / q.k + q.y * w;
    out[6 + j] = w;
  }
  return out.map((v) => v / out[8]);
}

function scaling(points: readonly (readonly [number, number])[]) {
  const n = points.length;
  const x = points.reduce((s, p) => s + p[0], 0) / n;
  const y = points.reduce((s, p) => s + p[1], 0) / n;
  const spread = points.reduce((s, p) => s + Math.hypot(p[0] - x, p[1] - y), 0) / n;
  return { x, y, k: Math.SQRT2 / Math.max(spread, 1e-9) };
}

/** Pose that a homography implies for an undistorted camera of known focal length. */
export function poseFromHomography(
  H: ArrayLike<number>,
  fPx: number,
  cx: number,
  cy: number,
): Camera {
  const col = (j: number): [number, number, number] => [
    (H[j] - cx * H[6 + j]) / fPx,
    (H[3 + j] - cy * H[6 + j]) / fPx,
    H[6 + j],
  ];
  const a = col(0);
  const b = col(1);
  const t = col(2);
  const k = 2 / (Math.hypot(...a) + Math.hypot(...b));
  const r1 = unit(a);
  const dot = r1[0] * b[0] + r1[1] * b[1] + r1[2] * b[2];
  const r2 = unit([b[0] - dot * r1[0], b[1] - dot * r1[1], b[2] - dot * r1[2]]);
  const r3 = [
    r1[1] * r2[2] - r1[2] * r2[1],
    r1[2] * r2[0] - r1[0] * r2[2],
    r1[0] * r2[1] - r1[1] * r2[0],
  ];
  const R = [r1[0], r2[0], r3[0], r1[1], r2[1], r3[1], r1[2], r2[2], r3[2]];
  return {
    fPx,
    cx,
    cy,
    k1: 0,
    rotation: rotationVector(R),
    translation: [t[0] * k, t[1] * k, t[2] * k],
  };
}

function unit(v: readonly [number, number, number]): [number, number, number] {
  const n = Math.hypot(...v);
  return [v[0] / n, v[1] / n, v[2] / n];
}

/** Pixels per mm at a place of the plane: the root of the area that a square millimetre takes. */
export function scaleAt(H: ArrayLike<number>, x: number, y: number): number {
  const w = H[6] * x + H[7] * y + H[8];
  const [u, v] = [(H[0] * x + H[1] * y + H[2]) / w, (H[3] * x + H[4] * y + H[5]) / w];
  const det = (H[0] - u * H[6]) * (H[4] - v * H[7]) - (H[1] - u * H[7]) * (H[3] - v * H[6]);
  return Math.sqrt(Math.abs(det)) / Math.abs(w);
}
