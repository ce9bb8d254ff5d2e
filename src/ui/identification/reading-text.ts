import {
  type Reading,
  type ReadingKind,
  type Seat,
  seats,
} from '../../journey/6-candidates/reading';
import { language, t } from '../language/language';

/** A reading as people say it, e.g. 'Pitch gauge: 16 tpi'. */
export function readingText(reading: Reading, end: End = 'male'): string {
  return `${t().reading.kinds[reading.kind].name}: ${valueText(reading.kind, reading.text, end)}`;
}

/** Which end is looked at; null counts as male, which a photo shows. */
export type End = 'male' | 'female' | null;

/** One seat looks different from either side. */
export function seatText(seat: Seat, end: End): string {
  return end === 'female' ? t().reading.femaleSeats[seat] : t().reading.seats[seat];
}

/** A value as it is written in a reading ('16tpi', 'cone-37', '26.5…26.9mm'), for people. */
export function valueText(kind: ReadingKind, value: string, end: End = 'male'): string {
  if (kind === 'seat') {
    const [seat = '', how] = value.split(' ');
    const words = isSeat(seat) ? seatText(seat, end) : value;
    return how === 'by-eye' ? `${words} (${t().reading.seatHow.byEye})` : words;
  }
  if (kind === 'taper') return value === 'tapered' ? t().reading.tapered : t().reading.straight;
  if (kind === 'flank') return `${value}°`;
  if (kind === 'tube-od' && value === 'none') return t().reading.noTube;
  if (value === 'other') return t().reading.otherValue;
  const spaced = value.replace(/\s*(tpi|mm|in)$/, ' $1').replace('…', ' – ');
  return language() === 'en' ? spaced : spaced.replaceAll('.', ',');
}

const isSeat = (value: string): value is Seat => (seats as readonly string[]).includes(value);
