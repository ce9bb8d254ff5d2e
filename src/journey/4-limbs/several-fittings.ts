import { refuse } from '../../quantity/result';
import type { GreyImage } from '../../vision/grey-image';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { middleOf, photoAt } from '../4-thread-signal/axis-frame';
import { findThreads } from './find-threads';
import type { SeatedThread } from './seat-thread';
import { enough, threadSearch } from './thread-search';

export const severalFittings = refuse(
  'several-fittings' as const,
  'More than one thing lies in the window: shoot one fitting at a time.',
);

const seatsPerPart = 3;

/** Whether another of the pieces in the window has a thread of its own: one that convinces, beside the axis of the thread
 *  that was seated. On that axis it is the same part's other end. */
export function isAnotherThread(
  grey: GreyImage,
  reference: Reference,
  { pieces }: FoundFitting,
  seat: SeatedThread,
): boolean {
  const { camera } = reference;
  return pieces.some((part) => {
    const found = threadSearch(grey, camera, findThreads(grey, reference, [part]))(seatsPerPart);
    return found !== null && found.odds > enough && isAside(camera, found, seat);
  });
}

/** Whether the middle of a thread lies beside another's axis, as the photo shows them. */
function isAside(
  camera: Reference['camera'],
  one: SeatedThread,
  { frame, zone, crests }: SeatedThread,
): boolean {
  const [x, y] = photoAt(camera, one.frame, middleOf(one.zone), 0);
  const [ax, ay] = photoAt(camera, frame, zone.fromS, 0);
  const [bx, by] = photoAt(camera, frame, zone.toS, 0);
  const [rx, ry] = photoAt(camera, frame, zone.fromS, crests.radiusMm);
  const aside =
    Math.abs((x - ax) * (by - ay) - (y - ay) * (bx - ax)) / Math.hypot(bx - ax, by - ay);
  return aside > Math.hypot(rx - ax, ry - ay);
}
