import { ok, type Result, refuse } from '../../quantity/result';
import { mmPerInch } from '../../standards/inch-fraction';
import { type Reading, seats } from './reading';

const kinds =
  'pitch-gauge, caliper-od, caliper-id, rule-od, tube-od, seat, flank or taper, as in caliper-od=17.2mm';

type ReadingRefusal = 'unknown-reading' | 'unreadable-value' | 'impossible-value';

/** 'KIND=VALUE' as typed on the command line or stored in a sheet, e.g. 'pitch-gauge=16tpi',
 *  'caliper-od=1 7/16in', 'seat=cone-37'. Decimal comma and ″ or " for inch are accepted. */
export function parseReading(text: string): Result<Reading, ReadingRefusal> {
  const at = text.indexOf('=');
  const kind = text.slice(0, Math.max(at, 0)).trim().toLowerCase();
  const value = text.slice(at + 1).trim();
  switch (kind) {
    case 'pitch-gauge':
      return parsePitch(value);
    case 'caliper-od':
    case 'caliper-id':
    case 'rule-od':
    case 'tube-od': {
      const length = parseLength(value);
      if (!length.ok) return length;
      return ok({ kind, mm: length.value.mm, text: value });
    }
    case 'seat': {
      const seat = seats.find((s) => s === value.toLowerCase());
      if (seat) return ok({ kind, seat, text: seat });
      return refuse('unreadable-value', `Give the seat as one of ${seats.join(', ')}.`);
    }
    case 'flank': {
      const degrees = /^(55|60)\s*(?:°|deg)?$/i.exec(value)?.[1];
      if (degrees) return ok({ kind, flankDeg: degrees === '55' ? 55 : 60, text: degrees });
      return refuse('unreadable-value', 'Give the thread angle as 55 or 60.');
    }
    case 'taper': {
      const taper = value.toLowerCase();
      if (taper === 'tapered' || taper === 'straight') return ok({ kind, taper, text: taper });
      return refuse('unreadable-value', 'Give the taper as tapered or straight.');
    }
    default:
      return refuse('unknown-reading', `Give the reading as one of ${kinds}.`);
  }
}

/** A length as benches write it: '17.2mm', '0.677in', '11/16in', '1 7/16"', '1-7/16 in'.
 *  `resolutionMm` is the step between neighbouring values written that way. */
export function parseLength(
  value: string,
): Result<{ mm: number; resolutionMm: number }, 'unreadable-value' | 'impossible-value'> {
  const match = /^(.*?)\s*(mm|in|inch|"|″|'')$/i.exec(value.trim());
  if (!match) {
    return refuse(
      'unreadable-value',
      'Give the length with its unit, as 17.2mm, 0.677in or 11/16in.',
    );
  }
  const unitMm = match[2]!.toLowerCase() === 'mm' ? 1 : mmPerInch;
  const number = parseNumber(match[1]!);
  if (number === null) {
    return refuse(
      'unreadable-value',
      'Give the length as a decimal or a fraction, as 17.2mm or 1 7/16in.',
    );
  }
  const mm = number.value * unitMm;
  if (!(mm >= 1 && mm <= 300)) {
    return refuse(
      'impossible-value',
      'Check the length: threads here are between 1 mm and 300 mm wide.',
    );
  }
  return ok({ mm, resolutionMm: number.step * unitMm });
}

function parsePitch(value: string): Result<Reading, ReadingRefusal> {
  const match = /^(.*?)\s*(tpi|mm)$/i.exec(value);
  const number = match ? parseNumber(match[1]!) : null;
  if (!match || number === null) {
    return refuse('unreadable-value', 'Give the blade that fits with its unit, as 16tpi or 1.5mm.');
  }
  const pitchMm = match[2]!.toLowerCase() === 'tpi' ? mmPerInch / number.value : number.value;
  if (!(pitchMm >= 0.2 && pitchMm <= 13)) {
    return refuse(
      'impossible-value',
      'Check the pitch: blades run from 0.2 mm to 2 threads per inch.',
    );
  }
  return ok({ kind: 'pitch-gauge', pitchMm, text: value });
}

/** Decimal (point or comma), fraction or mixed fraction; `step` is the last place or 1/denominator. */
function parseNumber(text: string): { value: number; step: number } | null {
  const decimal = /^(\d{1,4})?(?:[.,](\d{1,6}))?$/.exec(text);
  if (decimal && text !== '') {
    const places = decimal[2]?.length ?? 0;
    return { value: Number(`${decimal[1] ?? 0}.${decimal[2] ?? 0}`), step: 10 ** -places };
  }
  const fraction = /^(?:(\d{1,2})(?:\s+|\s*-\s*))?(\d{1,3})\s*\/\s*(\d{1,3})$/.exec(text);
  if (!fraction) return null;
  const [top, bottom] = [Number(fraction[2]), Number(fraction[3])];
  if (bottom === 0 || (fraction[1] !== undefined && top >= bottom)) return null;
  return { value: Number(fraction[1] ?? 0) + top / bottom, step: 1 / bottom };
}
