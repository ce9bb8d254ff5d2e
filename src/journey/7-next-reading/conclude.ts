import { leftHandSuffix } from '../../standards/threads';
import type { ThreadMeasurement } from '../5-measurement/thread-measurement';
import type { ConnectionEnd } from '../6-candidates/candidate';
import type { MeasuredThread } from '../6-candidates/photo-likelihood';
import type { PriorOptions } from '../6-candidates/priors';
import type { Reading } from '../6-candidates/reading';
import { type Evidence, type Weighed, weigh } from '../6-candidates/weigh';
import { agreement } from './contradictions';
import type { Conclusion, Decision } from './decision';
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
import { openingOf } from './why';

export interface ConcludeOptions extends PriorOptions {
  /** What the user can lay hands on; what most benches have, unless said. Looking needs no tool. */
  readonly atHand?: readonly Tool[];
}

/** At most 1 in 1000 wrong for a thread, 1 in 200 for a connection, by the model's own account
 *  (checked by the simulator); and nearly so when every listed candidate starts equal, so that
 *  no prior settles anything alone. */
const settled = {
  thread: { probability: 0.999, flat: 0.95 },
  connection: { probability: 0.995, flat: 0.9 },
  unlisted: 0.95,
} as const;

/** Where no reading at hand would tell more, a little less must do. */
const settledAtTheEnd = {
  thread: { probability: 0.97, flat: 0.6 },
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
  const decision = decide(evidence, options, weighed, probabilities, trusted, hand);
  const { male } = probabilities;
  const listed = 1 - probabilities.unlisted;
  const end = measurement || male > 0.99 * listed ? 'male' : male < 0.01 * listed ? 'female' : null;
  return {
    threads: threadCandidates(weighed, probabilities, suffix),
    connections: connectionCandidates(probabilities, connectionEnds(weighed, readings)),
    decision: { ...decision, thread: decision.thread && `${decision.thread}${suffix}` },
    contradictions,
    end,
    hand: hand.hand,
    nearest: probabilities.unlisted > 0.5 ? nearestThread(evidence) : null,
  };
}

function decide(
  evidence: Evidence,
  options: ConcludeOptions,
  weighed: Weighed,
  probabilities: Tally,
  trusted: boolean,
  hand: Hand,
): Decision {
  const open = (thread: string | null, connection: Decision['connection']): Decision => {
    const atHand = options.atHand ?? usualTools;
    const ask = nextReading(evidence, { atHand }, weighed, !trusted);
    return {
      state: 'needs-reading',
      thread,
      connection,
      ask,
      missing: ask ? null : missing(evidence, weighed, !trusted),
    };
  };
  const done = (
    state: Decision['state'],
    thread: string | null,
    connection: Decision['connection'],
  ): Decision => ({ state, thread, connection, ask: null, missing: null });

  if (!trusted) return open(null, null);
  if (probabilities.unlisted >= settled.unlisted && measuresAThread(evidence)) {
    return done('unlisted', null, null);
  }
  const named = settle(evidence, weighed, probabilities, settled);
  // A left-hand thread is no ordinary part: someone must have looked at it before it is called so.
  if (hand.doubtful && !declined(evidence, 'hand')) {
    const ask = { reading: 'hand', why: openingOf('hand'), gainBits: 0.5, fits: [] } as const;
    return { ...open(named.thread, named.connection), ask, missing: null };
  }
  if (named.done) return done('settled', named.thread, named.connection);
  const asked = open(named.thread, named.connection);
  if (asked.ask) return asked;
  // Nothing that could be read here would tell more.
  const last = settle(evidence, weighed, probabilities, settledAtTheEnd);
  return last.done ? done('settled', last.thread, last.connection) : asked;
}

function declined({ readings }: Evidence, kind: string): boolean {
  return readings.some((r) => r.kind === 'cannot-tell' && r.of === kind);
}

/** What would help, were every tool at hand. */
function missing(evidence: Evidence, weighed: Weighed, disputed: boolean): Decision['missing'] {
  const ask = nextReading(evidence, {}, weighed, disputed);
  return ask && { reading: ask.reading, tools: readingEffort[ask.reading].tools };
}

function settle(
  evidence: Evidence,
  weighed: Weighed,
  probabilities: Tally,
  limits: typeof settled | typeof settledAtTheEnd,
): Pick<Decision, 'thread' | 'connection'> & { readonly done: boolean } {
  const flat = flatTally(weighed);
  const thread = firstSettled(probabilities.threads, flat.threads, limits.thread);
  const key = firstSettled(probabilities.connections, flat.connections, limits.connection);
  const endOf = connectionEnds(weighed, evidence.readings);
  const found = key && (thread || isHead(weighed, key)) ? endOf(key) : null;
  const connection = found && dryseal(found, evidence);
  const done = connection !== null || (thread !== null && carriesNothing(weighed, thread));
  return { thread, connection, done };
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
