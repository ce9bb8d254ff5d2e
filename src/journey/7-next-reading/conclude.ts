import { leftHandSuffix } from '../../standards/threads';
import type { ThreadMeasurement } from '../5-measurement/thread-measurement';
import type { ConnectionEnd } from '../6-candidates/candidate';
import type { MeasuredThread } from '../6-candidates/photo-likelihood';
import type { PriorOptions } from '../6-candidates/priors';
import type { Reading } from '../6-candidates/reading';
import { type AskableKind, askableKinds } from '../6-candidates/reading-choices';
import { type Evidence, type Weighed, weigh } from '../6-candidates/weigh';
import { agreement } from './contradictions';
import type { Conclusion, Contradiction, Decision } from './decision';
import { type Hand, handOf } from './hand';
import { nearestThread } from './nearest';
import { nextReading } from './next-reading';
import {
  best,
  connectionCandidates,
  connectionEnds,
  connectionKey,
  flatTally,
  type Tally,
  tally,
  threadCandidates,
} from './tally';
import { readingEffort, type Tool, usualTools } from './tools';
import { openingOf, takeAgain } from './why';

export interface ConcludeOptions extends PriorOptions {
  /** What the user can lay hands on; what most benches have, unless said. Looking needs no tool. */
  readonly atHand?: readonly Tool[];
}

/** At most 1 in 200 wrong, by the model's own account (checked by the simulator; in the mean of all that are settled
 *  some 1 in 800); and nearly so when every listed candidate starts equal, so that no prior settles anything alone. */
const settled = {
  thread: { probability: 0.995, flat: 0.95 },
  connection: { probability: 0.995, flat: 0.9 },
  unlisted: 0.95,
} as const;

/** Where no reading at hand would tell more, a little less must do. */
const settledAtTheEnd = {
  thread: { probability: 0.98, flat: 0.6 },
  connection: { probability: 0.97, flat: 0.6 },
} as const;

/** What a photo's measurement (or none) and the readings amount to: candidates with probabilities,
 *  a decision, and the reading to ask for. Pure; a few milliseconds. */
export function conclude(
  measurement: ThreadMeasurement | MeasuredThread | null,
  readings: readonly Reading[],
  options: ConcludeOptions = {},
): Conclusion {
  const evidence: Evidence = { photo: measurement, readings };
  const weighed = weigh(evidence, options);
  const probabilities = tally(weighed);
  const { contradictions, agreeing } = agreement(evidence, options, weighed);
  const trusted = contradictions.length === 0 || agreeing >= 2;
  const hand = handOf(evidence);
  const suffix = hand.hand === 'left' ? leftHandSuffix : '';
  const nearest = nearestThread(evidence);
  const endOf = connectionEnds(weighed, readings);
  const decision = decide({
    evidence,
    atHand: options.atHand ?? usualTools,
    weighed,
    probabilities,
    hand,
    endOf,
    trusted,
    // Where no thread has this diameter, the first thing is to measure it again.
    again: trusted
      ? nearest && measuredKinds(evidence)
      : contradictedKinds(evidence, contradictions),
  });
  const { male } = probabilities;
  const listed = 1 - probabilities.unlisted;
  const told = male > 0.95 * listed ? 'male' : male < 0.05 * listed ? 'female' : null;
  const end = measurement ? (measurement.end ?? 'male') : told;
  return {
    threads: threadCandidates(weighed, probabilities, suffix),
    connections: connectionCandidates(probabilities, endOf),
    decision: { ...decision, thread: decision.thread && `${decision.thread}${suffix}` },
    contradictions,
    end,
    hand: hand.hand,
    nearest: decision.thread === null ? nearest : null,
  };
}

/** All that a decision is made from. */
interface Case {
  readonly evidence: Evidence;
  readonly atHand: readonly Tool[];
  readonly weighed: Weighed;
  readonly probabilities: Tally;
  readonly hand: Hand;
  readonly endOf: (key: string) => ConnectionEnd;
  /** No source is contradicted, or two others agree. */
  readonly trusted: boolean;
  /** Readings to be taken once more, where they do not go together. */
  readonly again: readonly AskableKind[] | null;
}

function decide(of: Case): Decision {
  const { evidence, probabilities, hand, trusted } = of;
  if (!trusted) return openDecision(of, null, null);
  if (probabilities.unlisted >= settled.unlisted && measuresAThread(evidence)) {
    return closed('unlisted', null, null);
  }
  const settle = settler(of);
  const named = settle(settled);
  // A left-hand thread is no ordinary part: someone must have looked at it before it is called so.
  if (hand.doubtful && !isDeclined(evidence, 'hand')) {
    return asking('hand', named.thread, named.connection);
  }
  const head = named.connection && named.thread === null ? headToMeasure(of) : null;
  if (head) return asking(head, null, null);
  if (named.done) return closed('settled', named.thread, named.connection);
  const open = openDecision(of, named.thread, named.connection);
  if (open.ask) return open;
  // Nothing that could be read here would tell more.
  const last = settle(settledAtTheEnd);
  return last.done ? closed('settled', last.thread, last.connection) : open;
}

