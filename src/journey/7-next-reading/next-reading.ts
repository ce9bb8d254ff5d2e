import * as portable from '../../quantity/portable-math';
import type { Connection } from '../../standards/connections/connection';
import type { Thread } from '../../standards/thread';
import type { ReadingKind } from '../6-candidates/reading';
import type { Evidence, Weighed, WeighedThread } from '../6-candidates/weigh';
import type { Ask } from './decision';
import { type OutcomeTable, outcomeTable } from './outcomes';
import { connectionKey } from './tally';
import { explain } from './why';

export type Tool = 'rule' | 'caliper' | 'pitch-gauge' | 'form-gauge' | 'seat-gauge';

/** One way things may be: a thread with one use. */
export interface Scenario {
  /** Null with `thread`: none of the listed threads. */
  readonly weighed: WeighedThread | null;
  readonly thread: Thread | null;
  readonly connection: Connection | null;
  readonly probability: number;
  /** Scenarios that mean the same answer share a label. */
  readonly label: number;
}

/** Tool and trouble of each reading, in units of one look at the part (judgement). */
export const readingEffort: Record<
  ReadingKind,
  { readonly tool: Tool | null; readonly effort: number }
> = {
  seat: { tool: null, effort: 1 },
  taper: { tool: null, effort: 1.1 },
  'pitch-gauge': { tool: 'pitch-gauge', effort: 1.1 },
  'caliper-od': { tool: 'caliper', effort: 1 },
  'caliper-id': { tool: 'caliper', effort: 1.05 },
  'rule-od': { tool: 'rule', effort: 1 },
  'tube-od': { tool: 'caliper', effort: 2 },
  flank: { tool: 'form-gauge', effort: 2 },
};

const leastGainBits = 0.001;
const anyGainBits = 1e-5;
const most = 40;

/** The reading with the most expected information per effort, or null when none would help. */
export function nextReading(
  evidence: Evidence,
  options: { readonly atHand?: readonly Tool[] | undefined },
  weighed: Weighed,
  /** Sources contradict each other: only a reading that can bear one out will do. */
  disputed = false,
): Ask | null {
  const scenarios = scenariosOf(weighed);
  if (scenarios.length < 2) return null;
  const gauge = !options.atHand || options.atHand.includes('seat-gauge');
  // With a gauge at hand, a look at the seat by eye leaves the gauge still to be tried.
  const times = (kind: ReadingKind) =>
    evidence.readings.filter((r) => r.kind === kind && !(gauge && r.kind === 'seat' && r.byEye))
      .length;
  const allowed = (Object.keys(readingEffort) as ReadingKind[]).filter((kind) => {
    if (disputed && (kind === 'taper' || kind === 'flank')) return false;
    if (kind === 'rule-od' && !disputed && times('caliper-od') > 0) return false;
    const { tool } = readingEffort[kind];
    return tool === null || !options.atHand || options.atHand.includes(tool);
  });
  // Where nothing new would help, the same once more, by another hand or with more care.
  const taken = [0, 1, 2].map((n) => allowed.filter((kind) => times(kind) === n));
  let found: ReturnType<typeof bestOf> = null;
  for (const kinds of taken) found ??= bestOf(kinds, evidence, scenarios, gauge, leastGainBits);
  // Still open by a hair: better a reading that helps a little than none to ask for.
  found ??= bestOf(taken.flat(), evidence, scenarios, gauge, anyGainBits);
  if (!found) return null;
  const { table, gainBits } = found;
  const topThread = (weighed.threads[0]?.weight ?? 0) / weighed.total;
  return { reading: table.kind, gainBits, ...explain(table, scenarios, topThread) };
}

function bestOf(
  kinds: readonly ReadingKind[],
  evidence: Evidence,
  scenarios: readonly Scenario[],
  seatGauge: boolean,
  leastBits: number,
) {
  let found: { table: OutcomeTable; gainBits: number; score: number } | null = null;
  for (const kind of kinds) {
    const table = outcomeTable(kind, evidence, scenarios, seatGauge);
    if (!table || oneOutcome(table, scenarios)) continue;
    const gainBits = expectedGain(table, scenarios);
    const score = gainBits / effortOf(kind, scenarios);
    if (gainBits >= leastBits && (!found || score > found.score)) {
      found = { table, gainBits, score };
    }
  }
  return found;
}

/** Straight or tapered is the first question at a pipe pitch (common practice): every other answer
 *  is read in its light, the diameter above all. The effort is set so low that it goes before the
 *  seat at 20.8 mm and 14 to the inch, where tapers hold an eighth. */
const taperFirst = { eachShare: 0.05, effort: 0.1 } as const;

function effortOf(kind: ReadingKind, scenarios: readonly Scenario[]): number {
  if (kind !== 'taper') return readingEffort[kind].effort;
  const tapered = scenarios.reduce(
    (sum, s) => sum + (s.thread && s.thread.taper > 0 ? s.probability : 0),
    0,
  );
  const split = Math.min(tapered, 1 - tapered) >= taperFirst.eachShare;
  return split ? taperFirst.effort : readingEffort.taper.effort;
}

/** From this probability on a scenario's own outcome counts as one that may come. */
const mayCome = 0.001;

/** Every scenario that matters would give the same answer: no question. */
function oneOutcome(table: OutcomeTable, scenarios: readonly Scenario[]): boolean {
  const chance = (o: number) =>
    scenarios.reduce((sum, s, i) => sum + s.probability * table.chances[i]![o]!, 0);
  return table.outcomes.filter((_, o) => chance(o) >= mayCome).length < 2;
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

/** Expected drop of the entropy over answers, bits. */
export function expectedGain(table: OutcomeTable, scenarios: readonly Scenario[]): number {
  const labels = 1 + Math.max(...scenarios.map((s) => s.label));
  const before = new Float64Array(labels);
  for (const s of scenarios) before[s.label]! += s.probability;
  let gain = entropy(before, 1);
  const after = new Float64Array(labels);
  for (let o = 0; o < table.outcomes.length; o++) {
    after.fill(0);
    let total = 0;
    for (let s = 0; s < scenarios.length; s++) {
      const joint = scenarios[s]!.probability * table.chances[s]![o]!;
      after[scenarios[s]!.label]! += joint;
      total += joint;
    }
    if (total > 1e-12) gain -= total * entropy(after, total);
  }
  return gain;
}

function entropy(weights: Float64Array, total: number): number {
  let bits = 0;
  for (const w of weights) if (w > 1e-15) bits -= (w / total) * portable.log2(w / total);
  return bits;
}
