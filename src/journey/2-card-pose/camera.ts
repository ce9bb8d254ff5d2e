import * as portable from '../../quantity/portable-math';
import type { PhotoPoint } from '../overlay';

export type Vec3 = readonly [number, number, number];

/** Pinhole camera with one radial term (OpenCV's k1), posed over the card.
 *  Card frame: mm, x right, y down, z INTO the card, so a point h above it has z = −h.
 *  Camera frame: x right, y down, z forward. Photo frame: upright full-size pixels, centres at integers.
 *  x_cam = R·x_card + t;  u = f·d·x/z + cx,  d = 1 + k1·r²,  r² = (x² + y²)/z². */
export interface Camera {
  readonly fPx: number;
  readonly cx: number;
  readonly cy: number;
  readonly k1: number;
  /** Rotation vector (Rodrigues), rad, card to camera. */
  readonly rotation: Vec3;
  readonly translation: Vec3;
}

/** Row-major 3 × 3. */
export function rotationMatrix([a, b, c]: Vec3): Float64Array {
  const angle = Math.hypot(a, b, c);
  const m = new Float64Array(9);
  if (angle < 1e-12) {
    m.set([1, -c, b, c, 1, -a, -b, a, 1]);
    return m;
  }
  const x = a / angle;
  const y = b / angle;
  const z = c / angle;
  const s = portable.sin(angle);
  const k = 1 - portable.cos(angle);
  m.set([
    1 - k * (y * y + z * z),
    k * x * y - s * z,
    k * x * z + s * y,
    k * x * y + s * z,
    1 - k * (x * x + z * z),
    k * y * z - s * x,
    k * x * z - s * y,
    k * y * z + s * x,
    1 - k * (x * x + y * y),
  ]);
  return m;
}

/** Rodrigues vector of a rotation matrix with angle below π. */
export function rotationVector(m: ArrayLike<number>): Vec3 {
  const x = m[7] - m[5];
  const y = m[2] - m[6];
  const z = m[3] - m[1];
  const s = Math.hypot(x, y, z) / 2;
  const c = (m[0] + m[4] + m[8] - 1) / 2;
  const angle = portable.atan2(s, c);
  if (s < 1e-9) return c > 0 ? [x / 2, y / 2, z / 2] : halfTurnVector(m, angle);
  const k = angle / (2 * s);
  return [x * k, y * k, z * k];
}

function halfTurnVector(m: ArrayLike<number>, angle: number): Vec3 {
  const axis = [0, 4, 8].map((i) => Math.sqrt(Math.max(0, (m[i] + 1) / 2)));
  const lead = axis.indexOf(Math.max(...axis));
  const sign = (i: number) =>
    i === lead || m[3 * Math.min(i, lead) + Math.max(i, lead)] >= 0 ? 1 : -1;
  return [axis[0] * sign(0) * angle, axis[1] * sign(1) * angle, axis[2] * sign(2) * angle];
}

/** A camera with its matrices worked out, for many points. */
export interface PosedCamera extends Camera {
  readonly R: Float64Array;
  /** Camera centre in the card frame, mm; z < 0. */
  readonly centre: Vec3;
}

export function posed(camera: Camera): PosedCamera {
  const R = rotationMatrix(camera.rotation);
  const [x, y, z] = camera.translation;
  const centre: Vec3 = [
    -(R[0] * x + R[3] * y + R[6] * z),
    -(R[1] * x + R[4] * y + R[7] * z),
    -(R[2] * x + R[5] * y + R[8] * z),
  ];
  return { ...camera, R, centre };
}

/** Called for every sample of every profile. Here and in its callers points are indexed, not taken
 *  apart: taking an array apart goes by its iterator, 700 MB of them for one photo. */
export function project(camera: PosedCamera, point: Vec3): PhotoPoint {
  const X = point[0];
  const Y = point[1];
  const Z = point[2];
  const { R, translation: t } = camera;
  const z = R[6] * X + R[7] * Y + R[8] * Z + t[2];
  const x = (R[0] * X + R[1] * Y + R[2] * Z + t[0]) / z;
  const y = (R[3] * X + R[4] * Y + R[5] * Z + t[1]) / z;
  const d = 1 + camera.k1 * (x * x + y * y);
  return [camera.fPx * d * x + camera.cx, camera.fPx * d * y + camera.cy];
}

/** Photo points, x and y in turn, of the points start + i·step: along a line the camera's own
 *  coordinates run evenly. What samples whole images goes by it: nothing is allocated. */
export function projectRow(
  camera: PosedCamera,
  start: Vec3,
  step: Vec3,
  count: number,
  out: Float64Array,
): void {
  const { R, translation: t, fPx, k1, cx, cy } = camera;
  const x0 = R[0] * start[0] + R[1] * start[1] + R[2] * start[2] + t[0];
  const y0 = R[3] * start[0] + R[4] * start[1] + R[5] * start[2] + t[1];
  const z0 = R[6] * start[0] + R[7] * start[1] + R[8] * start[2] + t[2];
  const dx = R[0] * step[0] + R[1] * step[1] + R[2] * step[2];
  const dy = R[3] * step[0] + R[4] * step[1] + R[5] * step[2];
  const dz = R[6] * step[0] + R[7] * step[1] + R[8] * step[2];
  for (let i = 0; i < count; i++) {
    const w = 1 / (z0 + i * dz);
    const x = (x0 + i * dx) * w;
    const y = (y0 + i * dy) * w;
    const f = fPx * (1 + k1 * (x * x + y * y));
    out[2 * i] = f * x + cx;
    out[2 * i + 1] = f * y + cy;
  }
}

/** Unit direction, card frame, of the viewing ray through a photo point. */
export function rayThrough(camera: PosedCamera, point: PhotoPoint): Vec3 {
  const xd = (point[0] - camera.cx) / camera.fPx;
  const yd = (point[1] - camera.cy) / camera.fPx;
  let d = 1;
  const r2d = xd * xd + yd * yd;
  // Fixed point of r² = r_d²/(1 + k1 r²)²; converges for every lens with |k1| r² well below 1/3.
  for (let i = 0; i < 12; i++) d = 1 + (camera.k1 * r2d) / (d * d);
  const x = xd / d;
  const y = yd / d;
  const { R } = camera;
  const n = 1 / Math.sqrt(x * x + y * y + 1);
  return [
    (R[0] * x + R[3] * y + R[6]) * n,
    (R[1] * x + R[4] * y + R[7]) * n,
    (R[2] * x + R[5] * y + R[8]) * n,
  ];
}

/** Where the viewing ray through a photo point meets the plane `heightMm` above the card. */
export function atHeight(camera: PosedCamera, point: PhotoPoint, heightMm: number): Vec3 {
  const ray = rayThrough(camera, point);
  const k = (-heightMm - camera.centre[2]) / ray[2];
  return [camera.centre[0] + k * ray[0], camera.centre[1] + k * ray[1], -heightMm];
}

/** Angle between the optical axis and the card's normal, rad. */
export const tiltRad = (camera: PosedCamera): number => portable.acos(Math.min(1, camera.R[8]));
