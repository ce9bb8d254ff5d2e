import type { Estimate } from '../../quantity/estimate';
import type { Connection } from '../../standards/connections/connection';
import type { EndShows } from '../5-measurement/thread-measurement';
import { outwardConeDeg } from './cone-angle';
import { coneAngleChance, coneSeen, type MeasuredThread } from './photo-likelihood';
import type { Reading } from './reading';
import { type Seat, seats } from './reading-choices';

/** What a photo tells of an end's seat: an angle of its outline, and what it looks like. */
export type ShownEnd = Pick<MeasuredThread, 'noseHalfAngleDeg' | 'endShows'>;

interface EndEvidence {
  readonly photo: ShownEnd | null;
  readonly readings: readonly Reading[];
}

/** What an end with a known seat looks like. */
interface Looks {
  /** Half angle of the cone that stands out from it; null: none does. */
  readonly coneDeg: number | null;
  /** How often each kind lies between thread and hex. */
  readonly base: Readonly<Record<keyof EndShows['base'], number>>;
}

/** An O-ring is left off, or lost, on one used part in ten; half of the ends that seal on a washer or an edge have a
 *  shoulder narrower than their hex, some with a ring let into it, and so has one other end in fifty (judgement). */
const bases: Readonly<Partial<Record<Seat, Looks['base']>>> = {
  'o-ring-at-hex': { none: 0.1, 'o-ring': 0.9, shoulder: 0 },
  'flat-washer-face': { none: 0.45, 'o-ring': 0.05, shoulder: 0.5 },
};
const plainBase: Looks['base'] = { none: 0.98, 'o-ring': 0, shoulder: 0.02 };
/** What a listed thread carries beside its listed connections: plugs, studs on a bonded washer and bolts, mostly, which
 *  stand on a shoulder or on their hex (common practice); one in five is anything (judgement). */
const otherUse = {
  share: 0.8,
  looks: { coneDeg: null, base: { none: 0.5, 'o-ring': 0.05, shoulder: 0.45 } },
} as const;

/** Chance of what the photo shows of the end, given its connection ('other': a listed thread's other use; null: of a
 *  thread in no table). Whoever has denied what the photo shows has seen the part: of its end the photo says nothing
 *  more then. */
export function endLikelihood(
  { photo, readings }: EndEvidence,
  connection: Connection | 'other' | null,
): number {
  if (!photo || readings.some(({ kind }) => kind === 'other-seat')) return 1;
  if (connection !== 'other') return shownChance(photo, connection && looksOf(connection));
  const { share, looks } = otherUse;
  return share * shownChance(photo, looks) + (1 - share) * shownChance(photo, null);
}

/** Null: ends of which nobody has shown the program a picture, such as a nut that turns on its tube. */
function looksOf({ seat, coneOutwards, seatHalfAngleDeg, endTypes }: Connection): Looks | null {
  if (endTypes[0] === 'tube-nut' || endTypes[0] === 'swivel-nut') return null;
  return {
    coneDeg: coneOutwards ? seatHalfAngleDeg : null,
    base: bases[seat] ?? plainBase,
  };
}

/** Density of an angle, times the chances of both looks over those of an end of which nothing is known. */
function shownChance({ noseHalfAngleDeg, endShows }: ShownEnd, looks: Looks | null): number {
  const angle = noseHalfAngleDeg ? coneAngleChance(noseHalfAngleDeg, looks?.coneDeg ?? null) : 1;
  if (!endShows) {
    // That an angle was measured at all speaks for a cone; that none was says nothing.
    const seen = (looks?.coneDeg ?? null) === null ? coneSeen.other : coneSeen.cone;
    return noseHalfAngleDeg ? seen * angle : 1;
  }
  if (!looks) return angle;
  const { nose, base } = endShows;
  const kinds = ['none', 'o-ring', 'shoulder'] as const;
  const between = kinds.reduce((sum, kind) => sum + looks.base[kind] * base[kind], 0);
  return angle * (4 * noseShare(nose, looks.coneDeg)) * (3 * between);
}

