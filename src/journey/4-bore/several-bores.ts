import type { GreyImage } from '../../vision/grey-image';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { findThreads } from '../4-limbs/find-threads';
import { enough, threadSearch } from '../4-limbs/thread-search';
import { findBore, mouthGuesses } from './find-bore';
import type { PlacedBore } from './placed-bore';

const seatsPerPart = 3;

/** Whether another of the pieces in the window has a bore or a thread of its own beside a bore that was found. */
export function isAnotherBeside(
  grey: GreyImage,
  reference: Reference,
  { pieces }: FoundFitting,
  bore: PlacedBore,
): boolean {
  const photo = { grey, camera: reference.camera };
  return pieces.some((part) => {
    const { usual, others } = mouthGuesses(photo.camera, part);
    const found = findBore(photo, [...usual, ...others]);
    if (found && found.seat.odds > enough) return isApart(found, bore);
    const guesses = findThreads(grey, reference, [part]);
    const thread = threadSearch(grey, photo.camera, guesses)(seatsPerPart);
    return thread !== null && thread.odds > enough;
  });
}

/** Whether two mouths are not one: each lies outside the other's crests. */
const isApart = (a: PlacedBore, b: PlacedBore): boolean =>
  Math.hypot(...a.mouth.map((v, i) => v - b.mouth[i])) > Math.max(a.crestsMm, b.crestsMm);
