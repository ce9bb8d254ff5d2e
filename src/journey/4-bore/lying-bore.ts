import type { GreyImage } from '../../vision/grey-image';
import type { Vision } from '../../vision/vision';
import { atHeight, type PosedCamera, project, type Vec3 } from '../2-card-pose/camera';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { type FaceBore, faceBore } from './face-bore';
import { faceDirections } from './face-direction';
import { onPlane } from './face-plane';
import type { PlacedBore } from './placed-bore';

/** Half across flats over the radius of the face's outer edge. A hex is chamfered to about 0.95 of its flats (common
 *  practice), a round body lies on that edge itself; on rendered hexes what is seen as the edge lies at the flats. */
const flatsOverFace = { value: 1.0, u: 0.03 };
/** Height at which the mouth is taken to be while its direction is sought, mm. */
const usualHeightMm = 14;

/** A female end that lies on a flat or on its round, its mouth towards the camera: its face stands upright. */
export function lyingBore(
  grey: GreyImage,
  { camera }: Reference,
  { view, blob }: Pick<FoundFitting, 'view' | 'blob'>,
  vision: Vision,
): PlacedBore | null {
  const photoOf = ([x, y]: readonly [number, number]) =>
    project(camera, [view.originXMm + x / view.pxPerMm, view.originYMm + y / view.pxPerMm, 0]);
  const at = atHeight(camera, photoOf(blob.centroid), usualHeightMm);
  const seen = { hull: blob.hull.map(photoOf), touchesRim: blob.touchesRim };
  let best: FaceBore | null = null;
  for (const { plane, box } of faceDirections({ grey, camera }, at, seen, vision)) {
    const face = faceBore(grey, camera, plane, box, vision);
    if (face && (!best || face.seat.odds > best.seat.odds)) best = face;
  }
  return best && placed(camera, best);
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
