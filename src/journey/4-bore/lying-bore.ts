import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import type { Vision } from '../../vision/vision';
import { atHeight, type PosedCamera, project, rayThrough, type Vec3 } from '../2-card-pose/camera';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { type FaceBore, faceBore, type MouthBox, rimRadii } from './face-bore';
import { type FacePlane, onPlane, planeView } from './face-plane';
import type { PlacedBore } from './placed-bore';
import { ringEdges } from './ring-edges';
import { findRings } from './rings';

/** Half across flats over the radius of the face's outer edge: chamfered to about 0.95 of the flats (common practice);
 *  a round body lies on that edge itself. */
const flatsOverFace = { value: 1.03, u: 0.03 };
/** Height at which the mouth is taken to be while its direction is sought, mm. */
const usualHeightMm = 14;
/** Directions of the axis on the card, from the one straight away from the camera, rad. */
const coarse = { most: 0.78, hop: 0.156, pxPerMm: 2.5 };
const fine = { most: 0.078, hop: 0.039, pxPerMm: 4 };
/** Rings that must stand out together on the right plane: rim, face, crests. */
const together = 3;

/** A female end that lies on a flat or on its round, its mouth towards the camera: its face stands upright. */
export function lyingBore(
  grey: GreyImage,
  { camera }: Reference,
  { view, blob }: Pick<FoundFitting, 'view' | 'blob'>,
  vision: Vision,
): PlacedBore | null {
  const hull = blob.hull.map(([x, y]) =>
    project(camera, [view.originXMm + x / view.pxPerMm, view.originYMm + y / view.pxPerMm, 0]),
  );
  const middle = project(camera, [
    view.originXMm + blob.centroid[0] / view.pxPerMm,
    view.originYMm + blob.centroid[1] / view.pxPerMm,
    0,
  ]);
  const at = atHeight(camera, middle, usualHeightMm);
  const straight = portable.atan2(at[1] - camera.centre[1], at[0] - camera.centre[0]);
  const planeFor = (direction: number) => facing(camera, at, direction, hull);
  const best = (around: number, { most, hop, pxPerMm }: typeof coarse) => {
    let top = { direction: around, stands: Number.NEGATIVE_INFINITY };
    for (let d = -most; d <= most + 1e-9; d += hop) {
      const { plane, box } = planeFor(around + d);
      const stands = standOut(grey, camera, plane, box, pxPerMm, vision);
      if (stands > top.stands) top = { direction: around + d, stands };
    }
    return top.direction;
  };
  const direction = best(best(straight, coarse), fine);
  const { plane, box } = planeFor(direction);
  const face = faceBore(grey, camera, plane, box, vision);
  return face && placed(camera, face);
}

/** An upright plane through a point, square to a direction on the card, and where on it the hull is seen. */
function facing(
  camera: PosedCamera,
  at: Vec3,
  direction: number,
  hull: readonly (readonly [number, number])[],
): { readonly plane: FacePlane; readonly box: MouthBox } {
  const c = portable.cos(direction);
  const s = portable.sin(direction);
  const plane: FacePlane = { origin: at, right: [-s, c, 0], down: [0, 0, 1], inwards: [c, s, 0] };
  const xs: number[] = [];
  const ys: number[] = [];
  for (const point of hull) {
    const ray = rayThrough(camera, point);
    const toward = ray[0] * c + ray[1] * s;
    if (toward < 0.05) continue;
    const k = ((at[0] - camera.centre[0]) * c + (at[1] - camera.centre[1]) * s) / toward;
    const p = [0, 1, 2].map((i) => camera.centre[i] + k * ray[i] - at[i]);
    xs.push(-s * p[0] + c * p[1]);
    ys.push(p[2]);
  }
  const limit = 1.5 * rimRadii.to;
  return {
    plane,
    box: {
      fromX: Math.max(-limit, Math.min(...xs)),
      toX: Math.min(limit, Math.max(...xs)),
      fromY: Math.max(-limit, Math.min(...ys)),
      toY: Math.min(limit, Math.max(...ys)),
    },
  };
}

/** How well the rings that stand out most do so. */
function standOut(
  grey: GreyImage,
  camera: PosedCamera,
  plane: FacePlane,
  box: MouthBox,
  pxPerMm: number,
  vision: Vision,
): number {
  const width = box.toX - box.fromX;
  const height = box.toY - box.fromY;
  if (!(width > 0 && height > 0)) return Number.NEGATIVE_INFINITY;
  const origin = onPlane(plane, box.fromX, box.fromY);
  const size = { widthMm: width, heightMm: height };
  const edges = ringEdges(planeView(grey, camera, { ...plane, origin }, size, pxPerMm), vision);
  const search = {
    fromX: 0,
    toX: width,
    fromY: 0,
    toY: height,
    fromRadius: rimRadii.from,
    toRadius: Math.min(rimRadii.to, 0.6 * Math.max(width, height)),
  };
  const rings = findRings(edges, search, together);
  return rings.reduce((sum, { share }) => sum + share, 0);
}

/** The axis of what lies on the card is half across flats above it: the factor at which the face's edge says so. */
function placed(camera: PosedCamera, face: FaceBore): PlacedBore {
  const { plane, seat, rings, mouth, stretch } = face;
  const at = onPlane(plane, mouth[0], mouth[1]);
  const eye = camera.centre;
  const a = flatsOverFace.value * rings.outer;
  // From the eye at height −eye.z, the middle sinks to a·factor.
  const factor = -eye[2] / (a + at[2] - eye[2]);
  const heightMm = factor * a;
  return {
    pose: 'lying',
    seat,
    rings,
    height: { value: heightMm, u: (flatsOverFace.u / flatsOverFace.value) * heightMm },
    scale: factor * stretch,
    mouth: [0, 1, 2].map((i) => eye[i] + factor * (at[i] - eye[i])) as unknown as Vec3,
    inwards: plane.inwards,
    rimMm: factor * rings.rim,
  };
}
