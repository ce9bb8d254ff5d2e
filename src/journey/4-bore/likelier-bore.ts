import type { GreyImage } from '../../vision/grey-image';
import type { Vision } from '../../vision/vision';
import type { Reference } from '../2-reference/reference';
import type { FoundFitting } from '../3-find/find-fitting';
import { enough } from '../4-limbs/likeliest-thread';
import type { SeatedThread } from '../4-limbs/seat-thread';
import { lyingBore } from './lying-bore';
import type { PlacedBore } from './placed-bore';
import { standingBore } from './standing-bore';
import { withoutMarkers } from './without-markers';

/** Logarithm of the odds below which a bore is more likely wrong than right. */
const leastOdds = 0;

/** Logarithm of the odds of its limbs' radius from which a male thread that convinces is none of a bore's far wall:
 *  of photos-wide, nine of ten male threads lie beyond it and no female end. */
const surelyLimbs = 8;

/** The bore that the photo shows, where that is likelier than the male thread found on it; null where no male thread is
 *  in question. */
export function likelierBore(
  grey: GreyImage,
  reference: Reference,
  fitting: FoundFitting,
  vision: Vision,
  male: Pick<SeatedThread, 'odds' | 'radiusOdds'> | null,
): PlacedBore | null {
  // As among male threads: what convinces ends the search.
  if (male && male.odds > enough && male.radiusOdds > surelyLimbs) return null;
  const plain = withoutMarkers(grey, reference);
  let best: PlacedBore | null = null;
  for (const bore of [standingBore, lyingBore]) {
    const found = bore(plain, reference, fitting, vision);
    if (found && (!best || found.seat.odds > best.seat.odds)) best = found;
  }
  return best && best.seat.odds > Math.max(leastOdds, male?.odds ?? leastOdds) ? best : null;
}
