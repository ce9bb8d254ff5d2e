import type { PosedCamera } from '../2-card-pose/camera';
import type { Part } from '../3-find/find-fitting';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { footOf, onPlane } from './face-plane';
import { lyingGuesses, placedLying } from './lying-bore';
import { type Mouth, mouthNear } from './mouth-fit';
import { partOutline } from './part-outline';
import type { FaceBore, MouthGuess, MouthGuesses, PlacedBore } from './placed-bore';
import { seatBore } from './seat-bore';
import { placedStanding, standingGuesses } from './standing-bore';

/** Logarithm of the odds above which no other mouth is sought, and below which what was found is none. */
const surely = 4;
const hardly = -2;
/** Mouths that are looked at closely, and how often more. */
const mostClose = 2;
const moreLooks = 2;

interface Found {
  readonly guess: MouthGuess;
  readonly mouth: Mouth;
}

/** Where a part's outline says that a mouth may be. */
export function mouthGuesses(
  camera: PosedCamera,
  fitting: Pick<Part, 'view' | 'blob'>,
): MouthGuesses {
  const outline = partOutline(camera, fitting);
  const standing = standingGuesses(outline);
  const lying = lyingGuesses(camera, outline);
  return {
    usual: [...standing.usual, ...lying.usual],
    others: [...standing.others, ...lying.others],
  };
}

/** The likeliest bore among some guesses, standing or lying. */
export function findBore(photo: PosedPhoto, guesses: readonly MouthGuess[]): PlacedBore | null {
  let best: FaceBore | null = null;
  for (const { guess, mouth } of closely(photo, mouthsAmong(photo, guesses))) {
    const face = seated(photo, guess, mouth);
    if (face && (!best || face.seat.odds > best.seat.odds)) best = face;
  }
  if (!best) return null;
  return best.pose === 'standing' ? placedStanding(photo, best) : placedLying(photo.camera, best);
}

/** Each guess looked at once, the likeliest mouth first; those after a sure one are left out. */
function mouthsAmong(photo: PosedPhoto, guesses: readonly MouthGuess[]): Found[] {
  const found: Found[] = [];
  for (const guess of guesses) {
    const { plane, ring, pose } = guess;
    const mouth = mouthNear(photo, plane, ring, { looks: 1, turns: pose === 'lying' });
    if (mouth.odds > hardly) found.push({ guess, mouth });
    if (mouth.odds > surely) break;
  }
  return found.sort((a, b) => worthOf(b.mouth) - worthOf(a.mouth));
}

/** What speaks for a mouth: that it is one, and that its circles are where they are believed. */
const worthOf = ({ odds, fit }: Mouth): number => odds + fit;

function closely(photo: PosedPhoto, mouths: readonly Found[]): Found[] {
  const close: Found[] = [];
  for (const { guess, mouth } of mouths) {
    const seen = (of: Mouth, within: number) =>
      close.some((one) => one.guess.pose === guess.pose && sameMouth(one.mouth, of, within));
    if (seen(mouth, 0.3)) continue;
    const { plane, x, y, crests } = mouth;
    const turns = guess.pose === 'lying';
    const again = mouthNear(photo, plane, { x, y, radius: crests }, { looks: moreLooks, turns });
    if (!seen(again, 0.05)) close.push({ guess, mouth: again });
    if (close.length === mostClose) break;
  }
  return close;
}

function sameMouth(a: Mouth, b: Mouth, within: number): boolean {
  const [p, q] = [a, b].map(({ plane, x, y }) => onPlane(plane, x, y));
  return (
    Math.abs(a.crests / b.crests - 1) < within &&
    Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]) < within * a.crests
  );
}

function seated(photo: PosedPhoto, { pose }: MouthGuess, mouth: Mouth): FaceBore | null {
  const { plane, x, y, crests, odds } = mouth;
  const at = { mouth: onPlane(plane, x, y), inwards: plane.inwards, radiusMm: crests, odds };
  const seat = seatBore(photo, at);
  if (!seat) return null;
  const under = footOf(plane, photo.camera.centre);
  return { pose, mouth, seat, foot: [under.x, under.y], distanceMm: under.distanceMm };
}
