import { atHeight, type PosedCamera, project, rayThrough, type Vec3 } from '../2-card-pose/camera';
import type { PhotoPoint } from '../overlay';

/** The fitting's axis in the card frame, with coordinates along and across it.
 *  s: mm along the axis from `origin`; r: mm sideways, in the plane through the axis that lies flat
 *  over the card; positive r is the 'left' side seen along +s from above. */
export interface AxisFrame {
  readonly origin: Vec3;
  readonly along: Vec3;
  readonly left: Vec3;
}

/** A stretch of an axis, mm along it. */
export interface Extent {
  readonly fromS: number;
  readonly toS: number;
}

export const middleOf = ({ fromS, toS }: Extent): number => (fromS + toS) / 2;

/** Axis parallel to the card at a height, through two photo points. */
export function axisThrough(
  camera: PosedCamera,
  from: PhotoPoint,
  to: PhotoPoint,
  heightMm: number,
): AxisFrame {
  const a = atHeight(camera, from, heightMm);
  const b = atHeight(camera, to, heightMm);
  const n = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return flatAxis(a, (b[0] - a[0]) / n, (b[1] - a[1]) / n);
}

export function flatAxis(origin: Vec3, dx: number, dy: number): AxisFrame {
  // y runs down on the card, so a quarter turn to the left of (dx, dy) as seen is (dy, −dx).
  return { origin, along: [dx, dy, 0], left: [dy, -dx, 0] };
}

export function onAxisPlane(frame: AxisFrame, s: number, r: number): Vec3 {
  const { origin: o, along: d, left: l } = frame;
  return [o[0] + s * d[0] + r * l[0], o[1] + s * d[1] + r * l[1], o[2] + s * d[2] + r * l[2]];
}

export const photoAt = (camera: PosedCamera, frame: AxisFrame, s: number, r: number): PhotoPoint =>
  project(camera, onAxisPlane(frame, s, r));

/** How the viewing ray leans along the axis at a place on it: mm along per mm down. */
export function leanAt({ centre }: PosedCamera, frame: AxisFrame, s: number): number {
  const at = onAxisPlane(frame, s, 0);
  const away = (at[0] - centre[0]) * frame.along[0] + (at[1] - centre[1]) * frame.along[1];
  return away / (at[2] - centre[2]);
}

export interface AxialPoint {
  /** Foot of the common perpendicular on the axis, mm. */
  readonly s: number;
  /** Signed distance between viewing ray and axis, mm: the radius of the body that the ray grazes
   *  (exact for a cylinder: R = ρ sin β), positive on the left. */
  readonly r: number;
  /** Slope of the ray along the axis: mm along per mm across. */
  readonly slope: number;
}

/** Where the viewing ray through a photo point grazes a body of revolution about the axis. */
export function grazing(camera: PosedCamera, frame: AxisFrame, point: PhotoPoint): AxialPoint {
  const ray = rayThrough(camera, point);
  const c = camera.centre;
  const d = frame.along;
  const w: Vec3 = [c[0] - frame.origin[0], c[1] - frame.origin[1], c[2] - frame.origin[2]];
  const b = dot(ray, d);
  const den = 1 - b * b;
  const wd = dot(w, d);
  const wr = dot(w, ray);
  const s = (wd - b * wr) / den;
  const n = cross(d, ray);
  return { s, r: dot(w, n) / Math.sqrt(den), slope: b / Math.sqrt(den) };
}

const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
