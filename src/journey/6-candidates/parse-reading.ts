import { ok, type Result, refuse } from '../../quantity/result';
import { parseLength, parsePitch } from '../../quantity/units';
import { coneAngleDeg } from './cone-angle';
import type { Reading } from './reading';
import {
  askableKinds,
  endTypes,
  type GaugedCone,
  gaugedCones,
  marks,
  seats,
} from './reading-choices';

type ReadingRefusal =
  | 'unknown-reading'
  | 'not-a-length'
  | 'not-a-pitch'
  | 'not-a-choice'
  | 'impossible-value';

type Parsed = Result<Reading, ReadingRefusal>;

/** 'KIND=VALUE' as typed on the command line or stored in a sheet, e.g. 'pitch-gauge=16tpi',
 *  'caliper-od=1 7/16in', 'turns-over=10 in 15.9mm', 'seat=cone-37' (by eye), 'seat-gauge=37',
 *  'cone-size=9.2-5.4 over 2.5mm', 'cannot-tell=seat'. */
export function parseReading(text: string): Parsed {
  const at = text.indexOf('=');
  const kind = text.slice(0, Math.max(at, 0)).trim().toLowerCase();
  const value = text.slice(at + 1).trim();
  const word = value.toLowerCase();
  switch (kind) {
    case 'pitch-gauge': {
      const pitch = parsePitch(value);
      if (!pitch.ok) return pitch;
      return plausiblePitch(pitch.value, { kind, pitchMm: pitch.value, text: value });
    }
    case 'turns-over':
      return turnsOver(value);
    case 'caliper-od':
    case 'caliper-id':
    case 'rule-od':
    case 'flange-thickness':
    case 'bolt-spacing':
    case 'hex':
    case 'nose-od':
    case 'tube-od': {
      if (kind === 'tube-od' && word === 'none') return ok({ kind, mm: null, text: 'none' });
      const length = parseLength(value);
      if (!length.ok) return length;
      if (length.value >= 1 && length.value <= 300)
        return ok({ kind, mm: length.value, text: value });
      return refuse('impossible-value', 'Check the length: threads here are 1 to 300 mm wide.');
    }
    case 'seat': {
      const [, name = word, how] = /^(.*\S)\s+by[ -](gauge|eye)$/.exec(word) ?? [];
      if (how === 'gauge') return seatGauge(name);
      return choice(seats, name, 'seat', (seat) => ({ kind, seat, text: seat }));
    }
    case 'other-seat':
      return choice(seats, word, 'seat', (seat) => ({ kind, seat, text: seat }));
    case 'seat-gauge':
      return seatGauge(word);
    case 'cone-size':
      return coneSize(value);
    case 'end-type':
      return choice(endTypes, word, 'end type', (type) => ({ kind, type, text: type }));
    case 'flank': {
      const degrees = /^(55|60)\s*(?:°|deg)?$/.exec(word)?.[1];
      if (degrees) return ok({ kind, flankDeg: degrees === '55' ? 55 : 60, text: degrees });
      return refuse('not-a-choice', 'Give the thread angle as 55 or 60.');
    }
    case 'crest-form':
      return choice(['rounded', 'flat'], word, 'crest form', (crest) => ({
        kind,
        crest,
        text: crest,
      }));
    case 'taper':
      return choice(['tapered', 'straight'], word, 'taper', (taper) => ({
        kind,
        taper,
        text: taper,
      }));
    case 'marking':
      return choice(marks, word, 'marking', (mark) => ({ kind, mark, text: mark }));
    case 'hand':
      return choice(['right', 'left'], word, 'hand', (hand) => ({ kind, hand, text: hand }));
    case 'cannot-tell':
      return choice(askableKinds, word, 'reading', (of) => ({ kind, of, text: of }));
    default:
      return refuse(
        'unknown-reading',
        `Give the reading as one of ${askableKinds.join(', ')}, as in caliper-od=17.2mm, or cannot-tell=KIND.`,
      );
  }
}

function choice<T extends string>(
  words: readonly T[],
  word: string,
  what: string,
  made: (word: T) => Reading,
): Parsed {
  const found = words.find((one) => one === word);
  if (found) return ok(made(found));
  return refuse('not-a-choice', `Give the ${what} as one of ${words.join(', ')}.`);
}

function plausiblePitch(pitchMm: number, reading: Reading): Parsed {
  if (pitchMm >= 0.2 && pitchMm <= 13) return ok(reading);
  return refuse('impossible-value', 'Check the pitch: blades run from 0.2 mm to 2 tpi.');
}

function seatGauge(word: string): Parsed {
  const degrees = word.replace(/^cone-/, '').replace(/\s*(°|deg)$/, '');
  const cone = gaugedCones.find((one) => one === `cone-${degrees}` || one === degrees);
  if (cone) return ok({ kind: 'seat-gauge', cone, text: degreesOf(cone) });
  const known = gaugedCones.map(degreesOf).join(', ');
  return refuse('not-a-choice', `Give the seat gauge that fits as one of ${known}.`);
}

export const degreesOf = (cone: GaugedCone): string => cone.replace('cone-', '');

/** '9.2-5.4 over 2.5mm', '1-5/16 to 3/4 over 1/4in', with the unit behind the last or behind each. */
function coneSize(value: string): Parsed {
  const advice = 'Write the cone as wide-narrow over length, like 9.2-5.4 over 2.5mm.';
  const match =
    /^(.+?)\s+to\s+(.+?)\s+over\s+(.+?)(mm|in|"|″)?$/i.exec(value) ??
    /^([^-–]+)[-–]([^-–]+)\s+over\s+(.+?)(mm|in|"|″)?$/i.exec(value);
  if (!match) return refuse('not-a-length', advice);
  const unit = match[4] ?? '';
  const lengths = match.slice(1, 4).map((text) => {
    const own = text!.trim();
    return parseLength(/(mm|in|"|″)$/i.test(own) ? own : `${own}${unit}`);
  });
  const [wide, narrow, over] = lengths;
  if (!wide?.ok || !narrow?.ok || !over?.ok) return refuse('not-a-length', advice);
  const angleDeg = coneAngleDeg(wide.value, narrow.value, over.value);
  if (!(angleDeg > 5 && angleDeg < 80) || wide.value > 300) {
    return refuse('impossible-value', 'Check the cone: the first diameter is the wide end.');
  }
  return ok({
    kind: 'cone-size',
    wideMm: wide.value,
    narrowMm: narrow.value,
    overMm: over.value,
    text: value,
  });
}

/** '10 in 15.9mm', '10/15.9mm', '8 = 1/2in'. */
function turnsOver(value: string): Parsed {
  const match = /^(\d+(?:[.,]5)?)\s*(?:turns?\s*)?(?:in\b|over\b|\/|=|:)\s*(.+)$/i.exec(value);
  const length = match && parseLength(match[2]!);
  if (!length)
    return refuse('not-a-length', 'Write how many turns in which length, like 10 in 15.9mm.');
  if (!length.ok) return length;
  const turns = Number(match[1]!.replace(',', '.'));
  if (turns < 2 || turns > 60)
    return refuse('impossible-value', 'Count at least two turns, from crest to crest.');
  return plausiblePitch(length.value / turns, {
    kind: 'turns-over',
    turns,
    overMm: length.value,
    text: `${match[1]} in ${match[2]!.trim()}`,
  });
}
