import type { GreyImage } from '../../vision/grey-image';
import { project } from '../2-card-pose/camera';
import type { Reference } from '../2-reference/reference';
import type { Part } from '../3-find/find-fitting';
import { type Extent, grazing, photoAt } from '../4-thread-signal/axis-frame';
import { threadsBeside } from './find-threads';
import { type SeatedThread, seatThread } from './seat-thread';

/** What is less likely a thread by its first look is not seated. */
const promising = 0.001;
const mostSeats = 4;
/** Logarithm of the odds from which on a second end is believed: seven to one, for most parts have one. */
const sure = 2;
const fewestTurnsBetween = 3;

/** The thread at the other end of a part, on the same axis; null where nothing there convinces. */
export function otherEnd(
  grey: GreyImage,
  reference: Reference,
  { view, blob }: Part,
  seat: SeatedThread,
): SeatedThread | null {
  const { camera } = reference;
  const along = blob.hull.map(([i, j]) => {
    const x = view.originXMm + i / view.pxPerMm;
    const y = view.originYMm + j / view.pxPerMm;
    return grazing(camera, seat.frame, project(camera, [x, y, 0])).s;
  });
  const reach: Extent = { fromS: Math.min(...along), toS: Math.max(...along) };
  const guesses = threadsBeside(grey, camera, seat, reach).filter(({ worth }) => worth > promising);
  let best: SeatedThread | null = null;
  for (const guess of guesses.slice(0, mostSeats)) {
    const tried = seatThread(grey, camera, guess);
    if (!tried || tried.odds < sure || runsInto(tried, seat, reference)) continue;
    if (!best || tried.odds > best.odds) best = tried;
  }
  return best;
}

/** Whether one runs on into the other, as the photo shows them: between two ends lies a hex, a collar or a neck. */
function runsInto(other: SeatedThread, seat: SeatedThread, { camera }: Reference): boolean {
  const [a, b] = [other.zone.fromS, other.zone.toS].map(
    (s) => grazing(camera, seat.frame, photoAt(camera, other.frame, s, 0)).s,
  );
  const gap = Math.max(seat.zone.fromS - Math.max(a, b), Math.min(a, b) - seat.zone.toS);
  return gap < fewestTurnsBetween * seat.pitchMm;
}
