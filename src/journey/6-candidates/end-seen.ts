import type { Estimate } from '../../quantity/estimate';
import type { Connection } from '../../standards/connections/connection';
import { outwardConeDeg } from './cone-angle';
import { coneAngleChance, coneSeen, type MeasuredThread, noseLikelihood } from './photo-likelihood';
import type { Reading } from './reading';
import { type Seat, seats } from './reading-choices';

interface EndEvidence {
  readonly photo: Pick<MeasuredThread, 'noseHalfAngleDeg'> | null;
  readonly readings: readonly Reading[];
}

/** Chance of what the photo shows of the end, given its connection (null: in no table). Whoever has denied
 *  what the photo shows has seen the part: of its end the photo says nothing more then. */
export function endLikelihood(
  { photo, readings }: EndEvidence,
  connection: Connection | null,
): number {
  if (!photo || readings.some(({ kind }) => kind === 'other-seat')) return 1;
  return noseLikelihood(photo.noseHalfAngleDeg, connection);
}

/** Probability of each seat from the half angle of a cone ahead of the thread, were all seats as common: what is
 *  no cone may have a chamfer that was taken for one. Null where no angle was measured. */
export function seatsSeen(halfAngleDeg: Estimate | null): Readonly<Record<Seat, number>> | null {
  if (!halfAngleDeg) return null;
  const weights = seats.map((seat) => {
    const cone = outwardConeDeg(seat);
    const seen = cone === null ? coneSeen.other : coneSeen.cone;
    return seen * coneAngleChance(halfAngleDeg, cone);
  });
  const sum = weights.reduce((total, w) => total + w, 0);
  return Object.fromEntries(seats.map((seat, i) => [seat, weights[i]! / sum])) as Record<
    Seat,
    number
  >;
}

/** Of one seat, from which on a page says that the photo shows it. */
const claimed = 0.9;

/** The seat that the photo shows plainly; null where it shows none, or leaves it open. */
export function claimedSeat(halfAngleDeg: Estimate | null): Seat | null {
  const seen = seatsSeen(halfAngleDeg);
  return (seen && seats.find((seat) => seen[seat] >= claimed)) ?? null;
}
