import type { Reading } from '../../journey/6-candidates/reading';
import type { Seat } from '../../journey/6-candidates/reading-choices';
import { noseMm, shownSeats, tubesOf } from '../../journey/6-candidates/reading-likelihood';
import type { Connection } from '../../standards/connections/connection';
import type { Thread } from '../../standards/thread';
import { t } from '../language/language';
import type { Evidence } from './evidence';
import { type End, readingText } from './reading-text';

/** A gauge leaf that fits is off by less than this share; the next leaf is several per cent away. */
const leafShare = 0.015;
/** What counting against a rule may be off by. */
const countedShare = 0.04;
/** What a bench caliper and a worn crest may add to a table's limits, mm. */
const slackMm = 0.2;
/** Noses of one size differ by maker. */
const noseSlackMm = 0.9;

/** How each reading sits with one thread. The weighing is the core's; this only says which way. */
export function readingsOnThread(
  readings: readonly Reading[],
  thread: Thread,
  end: End,
): Evidence[] {
  return evidence(readings, end, (reading) => {
    switch (reading.kind) {
      case 'pitch-gauge':
        return Math.abs(reading.pitchMm / thread.pitchMm - 1) < leafShare;
      case 'caliper-od':
      case 'rule-od':
        return thread.taper > 0 ? null : within(reading.mm, thread.crests);
      case 'caliper-id':
        return thread.taper > 0 ? null : within(reading.mm, thread.bore);
      case 'taper':
        return (reading.taper === 'tapered') === thread.taper > 0;
      case 'flank':
        return reading.flankDeg === thread.flankAngleDeg;
      case 'turns-over':
        return Math.abs(reading.overMm / reading.turns / thread.pitchMm - 1) < countedShare;
      case 'crest-form':
        return (reading.crest === 'rounded') === (thread.flankAngleDeg === 55);
      default:
        return null;
    }
  });
}

/** How each reading sits with one end of one connection. */
export function readingsOnConnection(readings: readonly Reading[], end: Connection): Evidence[] {
  return evidence(readings, end.end, (reading) => {
    if (reading.kind === 'seat') return fitsSeat(reading.seat, end);
    if (reading.kind === 'seat-gauge') {
      return shownSeats(end).some(
        ([seat]) => seat === reading.cone || (reading.cone === 'none' && !/^cone-\d/.test(seat)),
      );
    }
    if (reading.kind === 'end-type') return end.endTypes.includes(reading.type);
    if (reading.kind === 'nose-od') {
      const nose = noseMm(end);
      return nose === null ? null : Math.abs(nose - reading.mm) < noseSlackMm;
    }
    if (reading.kind !== 'tube-od') return null;
    const tubes = tubesOf(end);
    const { mm: read } = reading;
    // Hose ends take none, and sit under the same nuts.
    if (read === null)
      return tubes.length === 0 || (end.endTypes.includes('swivel-nut') ? null : false);
    return tubes.some((mm) => Math.abs(mm - read) < 2 * slackMm);
  });
}

/** By eye, flares look alike: a neighbour's name speaks neither way. */
function fitsSeat(seen: Seat, end: Connection): boolean | null {
  const shown = shownSeats(end).map(([seat]) => seat);
  if (shown.includes(seen)) return true;
  const alike = /^cone-(30|37|45)$/;
  return alike.test(seen) && shown.some((seat) => alike.test(seat)) ? null : false;
}

const within = (mm: number, range: { readonly minMm: number; readonly maxMm: number }) =>
  mm > range.minMm - slackMm && mm < range.maxMm + slackMm;

function evidence(
  readings: readonly Reading[],
  end: End,
  fits: (reading: Reading) => boolean | null,
): Evidence[] {
  return readings.flatMap((reading) => {
    const fit = fits(reading);
    if (fit === null) return [];
    const text = t().identification.evidence.reading(readingText(reading, end));
    return [{ speaks: fit ? ('for' as const) : ('against' as const), text }];
  });
}
