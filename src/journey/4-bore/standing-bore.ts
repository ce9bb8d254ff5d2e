import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { mouthHeight } from './body-height';
import { type FacePlane, onPlane } from './face-plane';
import type { PartOutline } from './part-outline';
import type { FaceBore, MouthGuess, MouthGuesses, PlacedBore } from './placed-bore';

/** The card itself, seen from above. */
const cardPlane: FacePlane = {
  origin: [0, 0, 0],
  right: [1, 0, 0],
  down: [0, 1, 0],
  inwards: [0, 0, 1],
};

/** The outline's far end is that of the face: the mouth's middle from there, and the radius over the crests, both over
 *  half the outline's width. Where the part reaches out of the window, or its shadow beside it, it is less. */
const usual = [[0.95, 0.6]] as const;
const others = [
  [0.95, 0.45],
  [0.6, 0.6],
  [0.6, 0.45],
] as const;

/** Of a female end that stands on the card, mouth up. */
export function standingGuesses({ at, far, half, middle }: PartOutline): MouthGuesses {
  const guess = ([depth, radius]: readonly [number, number]): MouthGuess => {
    const [x, y] = at(far - depth * half, middle);
    return { pose: 'standing', plane: cardPlane, ring: { x, y, radius: radius * half } };
  };
  return { usual: usual.map(guess), others: others.map(guess) };
}

/** Where its side ends on the card tells how high the mouth is. */
export function placedStanding(photo: PosedPhoto, face: FaceBore): PlacedBore {
  const { mouth, seat, foot, distanceMm } = face;
  const { plane, x, y, outer, crests } = mouth;
  const { heightMm, uMm } = mouthHeight(photo, plane, { x, y, radius: outer });
  const shrink = (distanceMm - heightMm) / distanceMm;
  const [px, py] = onPlane(
    plane,
    foot[0] + shrink * (x - foot[0]),
    foot[1] + shrink * (y - foot[1]),
  );
  return {
    pose: 'standing',
    seat,
    height: { value: heightMm, u: uMm },
    scale: shrink,
    mouth: [px, py, -heightMm],
    inwards: plane.inwards,
    crestsMm: shrink * crests,
  };
}
