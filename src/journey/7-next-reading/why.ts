import type { AskableKind } from '../6-candidates/reading-choices';
import type { Fit } from './decision';
import type { OutcomeTable } from './outcomes';
import type { Scenario } from './scenario';

const most = 8;
const tellsConnections: ReadonlySet<AskableKind> = new Set([
  'seat',
  'seat-gauge',
  'cone-size',
  'tube-od',
  'nose-od',
  'end-type',
  'marking',
  'flange-thickness',
  'bolt-spacing',
]);

/** The reason for a reading, in words and as data. Only candidates that matter are named; while
 *  hundreds are possible, none is. */
export function explain(
  table: OutcomeTable,
  scenarios: readonly Scenario[],
  topThread: number,
): { why: string; fits: readonly Fit[] } {
  if (topThread < 0.1) return { why: opening[table.kind], fits: [] };
  const byConnection = tellsConnections.has(table.kind);
  const fits = new Map<string, Set<string>>();
  scenarios.forEach((scenario, i) => {
    const { thread, connection, probability } = scenario;
    if (fits.size >= most || probability < 0.002) return;
    const head = connection && `${connection.family} ${connection.size}`;
    const name = byConnection ? head : (thread?.designation ?? head);
    if (name === null) return;
    for (const value of typicalOutcomes(table, i)) {
      fits.set(value, (fits.get(value) ?? new Set()).add(name));
    }
  });
  const list = [...fits].map(([value, names]) => ({ value, candidates: [...names] }));
  return { why: list.length > 0 ? inWords(table.kind, list) : opening[table.kind], fits: list };
}

/** An outcome this close to a scenario's likeliest is typical of it too. */
const asTypical = 0.4;

/** The likeliest outcomes; for lengths, the interval that holds the middle 90 %. */
function typicalOutcomes(table: OutcomeTable, scenario: number): readonly string[] {
  const row = table.chances[scenario]!;
  let top = 0;
  for (let o = 0; o < row.length; o++) if (row[o]! > row[top]!) top = o;
  if (!/^(caliper|rule)-/.test(table.kind)) {
    return table.outcomes.filter((_, o) => row[o]! >= asTypical * row[top]!);
  }
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
  return [`${Number(from).toFixed(1)}…${Number.parseFloat(to).toFixed(1)}mm`];
}

/** Without enough to name candidates. */
const opening: Record<AskableKind, string> = {
  'pitch-gauge': 'The pitch rules out most threads of this diameter.',
  'caliper-od': 'The diameter over the crests rules out most threads.',
  'caliper-id': 'The diameter across the crests rules out most threads.',
  'rule-od': 'The diameter over the crests rules out most threads.',
  'tube-od': 'The tube says which of several sizes this is.',
  'nose-od': 'The narrow end of the cone is about as wide as the tube of its size.',
  seat: 'The sealing surface says which family this is.',
  'turns-over': 'The pitch rules out most threads of this diameter.',
  'end-type': 'What the end is made as rules out most families.',
  'seat-gauge': 'Cones of 30°, 37° and 45° look alike: a seat gauge tells them apart.',
  'cone-size': 'The two diameters of the cone and its length give its angle.',
  'crest-form': 'Crests of pipe threads of 55° are rounded, those of 60° are cut flat.',
  'flange-thickness': 'The two pressure series differ in the thickness of the head.',
  'bolt-spacing': 'The two pressure series differ in where their bolts stand.',
  marking: 'A mark tells the light from the heavy series.',
  hand: 'It looks left-hand: an ordinary part would not screw on.',
  hex: 'The hex fits some threads better than others.',
  taper: 'Pipe threads that taper look like straight ones of the same size.',
  flank: 'The thread angle tells the two pipe thread systems apart.',
};

/** Of a reading that does not go with the rest. */
export const takeAgain = 'The readings do not go together: take this one once more.';

export const openingOf = (kind: AskableKind): string => opening[kind];

const spaced = (value: string) => value.replace(/(mm|tpi)$/, ' $1');

const verbs: Record<AskableKind, (value: string) => string> = {
  'pitch-gauge': (v) => `a ${spaced(v)} blade fits`,
  'caliper-od': (v) => `${spaced(v)} over the crests fits`,
  'caliper-id': (v) => `${spaced(v)} across the crests fits`,
  'rule-od': (v) => `${spaced(v)} over the crests fits`,
  'tube-od': (v) =>
    v === 'none'
      ? 'no tube at all fits'
      : `${v === 'other' ? 'another' : `a ${spaced(v)}`} tube fits`,
  'nose-od': (v) => `${v === 'other' ? 'another nose' : `a nose of ${spaced(v)}`} fits`,
  seat: (v) => `${seatWords[v] ?? v} fits`,
  'turns-over': (v) => `a pitch of ${spaced(v)} fits`,
  'end-type': (v) => `${endWords[v] ?? v} fits`,
  'seat-gauge': (v) =>
    `${v === 'none' ? 'no blade at all' : `the ${v.replace('cone-', '')}° blade`} fits`,
  'cone-size': (v) => `${v === 'other' ? 'another angle' : `an angle of ${v}°`} fits`,
  'crest-form': (v) => `${v === 'rounded' ? 'rounded crests fit' : 'flat crests fit'}`,
  'flange-thickness': (v) =>
    `${v === 'other' ? 'another thickness' : `a head of ${spaced(v)}`} fits`,
  'bolt-spacing': (v) => `${v === 'other' ? 'another spacing' : `bolts ${spaced(v)} apart`} fits`,
  marking: (v) => `${v === 'none' ? 'no mark' : `the mark ‘${v}’`} fits`,
  hand: (v) => `a ${v}-hand thread fits`,
  hex: (v) => `a hex of ${spaced(v)} fits`,
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
  'cone-inverted': 'a raised cone at the bottom',
  none: 'no seat at all',
};

const endWords: Record<string, string> = {
  fixed: 'a fixed end',
  'swivel-nut': 'a swivel nut',
  'tube-nut': 'a tube nut',
  stud: 'a stud',
  port: 'a port',
  'flange-head': 'a flange head',
};

function inWords(kind: AskableKind, fits: readonly Fit[]): string {
  const counts = new Map<string, number>();
  for (const name of fits.flatMap((f) => f.candidates)) {
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  const parts = fits.slice(0, 3).map(({ value, candidates }) => {
    const isApart = candidates.every((name) => counts.get(name)! < fits.length);
    const only = fits.length > 1 && isApart ? 'only ' : '';
    const shown = candidates.slice(0, 3).join(', ');
    const more = candidates.length > 3 ? ' and others' : '';
    return `${verbs[kind](value)} ${only}${shown}${more}`;
  });
  const sentence = parts.join('; ');
  return `${sentence[0]!.toUpperCase()}${sentence.slice(1)}.`;
}
