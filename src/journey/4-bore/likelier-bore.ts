import type { GreyImage } from '../../vision/grey-image';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { enough, type ThreadSearch } from '../4-limbs/thread-search';
import { findBore, mouthGuesses } from './find-bore';
import type { PlacedBore } from './placed-bore';

/** Logarithms of odds: below which a bore is more likely wrong than right; and above which a male thread need not be
 *  held against bores that are hard to see, twenty to one. */
const leastOdds = 0;
const surelyMale = 3;
/** Seats that are tried before such bores are: what is no male thread takes longest. */
const firstSeats = 3;

/** The bore that the photo shows, where that is likelier than any male thread on it; `male` searches for one, null
 *  where none is in question. */
export function likelierBore(
  grey: GreyImage,
  { camera }: Reference,
  fitting: FoundFitting,
  male: ThreadSearch | null,
): PlacedBore | null {
  const photo = { grey, camera };
  const guesses = [fitting, ...fitting.pieces].map((part) => mouthGuesses(camera, part));
  const usual = guesses.flatMap((one) => one.usual);
  const others = guesses.flatMap((one) => one.others);
  const soon = findBore(photo, usual);
  if (soon && soon.seat.odds > enough) return soon;
  const oddsOf = (most?: number) => male?.(most)?.odds ?? Number.NEGATIVE_INFINITY;
  const first = oddsOf(firstSeats);
  if (first > surelyMale) return null;
  const late = findBore(photo, others);
  const best = soon && !(late && late.seat.odds > soon.seat.odds) ? soon : late;
  if (!best || best.seat.odds < Math.max(leastOdds, first)) return null;
  return best.seat.odds > enough || best.seat.odds > oddsOf() ? best : null;
}
