import type { GreyImage } from '../../vision/grey-image';
import { project } from '../2-card-pose/camera';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { type Extent, grazing } from '../4-thread-signal/axis-frame';
import { threadsBeside } from './find-threads';
import { type SeatedThread, seatThread } from './seat-thread';

/** What is less likely a thread by its first look is not seated. */
const promising = 0.1;
const mostSeats = 3;
/** Logarithm of the odds of a second end: twenty to one, for most parts have one. */
const sure = 3;

/** The thread at the other end of a part, on the same axis; null where nothing there convinces. */
export function otherEnd(
  grey: GreyImage,
  reference: Reference,
  { view, blob }: FoundFitting,
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
    if (!tried || tried.odds < sure || overlaps(tried, seat, reference)) continue;
    if (!best || tried.odds > best.odds) best = tried;
  }
  return best;
}

/** Whether the middle of one lies within the other, as the photo shows them. */
function overlaps(a: SeatedThread, b: SeatedThread, { camera }: Reference): boolean {
  const middle = (seat: SeatedThread, of: SeatedThread) => {
    const [x, y, z] = seat.frame.origin;
    const s = (seat.zone.fromS + seat.zone.toS) / 2;
    const [dx, dy, dz] = seat.frame.along;
    const at = grazing(camera, of.frame, project(camera, [x + s * dx, y + s * dy, z + s * dz])).s;
    return at > of.zone.fromS && at < of.zone.toS;
  };
  return middle(a, b) || middle(b, a);
}
