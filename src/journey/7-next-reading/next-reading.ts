import * as portable from '../../quantity/portable-math';
import { claimedSeat } from '../6-candidates/end-seen';
import { type AskableKind, askableKinds, type Seat } from '../6-candidates/reading-choices';
import type { Evidence, Weighed } from '../6-candidates/weigh';
import type { Ask } from './decision';
import { type OutcomeTable, outcomeTable } from './outcomes';
import type { Scenario } from './scenario';
import { connectionKey } from './tally';
import { readingEffort, type Tool } from './tools';
import { explain } from './why';

const most = 40;

/** A question whose answer is all but known is none; neither is one whose several answers mean the
 *  same, as lengths and names of ends have them: those must narrow things by more, bits. */
const known = 0.97;
/** A look costs nothing, and bears out what the rest says; nor is a photo alone the last word where a reading would tell. */
const knownAtALook = 0.995;
const leastGainBits = { sharp: 0.001, broad: 0.02 } as const;
const isBroad: ReadonlySet<AskableKind> = new Set([
  'caliper-od',
  'caliper-id',
  'rule-od',
  'tube-od',
  'nose-od',
  'end-type',
  'marking',
]);

/** The reading with the most expected information per effort, or null when none would help. */
export function nextReading(
  evidence: Evidence,
  options: { readonly atHand?: readonly Tool[] | undefined },
  weighed: Weighed,
  /** Sources contradict each other: only a reading that can bear one out will do, and first of all
   *  those that are contradicted, once more. */
  disputed: readonly AskableKind[] | null = null,
): Ask | null {
  const scenarios = scenariosOf(weighed);
  if (scenarios.length < 2) return null;
  const headShare = weighed.heads.reduce((sum, h) => sum + h.weight, 0) / weighed.total;
  const topThread =
    Math.max(weighed.threads[0]?.weight ?? 0, ...weighed.heads.map((h) => h.weight)) /
    weighed.total;
  const times = (kind: AskableKind) => evidence.readings.filter((r) => r.kind === kind).length;
  const allowed = askableKinds.filter(
    (kind) =>
      isAtHand(kind, options.atHand) &&
      isSensible(kind, evidence, options.atHand) &&
      !(disputed !== null && sayingLittle.has(kind)),
  );
  const untried = allowed.filter((kind) => times(kind) === 0);
  const stage = { headShare, topThread, taperedShare: taperedShareOf(scenarios) };
  const inTurn = untried.filter((kind) => comesInTurn(kind, evidence, stage));
  const best = (kinds: readonly AskableKind[]) =>
    bestOf(kinds, evidence, scenarios, disputed !== null);
  const again = allowed.filter((kind) => times(kind) === 1 && disputed?.includes(kind));
  const fresh = best(again) ?? best(inTurn) ?? best(untried);
  // Where nothing new would help, the same once more, by another hand or with more care. A second
  // look with the same eyes sees the same, and a tube is what it is.
  const found = fresh ?? best(allowed.filter((kind) => times(kind) === 1 && repeatable.has(kind)));
  if (!found) return null;
  const { table, gainBits } = found;
  return { reading: table.kind, gainBits, ...explain(table, scenarios, topThread) };
}

const repeatable: ReadonlySet<AskableKind> = new Set(['caliper-od', 'caliper-id', 'pitch-gauge']);

const sayingLittle: ReadonlySet<AskableKind> = new Set([
  'taper',
  'flank',
  'crest-form',
  'end-type',
]);

function isAtHand(kind: AskableKind, atHand: readonly Tool[] | undefined): boolean {
  const { tools } = readingEffort[kind];
  return tools.length === 0 || !atHand || tools.some((tool) => atHand.includes(tool));
}

/** As an experienced hand would ask: nothing that was declined, no coarser instrument after (or
 *  beside) a finer one. */
