import type { ConnectionEnd } from '../../journey/6-candidates/candidate';
import type { Connection } from '../../standards/connections/connection';
import type { Thread } from '../../standards/thread';
import { leftHandSuffix } from '../../standards/threads';
import { t } from '../language/language';

/** 'female, swivel nut or tube nut, form E': gender, make and form, as far as they are known. */
export function endWords({ end, endTypes, form }: Omit<ConnectionEnd, 'family' | 'size'>): string {
  const { trade } = t();
  const types = endTypes.map((type) => trade.endTypes[type]).join(` ${trade.or} `);
  return [end && trade.gender[end], types, form && formWords(form)].filter(Boolean).join(', ');
}

/** Forms that are letters of a standard are called so; others name themselves. */
const formWords = (form: string): string =>
  /^[A-Z]( or [A-Z])?$/.test(form) && form !== 'R'
    ? t().trade.form(form.replace(' or ', ` ${t().trade.or} `))
    : form;

export const connectionTitle = (c: ConnectionEnd): string =>
  [`${c.family} ${c.size}`, endWords(c)].filter(Boolean).join(' · ');

/** Standard, with its part, that a form or make is laid down in where it is not the family's own
 *  number (from memory of their titles). */
const laidDownIn: Readonly<Record<string, string>> = {
  'ISO 11926/port': 'ISO 11926-1',
  'ISO 6149/port': 'ISO 6149-1',
  'ISO 1179/port': 'ISO 1179-1',
  'ISO 1179/E': 'ISO 1179-2',
  'ISO 1179/G or H': 'ISO 1179-3',
  'ISO 1179/B': 'ISO 1179-4',
  'ISO 1179/A': 'DIN 3852-2',
  'ISO 9974/port': 'ISO 9974-1',
  'ISO 9974/E': 'ISO 9974-2',
  'ISO 9974/B': 'ISO 9974-3',
  'ISO 9974/A': 'DIN 3852-1',
};

/** What a supplier needs to read, of no maker: 'Stud end ISO 1179-2, size 1/2 (G1/2 A or B), male,
 *  form E'. What was not seen (material, adjustable or fixed) is left for the person to add. */
export function orderLine(
  known: ConnectionEnd,
  row: Connection,
  thread: Thread | null,
  lh: boolean,
) {
  const { trade } = t();
  const made = known.endTypes.map((type) => trade.ordered[type]).join(` ${trade.or} `);
  const standard =
    laidDownIn[`${known.family}/${known.form ?? ''}`] ??
    laidDownIn[`${known.family}/${known.endTypes[0] ?? ''}`] ??
    known.family;
  const ring = row.oRing;
  return [
    `${made} ${standard}`.trim(),
    `${trade.size(known.size)}${thread ? ` (${classed(thread, row.end)}${lh ? leftHandSuffix : ''})` : ''}`,
    known.end && trade.gender[known.end],
    known.form && formWords(known.form),
    row.oRingOn === 'this-end' &&
      ring &&
      trade.oRingOrdered(ring.designation, String(ring.hardnessShoreA ?? '')),
  ]
    .filter(Boolean)
    .join(', ');
}

/** Thread with its usual class where the system writes one behind it. */
function classed(thread: Thread, end: Connection['end']): string {
  const of = end === 'male' ? thread.externalClass : thread.internalClass;
  if (thread.taper > 0) return thread.designation;
  if (thread.system === 'UN') return `${thread.designation}-${of}`;
  return thread.system === 'M' ? `${thread.designation}-${of}` : thread.designation;
}
