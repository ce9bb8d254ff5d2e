import type { Estimate } from '../../quantity/estimate';
import type { CrestRange } from '../../standards/thread';
import { resolutionMm } from '../6-candidates/reading-errors';
import { guardOf, type Verdict, verdictOn } from './verdict';
import { type CaliperPlace, caliperPlaces } from './wear-answers';
import type { WearReadings } from './wear-readings';

/** One standard uncertainty of a caliper laid across crests with care, before rounding, mm: ± 0.04 at 95 %
 *  (common practice; an instrument after ISO 13385-1 keeps to 0.03). */
const careful = 0.02;

export interface AtPlace {
  readonly place: CaliperPlace;
  readonly diameterMm: Estimate;
  readonly verdict: Verdict;
}

export interface CaliperFinding {
  readonly places: readonly AtPlace[];
  /** Of the worst place. Within only when all three were measured. */
  readonly verdict: Verdict;
  readonly smallest: AtPlace;
  /** Difference between the places, when it is more than the caliper's own. */
  readonly unevenMm: Estimate | null;
}

/** Null when no place was measured. */
export function judgeCaliper(
  { caliper }: Pick<WearReadings, 'caliper'>,
  range: CrestRange,
): CaliperFinding | null {
  const places = caliperPlaces.flatMap((place): AtPlace[] => {
    const reading = caliper[place];
    if (!reading) return [];
    // A rounded value lies anywhere within its step (JCGM 100:2008, 4.3.7).
    const u = Math.hypot(careful, resolutionMm(reading.text) / Math.sqrt(12));
    const diameterMm = { value: reading.mm, u };
    return [{ place, diameterMm, verdict: verdictOn(diameterMm, range) }];
  });
  const [smallest, ...others] = [...places].sort((a, b) => a.diameterMm.value - b.diameterMm.value);
  if (!smallest) return null;
  const largest = others.at(-1) ?? smallest;
  const apart = largest.diameterMm.value - smallest.diameterMm.value;
  const u = Math.hypot(largest.diameterMm.u, smallest.diameterMm.u);
  return {
    places,
    smallest,
    verdict: worst(smallest, largest, places, range),
    unevenMm: apart > 1.96 * u ? { value: apart, u } : null,
  };
}

function worst(
  smallest: AtPlace,
  largest: AtPlace,
  places: readonly AtPlace[],
  range: CrestRange,
): Verdict {
  const guard = guardOf(places.length as 1 | 2 | 3);
  const low = verdictOn(smallest.diameterMm, range, guard);
  if (low.state === 'below') return low;
  const high = verdictOn(largest.diameterMm, range, guard);
  if (high.state === 'above') return high;
  // Within needs every place on its own: there the doubts do not add up.
  const open = places.find(({ verdict }) => verdict.state !== 'within');
  if (open?.verdict.state === 'not-decidable') return open.verdict;
  if (open) return { state: 'not-decidable', why: 'near-limit' };
  return places.length === caliperPlaces.length
    ? { state: 'within' }
    : { state: 'not-decidable', why: 'places-missing' };
}