function isSensible(
  kind: AskableKind,
  { photo, readings }: Evidence,
  atHand: readonly Tool[] | undefined,
): boolean {
  const declined = (of: AskableKind) =>
    readings.some((r) => r.kind === 'cannot-tell' && r.of === of);
  const given = (of: AskableKind) => readings.some((r) => r.kind === of);
  const better = (of: AskableKind) => given(of) || (isAtHand(of, atHand) && !declined(of));
  if (declined(kind)) return false;
  if (kind === 'rule-od') return !better('caliper-od') && !given('caliper-id');
  // A photo counts its turns better than an eye beside a rule.
  if (kind === 'turns-over') return photo === null && !better('pitch-gauge');
  if (kind === 'crest-form') return !better('flank');
  // A look tells whether there is a cone to be gauged, and what there is where no blade sits.
  const gauged = readings.find((r) => r.kind === 'seat-gauge');
  if (kind === 'seat') return !gauged || gauged.cone === 'none';
  // The nose of a hose end stands in for the tube that it has not.
  if (kind === 'nose-od') {
    const noTube = readings.some((r) => r.kind === 'tube-od' && r.mm === null);
    const hasCone = readings.some((r) => r.kind === 'seat' && r.seat === 'cone-24');
    return hasCone && (noTube || declined('tube-od'));
  }
  if (kind === 'cone-size') {
    if (photo?.noseHalfAngleDeg || better('seat-gauge')) return false;
    return readings.some((r) => r.kind === 'seat' && isFlare(r.seat));
  }
  if (kind === 'seat-gauge') {
    const looks = readings.flatMap((r) => (r.kind === 'seat' ? [r.seat] : []));
    if (looks.length > 0) return looks.some(isCone);
    const shown = photo && claimedSeat(photo);
    return declined('seat') || (shown !== null && isCone(shown));
  }
  return true;
}

const isFlare = (seat: Seat) => /^cone-(30|37|45)$/.test(seat);
const isCone = (seat: Seat) => /^cone-\d/.test(seat);

const takesADiameterOrPitch: ReadonlySet<AskableKind> = new Set([
  'pitch-gauge',
  'turns-over',
  'caliper-od',
  'caliper-id',
  'rule-od',
]);
/** What an end is called, and what it takes, tells little while the thread is open. */
const afterTheThread: ReadonlySet<AskableKind> = new Set([
  'end-type',
  'tube-od',
  'nose-od',
  'marking',
]);
const likelyThread = 0.9;
const likelyHead = 0.3;
const openTaper = 0.05;

/** How far things have come: shares of flange heads, of the likeliest thread, of tapers. */
interface Stage {
  readonly headShare: number;
  readonly topThread: number;
  readonly taperedShare: number;
}

function taperedShareOf(scenarios: readonly Scenario[]): number {
  return scenarios.reduce((sum, s) => sum + (s.thread?.taper ? s.probability : 0), 0);
}

/** Diameter and pitch before the look of the end: what they would settle is not guessed from it.
 *  A flange head has no pitch. */
function comesInTurn(
  kind: AskableKind,
  { photo, readings }: Evidence,
  { headShare, topThread, taperedShare }: Stage,
): boolean {
  const givesPitch = kind === 'pitch-gauge' || kind === 'turns-over';
  if (headShare >= likelyHead) return !givesPitch;
  if (afterTheThread.has(kind) && topThread < likelyThread) return false;
  // A taper seals in its thread: without knowing it, the end's looks mislead.
  const taperIsOpen = Math.min(taperedShare, 1 - taperedShare) > openTaper;
  const askedTaper = readings.some((r) => (r.kind === 'cannot-tell' ? r.of : r.kind) === 'taper');
  if (kind === 'seat' && taperIsOpen && !askedTaper) return false;
  const hasPitch =
    photo !== null || readings.some((r) => r.kind === 'pitch-gauge' || r.kind === 'turns-over');
  return hasPitch || takesADiameterOrPitch.has(kind);
}

function bestOf(
  kinds: readonly AskableKind[],
  evidence: Evidence,
  scenarios: readonly Scenario[],
  disputed: boolean,
): Rated | null {
  const rated = kinds.flatMap((kind) => {
    const table = outcomeTable(kind, evidence, scenarios);
    return table ? [rate(table, scenarios)] : [];
  });
  return mostUseful(
    rated.filter(
      ({ table, gainBits }) =>
        gainBits >= leastGainBits.sharp &&
        (disputed || isOpen(table, evidence, scenarios, gainBits)),
    ),
  );
}

