import type { Estimate } from '../../quantity/estimate';
import type { Connection } from '../../standards/connections/connection';
import { type EndLook, type EndLooks, endLooks } from '../5-measurement/thread-measurement';
import { coneAngleChance, coneSeen, type MeasuredThread } from './photo-likelihood';
import { type Seat, seats } from './reading';
import { shownSeats } from './reading-likelihood';

/** What a male end with this seat looks like beside its thread, by share. A mouth's cone, a face's
 *  groove and a thread that seals by itself leave a plain outline. A ring may have been lost, a cone
 *  be worn; a sealing face is turned smaller than the hex or is the hex's own face (common practice;
 *  the shares are judgement). What is left of each row is spread over all looks: no part is impossible. */
const usual: Readonly<Record<Seat, Readonly<Partial<Record<EndLook, number>>>>> = {
  'cone-30': { 'cone-30': 0.995 },
  'cone-37': { 'cone-37': 0.995 },
  'cone-45': { 'cone-45': 0.995 },
  'o-ring-at-hex': { 'o-ring-at-hex': 0.965, plain: 0.03 },
  'flat-washer-face': { shoulder: 0.6, plain: 0.395 },
  'flat-face-o-ring': { plain: 0.975, shoulder: 0.02 },
  'cone-24': { plain: 0.975, shoulder: 0.02 },
  'cone-60': { plain: 0.975, shoulder: 0.02 },
  'cone-inverted': { plain: 0.9, 'cone-45': 0.03, shoulder: 0.02 },
  none: { plain: 0.975, shoulder: 0.02 },
};

const lookShares: Readonly<Record<Seat, EndLooks>> = Object.fromEntries(
  seats.map((seat) => {
    const row = usual[seat];
    const left = 1 - endLooks.reduce((sum, look) => sum + (row[look] ?? 0), 0);
    const each = endLooks.map((look) => [look, (row[look] ?? 0) + left / endLooks.length]);
    return [seat, Object.fromEntries(each)];
  }),
) as Record<Seat, EndLooks>;

/** What the photo shows, with the cone's angle where one was measured: what is no cone may still have a
 *  chamfer that was taken for one. Without looks, that an angle was measured at all speaks for a cone. */
function withAngle({ looks, noseHalfAngleDeg: angle }: SeenEnd): EndLooks | null {
  if (!angle) return looks ?? null;
  const before = (look: EndLook) =>
    looks ? looks[look] : coneOf(look) === null ? coneSeen.other : coneSeen.cone;
  const weights = endLooks.map((look) => before(look) * coneAngleChance(angle, coneOf(look)));
  const sum = weights.reduce((total, w) => total + w, 0);
  return Object.fromEntries(endLooks.map((look, i) => [look, weights[i]! / sum])) as EndShares;
}

type SeenEnd = Pick<MeasuredThread, 'looks' | 'noseHalfAngleDeg'>;
type EndShares = Record<EndLook, number>;

const coneOf = (look: EndLook): number | null =>
  look.startsWith('cone-') ? Number(look.slice('cone-'.length)) : null;

/** Chance of what the photo shows, given a seat, up to a factor that all seats share. */
function ofSeat(looks: EndLooks, seat: Seat): number {
  const shares = lookShares[seat];
  return endLooks.reduce((sum, look) => sum + looks[look] * shares[look], 0);
}

/** The same for a connection's male end, whose seats vary; null is an end in no table. Null where the photo
 *  has not been looked at so. */
export function looksLikelihood(seen: SeenEnd, connection: Connection | null): number | null {
  const looks = seen.looks && withAngle(seen);
  if (!looks) return null;
  return shownSeats(connection).reduce(
    (sum, [seat, share]) => sum + share * ofSeat(looks, seat),
    0,
  );
}

/** Probability of each seat from the photo alone, were all seats as common. */
export function seatsSeen(seen: SeenEnd): Record<Seat, number> | null {
  const looks = withAngle(seen);
  if (!looks) return null;
  const weights = seats.map((seat) => ofSeat(looks, seat));
  const sum = weights.reduce((total, w) => total + w, 0);
  return Object.fromEntries(seats.map((seat, i) => [seat, weights[i]! / sum])) as Record<
    Seat,
    number
  >;
}

/** Of one look, from which on a page says that the photo shows it. */
const claimed = 0.9;

/** The seat that the photo shows plainly; null where it shows none, or leaves it open. */
export function claimedSeat(seen: SeenEnd): Seat | null {
  const looks = withAngle(seen);
  const found = looks && endLooks.find((look) => looks[look] >= claimed);
  if (!found || found === 'plain') return null;
  return found === 'shoulder' ? 'flat-washer-face' : found;
}

/** The look that is likelier than all others together. */
export function likeliestLook(seen: SeenEnd): EndLook | null {
  const looks = withAngle(seen);
  return (looks && endLooks.find((look) => looks[look] > 0.5)) ?? null;
}

/** Of the angle between cone and axis as it is made, degrees (judgement). */
const uMadeDeg = 0.7;
/** Cones are 7° and 8° apart: less sure than this, an angle names none of them. */
const uMostDeg = 2;

/** Half angle of the cone ahead of the thread: measured along its outline or, where that is not resolved, the
 *  mean of the cones there are by how likely each is. Null where no cone is seen, or which one is open. */
export function coneAngleSeen(seen: SeenEnd): Estimate | null {
  if (seen.noseHalfAngleDeg || !showsCone(seen)) return seen.noseHalfAngleDeg;
  const cones = endLooks.flatMap((look) => {
    const deg = coneOf(look);
    return deg === null ? [] : [{ deg, share: seen.looks?.[look] ?? 0 }];
  });
  const sum = cones.reduce((total, { share }) => total + share, 0);
  const value = cones.reduce((total, { deg, share }) => total + (share * deg) / sum, 0);
  const square = cones.reduce(
    (total, { deg, share }) => total + (share * (deg - value) ** 2) / sum,
    0,
  );
  const u = Math.hypot(Math.sqrt(square), uMadeDeg);
  return u > uMostDeg ? null : { value, u };
}

/** Whether the photo shows some cone, though not which. */
export function showsCone(seen: SeenEnd): boolean {
  const looks = withAngle(seen);
  if (!looks) return false;
  return (
    endLooks.reduce((sum, look) => sum + (coneOf(look) === null ? 0 : looks[look]), 0) >= claimed
  );
}
