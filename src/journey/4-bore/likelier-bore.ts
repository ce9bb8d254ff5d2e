import type { GreyImage } from '../../vision/grey-image';
import type { Vision } from '../../vision/vision';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { enough } from '../4-limbs/likeliest-thread';
import { lyingBore } from './lying-bore';
import type { PlacedBore } from './placed-bore';
import { standingBore } from './standing-bore';
import { withoutMarkers } from './without-markers';

/** Logarithm of the odds below which a bore is more likely wrong than right. */
const leastOdds = 0;

/** The bore that the photo shows, where that is likelier than the male thread found on it, whose odds are given as a
 *  logarithm; null where no male thread is in question. */
export function likelierBore(
  grey: GreyImage,
  reference: Reference,
  fitting: FoundFitting,
  vision: Vision,
  maleOdds: number | null,
): PlacedBore | null {
  // As among male threads: what convinces ends the search.
  if (maleOdds !== null && maleOdds > enough) return null;
  const plain = withoutMarkers(grey, reference);
  let best: PlacedBore | null = null;
  for (const bore of [standingBore, lyingBore]) {
    const found = bore(plain, reference, fitting, vision);
    if (found && (!best || found.seat.odds > best.seat.odds)) best = found;
  }
  return best && best.seat.odds > Math.max(leastOdds, maleOdds ?? leastOdds) ? best : null;
}