interface Rated {
  readonly table: OutcomeTable;
  readonly gainBits: number;
  /** Gain per effort. */
  readonly score: number;
  /** Chance that the answer leaves one label all but alone. */
  readonly settles: number;
}

export function rate(table: OutcomeTable, scenarios: readonly Scenario[]): Rated {
  const { gainBits, settles } = expected(table, scenarios);
  return { table, gainBits, settles, score: gainBits / readingEffort[table.kind].effort };
}

/** Of readings about as good, the one that more often ends the asking: information that leaves
 *  things open still costs another reading. */
const aboutAsGood = 0.75;

export function mostUseful(rated: readonly Rated[]): Rated | null {
  const top = Math.max(...rated.map((r) => r.score));
  let found: Rated | null = null;
  for (const one of rated) {
    if (one.score < aboutAsGood * top) continue;
    const better =
      !found ||
      one.settles > found.settles + 0.01 ||
      (one.settles > found.settles - 0.01 && one.score > found.score);
    if (better) found = one;
  }
  return found;
}

/** More than one answer is to be expected, and they mean different things. */
function isOpen(
  table: OutcomeTable,
  { readings }: Evidence,
  scenarios: readonly Scenario[],
  gainBits: number,
): boolean {
  if (gainBits < leastGainBits[isBroad.has(table.kind) ? 'broad' : 'sharp']) return false;
  if (isBroad.has(table.kind)) return true;
  const limit = table.kind === 'seat' || readings.length === 0 ? knownAtALook : known;
  return table.outcomes.every((_, o) => {
    const share = scenarios.reduce((sum, s, i) => sum + s.probability * table.chances[i]![o]!, 0);
    return share < limit;
  });
}

export function scenariosOf(weighed: Weighed): Scenario[] {
  const labels = new Map<string, number>();
  const all: (Omit<Scenario, 'label'> & { name: string })[] = weighed.threads.flatMap((w) =>
    w.uses.map((u) => {
      const { thread } = w.hypothesis;
      const { connection } = u.use;
      const name = `${thread.designation}\t${connection ? connectionKey(connection) : ''}`;
      return { weighed: w, thread, connection, name, probability: u.weight / weighed.total };
    }),
  );
  for (const { use, weight } of weighed.heads) {
    const connection = use.connection!;
    const name = `\t${connectionKey(connection)}`;
    const probability = weight / weighed.total;
    all.push({ weighed: null, thread: null, connection, name, probability });
  }
  const unlisted = weighed.unlisted.weight / weighed.total;
  all.push({ weighed: null, thread: null, connection: null, name: '', probability: unlisted });
  const top = all
    .filter((s) => s.probability > 1e-5)
    .sort((a, b) => b.probability - a.probability)
    .slice(0, most);
  const sum = top.reduce((total, s) => total + s.probability, 0);
  return top.map(({ name, ...s }) => {
    if (!labels.has(name)) labels.set(name, labels.size);
    return { ...s, probability: s.probability / sum, label: labels.get(name)! };
  });
}

/** The share of the likeliest label from which on nothing is asked. */
const settledShare = 0.995;

/** Expected drop of the entropy over answers, bits, and how often one answer is left. */
function expected(table: OutcomeTable, scenarios: readonly Scenario[]) {
  const labels = 1 + Math.max(...scenarios.map((s) => s.label));
  const before = new Float64Array(labels);
  for (const s of scenarios) before[s.label]! += s.probability;
  let gainBits = entropy(before, 1);
  let settles = 0;
  const after = new Float64Array(labels);
  for (let o = 0; o < table.outcomes.length; o++) {
    after.fill(0);
    let total = 0;
    for (let s = 0; s < scenarios.length; s++) {
      const joint = scenarios[s]!.probability * table.chances[s]![o]!;
      after[scenarios[s]!.label]! += joint;
      total += joint;
    }
    if (total <= 1e-12) continue;
    gainBits -= total * entropy(after, total);
    if (after.reduce((a, b) => Math.max(a, b), 0) >= settledShare * total) settles += total;
  }
  return { gainBits, settles };
}

function entropy(weights: Float64Array, total: number): number {
  let bits = 0;
  for (const w of weights) if (w > 1e-15) bits -= (w / total) * portable.log2(w / total);
  return bits;
}
