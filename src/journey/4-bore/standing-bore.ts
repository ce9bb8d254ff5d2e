import type { GreyImage } from '../../vision/grey-image';
import type { Vision } from '../../vision/vision';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { mouthHeight } from './body-height';
import { type FaceBore, faceBore } from './face-bore';
import { type FacePlane, onPlane } from './face-plane';
import type { PlacedBore } from './placed-bore';

/** The card itself, seen from above. */
const cardPlane: FacePlane = {
  origin: [0, 0, 0],
  right: [1, 0, 0],
  down: [0, 1, 0],
  inwards: [0, 0, 1],
};

/** A female end that stands on the card, mouth up: its base and its upright edges tell how high the mouth is. */
export function standingBore(
  grey: GreyImage,
  { camera }: Reference,
  { view, blob }: Pick<FoundFitting, 'view' | 'blob'>,
  vision: Vision,
): PlacedBore | null {
  const xs = blob.hull.map(([x]) => view.originXMm + x / view.pxPerMm);
  const ys = blob.hull.map(([, y]) => view.originYMm + y / view.pxPerMm);
  const box = {
    fromX: Math.min(...xs),
    toX: Math.max(...xs),
    fromY: Math.min(...ys),
    toY: Math.max(...ys),
  };
  const face = faceBore(grey, camera, cardPlane, box, vision);
  return face && placed(face);
}

function placed(face: FaceBore): PlacedBore | null {
  const { seat, rings, edges, foot, distanceMm, mouth, plane, stretch } = face;
  const height = mouthHeight({
    edges,
    foot,
    cameraHeightMm: distanceMm,
    mouth,
    rim: rings.rim,
    outer: rings.outer,
    outerShare: rings.outerShare,
  });
  if (!height) return null;
  const shrink = (distanceMm - height.heightMm) / distanceMm;
  const [x, y] = onPlane(
    plane,
    foot[0] + shrink * (mouth[0] - foot[0]),
    foot[1] + shrink * (mouth[1] - foot[1]),
  );
  return {
    pose: 'standing',
    seat,
    rings,
    height: { value: height.heightMm, u: height.uMm },
    scale: shrink * stretch,
    mouth: [x, y, -height.heightMm],
    inwards: plane.inwards,
    rimMm: shrink * rings.rim,
  };
}
