import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';
import { type SeatedThread, seatThread } from './seat-thread';
import type { ThreadGuess } from './threads-on-axis';

/** Logarithm of the odds from which on nothing more is tried: nine to one. */
export const enough = 2.2;
/** Seats take a quarter of a second each. */
const mostSeats = 8;
/** Most guesses are no thread at a first look, which is soon done. */
const guessesPerSeat = 2;

/** The likeliest of up to so many seats; asked again, it goes on from there. */
export type ThreadSearch = (most?: number) => SeatedThread | null;

/** Guesses seated one by one, until one convinces. `beside`: what else than the photo's look speaks for a seat, added
 *  to the logarithm of its odds. */
export function threadSearch(
  grey: GreyImage,
  camera: PosedCamera,
  guesses: Iterable<ThreadGuess>,
  beside: (seat: SeatedThread) => number = () => 0,
): ThreadSearch {
  const left = guesses[Symbol.iterator]();
  let best: SeatedThread | null = null;
  let seats = 0;
  let tried = 0;
  return (most = mostSeats) => {
    while (!(best && best.odds > enough) && seats < most && tried < guessesPerSeat * most) {
      const { value: guess, done } = left.next();
      if (done) break;
      const seen = seatThread(grey, camera, guess);
      tried++;
      if (!seen) continue;
      seats++;
      const seat = { ...seen, odds: seen.odds + beside(seen) };
      if (!best || seat.odds > best.odds) best = seat;
    }
    return best;
  };
}
