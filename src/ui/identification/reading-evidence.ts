import type { Reading } from '../../journey/6-candidates/reading';
import type { Connection } from '../../standards/connections/connection';
import { tubesOf } from '../../standards/connections/tubes';
import type { Thread } from '../../standards/thread';
import { t } from '../language/language';
import type { Evidence } from './evidence';
import { readingText } from './reading-text';

/** A gauge leaf that fits is off by less than this share; the next leaf is several per cent away. */
const leafShare = 0.015;
/** What a bench caliper and a worn crest may add to a table's limits, mm. */
const slackMm = 0.2;

/** How each reading sits with one thread. The weighing is the core's; this only says which way. */
export function readingsOnThread(readings: readonly Reading[], thread: Thread): Evidence[] {
  return evidence(readings, (reading) => {
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
      default:
        return null;
    }
  });
}

/** How each reading sits with one end of one connection. */
export function readingsOnConnection(readings: readonly Reading[], end: Connection): Evidence[] {
  return evidence(readings, (reading) => {
    if (reading.kind === 'seat') {
      // An angle judged by eye speaks against no other angle.
      if (reading.byEye && reading.seat !== end.seat && end.seat.startsWith('cone-')) return null;
      return reading.seat === end.seat;
    }
    if (reading.kind !== 'tube-od') return null;
    const tubes = tubesOf(end);
    const { mm: read } = reading;
    // A swivel sits on tubes and hoses alike.
    if (read === null) return end.endType === 'swivel-nut' ? null : tubes.length === 0;
    return tubes.some((mm) => Math.abs(mm - read) < 2 * slackMm);
  });
}

const within = (mm: number, range: { readonly minMm: number; readonly maxMm: number }) =>
  mm > range.minMm - slackMm && mm < range.maxMm + slackMm;

function evidence(
  readings: readonly Reading[],
  fits: (reading: Reading) => boolean | null,
): Evidence[] {
  return readings.flatMap((reading) => {
    const fit = fits(reading);
    if (fit === null) return [];
    const text = t().identification.evidence.reading(readingText(reading));
    return [{ speaks: fit ? ('for' as const) : ('against' as const), text }];
  });
}
