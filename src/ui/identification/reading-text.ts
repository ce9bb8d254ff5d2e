import type { Reading, ReadingKind } from '../../journey/6-candidates/reading';
import {
  type AskableKind,
  endTypes,
  gaugedCones,
  marks,
  type Seat,
  seats,
} from '../../journey/6-candidates/reading-choices';
import { language, t } from '../language/language';
import type { ValueKind } from './bench-input';

/** Which end is looked at; null counts as male, which a photo shows. */
export type End = 'male' | 'female' | null;

interface KindWords {
  readonly name: string;
  readonly title: string;
  readonly how: string;
}

/** What a reading is called and how it is taken on this end. */
export function kindWords(kind: AskableKind, end: End = 'male'): KindWords {
  const { reading, trade } = t();
  const known: Readonly<Record<string, KindWords>> = { ...reading.kinds, ...trade.kinds };
  const female: Readonly<Record<string, string>> = trade.femaleHow;
  const words = known[kind]!;
  const how = end === 'female' && Object.hasOwn(female, kind) ? female[kind]! : words.how;
  return { ...words, how };
}

/** A reading as people say it, e.g. 'Pitch gauge: 16 tpi'. */
export function readingText(reading: Reading, end: End = 'male'): string {
  if (reading.kind === 'cannot-tell') return t().trade.cannotTellOf(kindWords(reading.of).name);
  if (reading.kind === 'other-seat') return t().loop.seatClaim.denied(seatText(reading.seat, end));
  return `${kindWords(reading.kind).name}: ${valueText(reading.kind, reading.text, end)}`;
}

/** One seat looks different from either side. */
export function seatText(seat: Seat, end: End): string {
  return end === 'female' ? t().reading.femaleSeats[seat] : t().reading.seats[seat];
}

/** A value as it is written in a reading ('16tpi', 'cone-37', '26.5…26.9mm'), for people. */
export function valueText(kind: ReadingKind, value: string, end: End = 'male'): string {
  const { trade, reading } = t();
  const one = <T extends string>(all: readonly T[]) => all.find((word) => word === value);
  switch (kind) {
    case 'seat': {
      const seat = one(seats);
      return seat ? seatText(seat, end) : value;
    }
    case 'seat-gauge': {
      const cone = gaugedCones.find((c) => c === value || c === `cone-${value}`);
      return cone ? trade.cones[coneKey(cone)] : value;
    }
    case 'end-type': {
      const type = one(endTypes);
      return type ? trade.endTypes[type] : value;
    }
    case 'marking': {
      const mark = one(marks);
      return mark ? trade.marks[mark] : value;
    }
    case 'crest-form':
      return value === 'rounded' ? trade.crests.rounded : trade.crests.flat;
    case 'hand':
      return value === 'left' ? trade.hands.left : trade.hands.right;
    case 'taper':
      return value === 'tapered' ? reading.tapered : reading.straight;
    case 'flank':
      return `${value}°`;
    case 'cone-size':
      if (/^\d+$/.test(value)) return `${value}°`;
      break;
    default:
      break;
  }
  if (kind === 'tube-od' && value === 'none') return reading.noTube;
  if (value === 'other') return reading.otherValue;
  const spaced = value
    .replace(/\s*(mm|in)$/, ' $1')
    .replace(/\s*tpi$/, ` ${reading.units.tpi}`)
    .replace('…', ' – ');
  const counted =
    kind === 'turns-over'
      ? spaced.replace(/^([\d.,]+) in /, '$1 / ')
      : spaced
          .replace(' over ', ' / ')
          .replace(' to ', ' – ')
          .replaceAll(/(\d)(mm|in)\b/g, '$1 $2');
  return language() === 'en' ? counted : counted.replaceAll('.', ',');
}

export function coneKey(cone: (typeof gaugedCones)[number]): 24 | 30 | 37 | 45 | 60 | 'none' {
  return cone === 'none' ? cone : (Number(cone.slice(5)) as 24 | 30 | 37 | 45 | 60);
}

/** What is wrong with a typed value, in the reader's language. */
export function wrongWords(kind: ValueKind, reason: string): string {
  if (reason === 'impossible-value') return t().reading.outOfRange;
  return kind === 'pitch-gauge' ? t().reading.invalidTpi : t().reading.invalid;
}
