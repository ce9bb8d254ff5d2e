import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera, Vec3 } from '../2-card-pose/camera';
import { planeGrey } from '../2-card-pose/plane-grey';

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

export interface PlaneView extends GreyImage {
  readonly pxPerMm: number;
}

/** A stretch of the plane from (0, 0). */
export function planeView(
  grey: GreyImage,
  camera: PosedCamera,
  plane: FacePlane,
  size: { readonly widthMm: number; readonly heightMm: number },
  pxPerMm: number,
): PlaneView {
  const width = Math.max(8, Math.round(size.widthMm * pxPerMm));
  const height = Math.max(8, Math.round(size.heightMm * pxPerMm));
  const step = plane.right.map((v) => v / pxPerMm) as unknown as Vec3;
  const rowFrom = (row: number) => onPlane(plane, 0, row / pxPerMm);
  const data = planeGrey(grey, camera, { width, height }, rowFrom, step);
  return { width, height, data, pxPerMm };
}

export const onPlane = (
  { origin: o, right: r, down: d }: FacePlane,
  x: number,
  y: number,
): Vec3 => [o[0] + x * r[0] + y * d[0], o[1] + x * r[1] + y * d[1], o[2] + x * r[2] + y * d[2]];

/** Coordinates on the plane of the point at the foot of a perpendicular on it, and that perpendicular's length. */
export function footOf({ origin, right, down, inwards }: FacePlane, point: Vec3) {
  const w: Vec3 = [point[0] - origin[0], point[1] - origin[1], point[2] - origin[2]];
  return { x: dot(w, right), y: dot(w, down), distanceMm: Math.abs(dot(w, inwards)) };
}

const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
