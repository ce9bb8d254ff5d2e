import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';
import { type SeatedThread, seatThread } from './seat-thread';
import type { ThreadGuess } from './threads-on-axis';

/** Logarithm of the odds from which on nothing more is tried: nine to one. */
export const enough = 2.2;
/** Seats take a quarter of a second each. */
const mostSeats = 8;
const mostGuesses = 16;

/** Guesses seated one by one, until one convinces. */
export function likeliestThread(
  grey: GreyImage,
  camera: PosedCamera,
  guesses: Iterable<ThreadGuess>,
): SeatedThread | null {
  let best: SeatedThread | null = null;
  let seats = 0;
  let tried = 0;
  for (const guess of guesses) {
    const seat = seatThread(grey, camera, guess);
    tried++;
    if (seat) {
      seats++;
      if (!best || seat.odds > best.odds) best = seat;
    }
    if ((best && best.odds > enough) || seats === mostSeats || tried === mostGuesses) break;
  }
  return best;
}
