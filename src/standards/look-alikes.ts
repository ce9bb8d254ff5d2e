import type { Connection } from './connections/connection';
import type { Thread } from './thread';

/** Look-alikes are generated from the tables: every pair that a measurement of a given uncertainty
 *  cannot tell apart, what differs, and what would tell. */
export interface Uncertainty {
  /** Relative, of pitch and of diameter alone, and of the scale that both share. */
  readonly pitch: number;
  readonly diameter: number;
  readonly scale: number;
}

/** Male ends: what tells two threads apart at the bench. */
export type ThreadObservation = 'pitch-gauge' | 'caliper-od' | 'taper' | 'flank';

export interface LookAlikes {
  readonly threads: readonly [Thread, Thread];
  /** Second against first, relative. */
  readonly pitchDifference: number;
  /** Between the nearest crests of parts made within limits, mm; 0 where the ranges meet. */
  readonly crestGapMm: number;
  /** How far apart they are, in standard uncertainties. */
  readonly distance: number;
  readonly separatedBy: readonly ThreadObservation[];
}

/** Below this many standard uncertainties two threads are not surely told apart. */
const separable = 4;

export function lookAlikes(threads: readonly Thread[], u: Uncertainty): LookAlikes[] {
  const sorted = threads.filter((t) => t.separable).toSorted((a, b) => a.pitchMm - b.pitchMm);
  const farthest = Math.exp(separable * Math.hypot(u.pitch, u.scale));
  const found: LookAlikes[] = [];
  for (let i = 0; i < sorted.length; i++) {
    for (let j = i + 1; j < sorted.length; j++) {
      const [a, b] = [sorted[i]!, sorted[j]!];
      if (b.pitchMm / a.pitchMm > farthest) break;
      const distance = distanceBetween(a, b, u);
      if (distance >= separable) continue;
      found.push({
        threads: [a, b],
        pitchDifference: b.pitchMm / a.pitchMm - 1,
        crestGapMm: gap(crestRange(a), crestRange(b)),
        distance,
        separatedBy: threadObservations(a, b),
      });
    }
  }
  return found.sort((x, y) => x.distance - y.distance);
}

/** Crest diameters that a photo or caliper may meet: on a taper, anywhere along it. */
function crestRange({ crests, taper, taperPlanes }: Thread): { low: number; high: number } {
  if (taperPlanes === null) return { low: crests.minMm, high: crests.maxMm };
  const half = (crests.maxMm - crests.minMm) / 2;
  const small = taperPlanes.majorAtSmallEndMm;
  return { low: small - half, high: small + half + taper * taperPlanes.usefulLengthMm };
}

type Range = { low: number; high: number };

function gap(a: Range, b: Range): number {
  return Math.max(0, b.low - a.high, a.low - b.high);
}

/** Mahalanobis distance in (ln pitch, ln diameter) between the nearest pair of made parts. */
function distanceBetween(a: Thread, b: Thread, u: Uncertainty): number {
  const pitch = Math.log(b.pitchMm / a.pitchMm);
  const [ra, rb] = [crestRange(a), crestRange(b)];
  const low = Math.log(rb.low / ra.high);
  const high = Math.log(rb.high / ra.low);
  const varPitch = u.pitch ** 2 + u.scale ** 2;
  const shared = u.scale ** 2;
  const varDiameter = u.diameter ** 2 + shared;
  // Given the pitch difference, the diameter difference that fits best, kept to what can be.
  const diameter = Math.min(high, Math.max(low, (pitch * shared) / varPitch));
  const rest = diameter - (pitch * shared) / varPitch;
  return Math.hypot(
    pitch / Math.sqrt(varPitch),
    rest / Math.sqrt(varDiameter - shared ** 2 / varPitch),
  );
}

/** Turns a blade engages, and the share of a pitch at which it is seen to rock. */
const gauge = { turns: 7, rocks: 0.25 };
/** A caliper, with wear and handling, tells crests this far apart. */
const caliperMm = 0.3;

function threadObservations(a: Thread, b: Thread): ThreadObservation[] {
  const observations: ThreadObservation[] = [];
  const rocking = (gauge.turns * Math.abs(b.pitchMm - a.pitchMm)) / a.pitchMm;
  if (rocking > gauge.rocks) observations.push('pitch-gauge');
  if (gap(crestRange(a), crestRange(b)) > caliperMm) observations.push('caliper-od');
  if (a.taper !== b.taper) observations.push('taper');
  if (a.flankAngleDeg !== b.flankAngleDeg) observations.push('flank');
  return observations;
}

/** Ends that screw together, or pass for each other, without being the same connection. */
export interface SharedThread {
  readonly connections: readonly [Connection, Connection];
  /** Null: nothing but the maker's marks. */
  readonly separatedBy: 'seat' | 'tube-od' | null;
}

/** Connections of one end (male or female) on the same thread, forms of one family apart. */
export function sharedThreads(
  connections: readonly Connection[],
  end: 'male' | 'female',
): SharedThread[] {
  const ends = connections.filter((c) => c.end === end && c.thread !== null);
  return ends.flatMap((a, i) =>
    ends
      .slice(i + 1)
      .filter((b) => a.thread === b.thread && (a.family !== b.family || a.size !== b.size))
      .map((b): SharedThread => {
        const bySeat = a.seat !== b.seat;
        const byTube = a.tubeOdMm !== b.tubeOdMm;
        const separatedBy = bySeat ? 'seat' : byTube ? 'tube-od' : null;
        return { connections: [a, b], separatedBy };
      }),
  );
}
