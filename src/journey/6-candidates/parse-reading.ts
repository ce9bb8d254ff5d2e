import { ok, type Result, refuse } from '../../quantity/result';
import { parseLength, parsePitch } from '../../quantity/units';
import { type Reading, seats } from './reading';

const kinds =
  'pitch-gauge, caliper-od, caliper-id, rule-od, tube-od, seat, flank or taper, as in caliper-od=17.2mm';

type ReadingRefusal =
  | 'unknown-reading'
  | 'not-a-length'
  | 'not-a-pitch'
  | 'not-a-choice'
  | 'impossible-value';

/** 'KIND=VALUE' as typed on the command line or stored in a sheet, e.g. 'pitch-gauge=16tpi',
 *  'caliper-od=1 7/16in', 'seat=cone-37'. */
export function parseReading(text: string): Result<Reading, ReadingRefusal> {
  const at = text.indexOf('=');
  const kind = text.slice(0, Math.max(at, 0)).trim().toLowerCase();
  const value = text.slice(at + 1).trim();
  switch (kind) {
    case 'pitch-gauge': {
      const pitch = parsePitch(value);
      if (!pitch.ok) return pitch;
      if (pitch.value >= 0.2 && pitch.value <= 13)
        return ok({ kind, pitchMm: pitch.value, text: value });
      return refuse('impossible-value', 'Check the pitch: blades run from 0.2 mm to 2 tpi.');
    }
    case 'caliper-od':
    case 'caliper-id':
    case 'rule-od':
    case 'tube-od': {
      if (kind === 'tube-od' && /^none$/i.test(value)) return ok({ kind, mm: null, text: 'none' });
      const length = parseLength(value);
      if (!length.ok) return length;
      if (length.value >= 1 && length.value <= 300)
        return ok({ kind, mm: length.value, text: value });
      return refuse('impossible-value', 'Check the length: threads here are 1 to 300 mm wide.');
    }
    case 'seat': {
      const [name, how, ...rest] = value.toLowerCase().split(/\s+/);
      const seat = seats.find((s) => s === name);
      const known = how === undefined || how === 'by-eye' || how === 'by-gauge';
      if (seat && known && rest.length === 0) {
        return how === 'by-eye'
          ? ok({ kind, seat, byEye: true, text: `${seat} by-eye` })
          : ok({ kind, seat, text: seat });
      }
      return refuse(
        'not-a-choice',
        `Give the seat as one of ${seats.join(', ')}, with by-eye or by-gauge behind it if you like.`,
      );
    }
    case 'flank': {
      const degrees = /^(55|60)\s*(?:°|deg)?$/i.exec(value)?.[1];
      if (degrees) return ok({ kind, flankDeg: degrees === '55' ? 55 : 60, text: degrees });
      return refuse('not-a-choice', 'Give the thread angle as 55 or 60.');
    }
    case 'taper': {
      const taper = value.toLowerCase();
      if (taper === 'tapered' || taper === 'straight') return ok({ kind, taper, text: taper });
      return refuse('not-a-choice', 'Give the taper as tapered or straight.');
    }
    default:
      return refuse('unknown-reading', `Give the reading as one of ${kinds}.`);
  }
}
