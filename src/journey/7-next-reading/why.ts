import type { ReadingKind } from '../6-candidates/reading';
import type { Fit } from './decision';
import type { Scenario } from './next-reading';
import type { OutcomeTable } from './outcomes';

/** The reason for a reading, in words and as data. Only candidates that matter are named. */
export function explain(
  table: OutcomeTable,
  scenarios: readonly Scenario[],
): { why: string; fits: readonly Fit[] } {
  const matter = scenarios.filter((s, i) => i < 8 && s.probability > 0.005);
  const names = namesOf(table.kind, matter);
  const byOutcome = new Map<string, Set<string>>();
  matter.forEach((s, i) => {
    const value = typicalOutcome(table, scenarios.indexOf(s));
    const known = byOutcome.get(value) ?? new Set();
    byOutcome.set(value, known.add(names[i]!));
  });
  const fits = [...byOutcome].map(([value, set]) => ({ value, candidates: [...set] }));
  return { why: inWords(table.kind, fits), fits };
}

/** Seat and tube tell connections apart, the rest threads. */
function namesOf(kind: ReadingKind, scenarios: readonly Scenario[]): string[] {
  const byConnection = kind === 'seat' || kind === 'tube-od';
  return scenarios.map(({ thread, connection }) =>
    byConnection && connection
      ? `${connection.family} ${connection.size}`
      : (thread?.designation ?? 'a thread in no table'),
  );
}

/** The likeliest outcome; for lengths, the interval that holds the middle 90 %. */
function typicalOutcome(table: OutcomeTable, scenario: number): string {
  const row = table.chances[scenario]!;
  let top = 0;
  for (let o = 0; o < row.length; o++) if (row[o]! > row[top]!) top = o;
  if (!/^(caliper|rule)-/.test(table.kind)) return table.outcomes[top]!;
  let low = top;
  let high = top;
  let mass = row[top]!;
  while (mass < 0.9) {
    const below = low > 0 ? row[low - 1]! : -1;
    const above = high < row.length - 1 ? row[high + 1]! : -1;
    if (below < 0 && above < 0) break;
    if (below >= above) mass += row[--low]!;
    else mass += row[++high]!;
  }
  const from = table.outcomes[low]!.split('…')[0]!;
  const to = table.outcomes[high]!.split('…')[1]!;
  return `${Number(from).toFixed(1)}…${Number.parseFloat(to).toFixed(1)}mm`;
}

const verbs: Record<ReadingKind, (value: string) => string> = {
  'pitch-gauge': (v) => `a ${v.replace(/(tpi|mm)$/, ' $1')} blade fits`,
  'caliper-od': (v) => `${v.replace('mm', ' mm')} over the crests fits`,
  'caliper-id': (v) => `${v.replace('mm', ' mm')} across the crests fits`,
  'rule-od': (v) => `${v.replace('mm', ' mm')} on the rule fits`,
  'tube-od': (v) =>
    v === 'none'
      ? 'no tube fits'
      : `${v === 'other' ? 'another' : `a ${v.replace('mm', ' mm')}`} tube fits`,
  seat: (v) => `${seatWords[v] ?? v} fits`,
  taper: (v) => `a ${v} thread fits`,
  flank: (v) => `a ${v}° thread form fits`,
};

const seatWords: Record<string, string> = {
  'flat-face-o-ring': 'a flat face with an O-ring',
  'cone-37': 'a 37° cone',
  'cone-45': 'a 45° cone',
  'cone-24': 'a 24° cone',
  'cone-60': 'a 60° cone',
  'cone-30': 'a 30° seat',
  'o-ring-at-hex': 'an O-ring between thread and hex',
  'flat-washer-face': 'a flat shoulder',
  none: 'no seat at all',
};

function inWords(kind: ReadingKind, fits: readonly Fit[]): string {
  const parts = fits.slice(0, 3).map(({ value, candidates }) => {
    const shown = candidates.slice(0, 3).join(', ');
    const more = candidates.length > 3 ? ' and others' : '';
    return `${verbs[kind](value)} ${fits.length > 1 ? 'only ' : ''}${shown}${more}`;
  });
  const sentence = parts.join('; ');
  return sentence ? `${sentence[0]!.toUpperCase()}${sentence.slice(1)}.` : '';
}