/** Of a nose as it is; cones of other angles than the networks know look like either neighbour. */
function noseShare(nose: EndShows['nose'], coneDeg: number | null): number {
  switch (coneDeg) {
    case null:
      return nose.none;
    case 30:
      return nose['cone-30'];
    case 37:
      return nose['cone-37'];
    case 45:
      return nose['cone-45'];
    default:
      return (nose['cone-30'] + nose['cone-37'] + nose['cone-45']) / 3;
  }
}

const knownCones = [30, 37, 45] as const;
/** Of a cone that is one of the standard ones: as made (judgement). */
const uMadeDeg = 0.5;

/** Farther than this from a standard cone, in standard uncertainties, a measured angle is none of it (judgement). */
const sameConeU = 3;

/** Half angle of the cone ahead of the thread: by its outline, drawn to the standard cone that it looks like, if one is
 *  likelier than all others; where no outline tells, that cone's, with the spread of all of them about it. Null where
 *  neither tells. */
export function coneAngle({ noseHalfAngleDeg, endShows }: ShownEnd): Estimate | null {
  if (!endShows || endShows.nose.none > 0.5) return noseHalfAngleDeg;
  const shares = knownCones.map(
    (deg) =>
      endShows.nose[`cone-${deg}`] *
      (noseHalfAngleDeg ? coneAngleChance(noseHalfAngleDeg, deg) : 1),
  );
  const sum = shares.reduce((a, b) => a + b, 0);
  const most = Math.max(...shares);
  if (most <= sum / 2) return noseHalfAngleDeg;
  const made = knownCones[shares.indexOf(most)]!;
  const variance = knownCones.reduce(
    (total, deg, i) => total + (shares[i]! / sum) * (deg - made) ** 2,
    uMadeDeg ** 2,
  );
  const standard = { value: made, u: Math.sqrt(variance) };
  if (!noseHalfAngleDeg) return standard;
  const apart = Math.abs(noseHalfAngleDeg.value - made);
  if (apart > sameConeU * Math.hypot(noseHalfAngleDeg.u, uMadeDeg)) return noseHalfAngleDeg;
  const [mine, its] = [1 / noseHalfAngleDeg.u ** 2, 1 / standard.u ** 2];
  return {
    value: (mine * noseHalfAngleDeg.value + its * made) / (mine + its),
    u: 1 / Math.sqrt(mine + its),
  };
}

/** Probability of each seat by what the photo shows of the end alone, were all seats as common: what is no cone may
 *  have a chamfer that was taken for one. Null where nothing of it was seen. */
export function seatsSeen(shown: ShownEnd): Readonly<Record<Seat, number>> | null {
  if (!shown.noseHalfAngleDeg && !shown.endShows) return null;
  const weights = seats.map((seat) =>
    shownChance(shown, { coneDeg: outwardConeDeg(seat), base: bases[seat] ?? plainBase }),
  );
  const sum = weights.reduce((total, w) => total + w, 0);
  return Object.fromEntries(seats.map((seat, i) => [seat, weights[i]! / sum])) as Record<
    Seat,
    number
  >;
}

/** Of one seat, from which on a page says that the photo shows it. */
const claimed = 0.9;
/** Of a ring or a shoulder against the other kinds, from which on the end looks as though it had one. What they are
 *  trusted leaves either short of `claimed`. */
const looksSo = 0.9;

/** The seat that the photo shows plainly; null where it shows none, or leaves it open. Only one seat has a ring. */
export function claimedSeat(shown: ShownEnd): Seat | null {
  const seen = seatsSeen(shown);
  const seat = seen && seats.find((one) => seen[one] >= claimed);
  if (seat) return seat;
  return shown.endShows && shown.endShows.base['o-ring'] > looksSo ? 'o-ring-at-hex' : null;
}

/** The seat that is drawn on the photo: the claimed one, or a shoulder, which several seats have. */
export function seatToDraw(shown: ShownEnd): Seat | null {
  const shoulder = shown.endShows && shown.endShows.base.shoulder > looksSo;
  return claimedSeat(shown) ?? (shoulder ? 'flat-washer-face' : null);
}