function closed(
  state: 'settled' | 'unlisted',
  thread: string | null,
  connection: Decision['connection'],
): Decision {
  return { state, thread, connection, ask: null, missing: null };
}

/** Asks for what no weighing of threads would ask for. */
function asking(
  reading: AskableKind,
  thread: string | null,
  connection: Decision['connection'],
): Decision {
  const ask = { reading, why: openingOf(reading), gainBits: askedFirstBits, fits: [] };
  return { state: 'needs-reading', thread, connection, ask, missing: null };
}

const askedFirstBits = 0.5;

function openDecision(
  { evidence, atHand, weighed, again }: Case,
  thread: string | null,
  connection: Decision['connection'],
): Decision {
  const found = nextReading(evidence, { atHand }, weighed, again);
  const isAgain = found !== null && again?.includes(found.reading);
  const ask = isAgain ? { ...found, why: takeAgain, fits: [] } : found;
  // What would help, were every tool at hand.
  const wanted = ask ? null : nextReading(evidence, {}, weighed, again);
  const missing = wanted && {
    reading: wanted.reading,
    tools: readingEffort[wanted.reading].tools,
  };
  return { state: 'needs-reading', thread, connection, ask, missing };
}

function isDeclined({ readings }: Evidence, kind: AskableKind): boolean {
  return readings.some((r) => r.kind === 'cannot-tell' && r.of === kind);
}

function settler({ evidence, weighed, probabilities, endOf }: Case) {
  const flat = flatTally(weighed);
  return (limits: typeof settled | typeof settledAtTheEnd) => {
    const thread = firstSettled(probabilities.threads, flat.threads, limits.thread);
    const key = firstSettled(probabilities.connections, flat.connections, limits.connection);
    const found = key && (thread || isHead(weighed, key)) ? endOf(key) : null;
    const connection = found && dryseal(found, evidence);
    const done = connection !== null || (thread !== null && carriesNothing(weighed, thread));
    return { thread, connection, done };
  };
}

function isHead({ heads }: Weighed, key: string): boolean {
  return heads.some(({ use }) => use.connection && connectionKey(use.connection) === key);
}

/** Dryseal threads are NPT to every reading: the mark alone tells. */
function dryseal(found: ConnectionEnd, { readings }: Evidence): ConnectionEnd {
  const isMarked = readings.some((r) => r.kind === 'marking' && r.mark === 'nptf');
  const isTaper = found.family === 'ASME B1.20.1' && found.form === null;
  return isMarked && isTaper ? { ...found, family: 'SAE J476' } : found;
}

/** Thickness, or else the bolts, of a flange head whose diameter is all that was measured: the two
 *  pressure series are close, and dangerous to mix. */
function headToMeasure({ evidence, atHand }: Case): 'flange-thickness' | 'bolt-spacing' | null {
  const kinds = ['flange-thickness', 'bolt-spacing'] as const;
  if (evidence.readings.some((r) => kinds.some((kind) => r.kind === kind))) return null;
  const canBe = (kind: AskableKind) =>
    !isDeclined(evidence, kind) && readingEffort[kind].tools.some((tool) => atHand.includes(tool));
  return kinds.find(canBe) ?? null;
}

/** Null where a photo alone spoke of the size. */
function measuredKinds({ readings }: Evidence): AskableKind[] | null {
  const kinds = repeatedKinds.filter((kind) => readings.some((r) => r.kind === kind));
  return kinds.length > 0 ? kinds : null;
}

const repeatedKinds = ['caliper-od', 'caliper-id', 'pitch-gauge'] as const;

function contradictedKinds(
  { readings }: Evidence,
  contradictions: readonly Contradiction[],
): AskableKind[] {
  return contradictions.flatMap((one) => {
    const kind = one.source === 'reading' ? readings[one.index]?.kind : undefined;
    return askableKinds.filter((known) => known === kind);
  });
}

function firstSettled(
  probabilities: ReadonlyMap<string, number>,
  flat: ReadonlyMap<string, number>,
  limit: { readonly probability: number; readonly flat: number },
): string | null {
  const top = best(probabilities);
  if (!top || top[1] < limit.probability) return null;
  return (flat.get(top[0]) ?? 0) >= limit.flat ? top[0] : null;
}

/** No listed connection is left for the thread: there is nothing more to settle. */
function carriesNothing(weighed: Weighed, designation: string): boolean {
  let carried = 0;
  for (const { hypothesis, uses } of weighed.threads) {
    if (hypothesis.thread.designation !== designation) continue;
    for (const { use, weight } of uses) if (use.connection) carried += weight;
  }
  return carried / weighed.total < 1 - settled.connection.probability;
}

/** Pitch and a diameter: less cannot say that a thread is in no table. */
function measuresAThread({ photo, readings }: Evidence): boolean {
  const has = (...kinds: Reading['kind'][]) => readings.some((r) => kinds.includes(r.kind));
  return (
    photo !== null ||
    (has('pitch-gauge', 'turns-over') && has('caliper-od', 'caliper-id', 'rule-od'))
  );
}
