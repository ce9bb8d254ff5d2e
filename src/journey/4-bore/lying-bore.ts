import * as portable from '../../quantity/portable-math';
import type { PosedCamera, Vec3 } from '../2-card-pose/camera';
import { type FacePlane, onPlane } from './face-plane';
import type { PartOutline } from './part-outline';
import type { FaceBore, MouthGuess, MouthGuesses, PlacedBore } from './placed-bore';

/** Half across flats over the radius of the face's outer edge. A hex is chamfered to about 0.95 of its flats (common
 *  practice), a round body lies on that edge itself. */
const flatsOverFace = { value: 1.02, u: 0.03 };
/** Where on the card the mouth's middle is seen, from the near end of the part's outline and from its middle, both over
 *  half the outline's width. A part that reaches out of the window, or its shadow, makes it more. */
const usual = [0.9, 1.25, 1.7].map((depth) => [depth, 0] as const);
const others = [
  ...[0.9, 1.25, 1.7].flatMap((depth) => [[depth, 0.25] as const, [depth, -0.25] as const]),
  ...[2.2, 2.8].flatMap((depth) => [0, 0.25, -0.25].map((aside) => [depth, aside] as const)),
];
/** Radius over the crests over the same. */
const crests = 0.45;
/** Half across flats over half the outline's width. */
const usualHeight = 0.75;

/** Of a female end that lies on a flat or on its round, its mouth towards the camera: its face stands upright. */
export function lyingGuesses(
  { centre: eye }: PosedCamera,
  { at, near, half, middle, away }: PartOutline,
): MouthGuesses {
  const direction = portable.atan2(away[1], away[0]);
  const guess = ([depth, aside]: readonly [number, number]): MouthGuess => {
    const [x, y] = at(near + depth * half, middle + aside * half);
    // On the ray to there, as high as a part is that is so wide.
    const share = 1 + (usualHeight * half) / eye[2];
    const point: Vec3 = [
      eye[0] + share * (x - eye[0]),
      eye[1] + share * (y - eye[1]),
      eye[2] * (1 - share),
    ];
    const ring = { x: 0, y: 0, radius: crests * half };
    return { pose: 'lying', plane: uprightPlane(point, direction), ring };
  };
  return { usual: usual.map(guess), others: others.map(guess) };
}

function uprightPlane(origin: Vec3, direction: number): FacePlane {
  const c = portable.cos(direction);
  const s = portable.sin(direction);
  return { origin, right: [-s, c, 0], down: [0, 0, 1], inwards: [c, s, 0] };
}

/** The axis of what lies on the card is half across flats above it: the factor at which the face's edge says so. */
export function placedLying(camera: PosedCamera, { mouth, seat }: FaceBore): PlacedBore {
  const { plane, x, y, outer, crests } = mouth;
  const at = onPlane(plane, x, y);
  const eye = camera.centre;
  const a = flatsOverFace.value * outer;
  // From the eye at height −eye.z, the middle sinks to a·factor.
  const factor = -eye[2] / (a + at[2] - eye[2]);
  const heightMm = factor * a;
  return {
    pose: 'lying',
    seat,
    height: { value: heightMm, u: (flatsOverFace.u / flatsOverFace.value) * heightMm },
    scale: factor,
    mouth: [0, 1, 2].map((i) => eye[i] + factor * (at[i] - eye[i])) as unknown as Vec3,
    inwards: plane.inwards,
    crestsMm: factor * crests,
  };
}
