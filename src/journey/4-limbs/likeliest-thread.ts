import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';
import { onAxisPlane } from '../4-thread-signal/axis-frame';
import type { ThreadGuess } from './find-threads';
import { type SeatedThread, seatThread } from './seat-thread';

/** Nothing more is tried once a seat is worth this much: above it, fewer than one in a hundred is
 *  wrong. */
const enough = -1.2;
/** Seats take a quarter of a second each; the right one was never found later. */
const mostSeats = 6;
/** A zone found far beside its mirror line, in radii, may be one side of a wider thread. */
const beside = 0.25;

/** Guesses seated one by one, until one convinces. */
export function likeliestThread(
  grey: GreyImage,
  camera: PosedCamera,
  guesses: Iterable<ThreadGuess>,
  freeEndFirst: boolean | null,
): SeatedThread | null {
  let best: SeatedThread | null = null;
  let left = mostSeats;
  for (const guess of guesses)
    for (const tried of withWider(guess)) {
      if (left-- === 0) return best;
      const seat = seatThread(grey, camera, tried, freeEndFirst);
      if (seat && (!best || seat.worth > best.worth)) best = seat;
      if (best && best.worth > enough) return best;
    }
  return best;
}

function withWider(guess: ThreadGuess): ThreadGuess[] {
  const { frame, zone, start, radiusMm } = guess;
  const at = onAxisPlane(frame, (zone.fromS + zone.toS) / 2, 0);
  const off = (at[0] - start.origin[0]) * start.left[0] + (at[1] - start.origin[1]) * start.left[1];
  if (Math.abs(off) < beside * radiusMm) return [guess];
  const onLine = { ...frame, origin: onAxisPlane(frame, 0, -off) };
  return [guess, { ...guess, frame: onLine, radiusMm: radiusMm + Math.abs(off) }];
}
