import * as portable from '../../quantity/portable-math';
import type { Vec3 } from '../2-card-pose/camera';

/** A plane that lies as the face of a female end does, card frame, mm; the three directions are units, square to each
 *  other. Circles parallel to it are circles on it, at whatever depth they lie: a camera maps one plane to a parallel
 *  one by a scale and a shift. */
export interface FacePlane {
  /** Where x and y are 0. */
  readonly origin: Vec3;
  readonly right: Vec3;
  readonly down: Vec3;
  readonly inwards: Vec3;
}

export const onPlane = (
  { origin: o, right: r, down: d }: FacePlane,
  x: number,
  y: number,
): Vec3 => [o[0] + x * r[0] + y * d[0], o[1] + x * r[1] + y * d[1], o[2] + x * r[2] + y * d[2]];

/** The plane turned about its `down` through a point on it, from which its lengths begin; its `inwards` turns towards
 *  `right` where the angle is positive, rad. */
export function turnedPlane(plane: FacePlane, x: number, y: number, angle: number): FacePlane {
  const { right: r, inwards: n, down } = plane;
  const c = portable.cos(angle);
  const s = portable.sin(angle);
  return {
    origin: onPlane(plane, x, y),
    right: [c * r[0] - s * n[0], c * r[1] - s * n[1], c * r[2] - s * n[2]],
    down,
    inwards: [c * n[0] + s * r[0], c * n[1] + s * r[1], c * n[2] + s * r[2]],
  };
}

/** Coordinates on the plane of the point at the foot of a perpendicular on it, and that perpendicular's length. */
export function footOf({ origin, right, down, inwards }: FacePlane, point: Vec3) {
  const w: Vec3 = [point[0] - origin[0], point[1] - origin[1], point[2] - origin[2]];
  return { x: dot(w, right), y: dot(w, down), distanceMm: Math.abs(dot(w, inwards)) };
}

const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
