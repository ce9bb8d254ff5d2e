import type { ThreadMeasurement } from '../5-measurement/thread-measurement';
import type { MeasuredThread } from '../6-candidates/photo-likelihood';
import type { PriorOptions } from '../6-candidates/priors';
import type { Reading } from '../6-candidates/reading';
import { type Evidence, type Weighed, weigh } from '../6-candidates/weigh';
import { agreement } from './contradictions';
import type { Conclusion, Decision } from './decision';
import { nextReading, type Tool } from './next-reading';
import {
  best,
  connectionCandidates,
  flatTally,
  type Tally,
  tally,
  threadCandidates,
  variant,
} from './tally';

export interface ConcludeOptions extends PriorOptions {
  /** What the user can lay hands on; everything, unless said. Looking needs no tool. */
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
  const decision = decide(evidence, options, weighed, probabilities, trusted);
  const { male } = probabilities;
  const listed = 1 - probabilities.unlisted;
  const end = measurement || male > 0.99 * listed ? 'male' : male < 0.01 * listed ? 'female' : null;
  return {
    threads: threadCandidates(weighed, probabilities),
    connections: connectionCandidates(probabilities),
    decision,
    contradictions,
    end,
  };
}

function decide(
  evidence: Evidence,
  options: ConcludeOptions,
  weighed: Weighed,
  probabilities: Tally,
  trusted: boolean,
): Decision {
  const ask = () => nextReading(evidence, options, weighed, !trusted);
  const hand = evidence.photo?.hand ?? null;
  if (!trusted) return { state: 'needs-reading', thread: null, connection: null, hand, ask: ask() };
  if (probabilities.unlisted >= settled.unlisted && measuresAThread(evidence)) {
    return { state: 'unlisted', thread: null, connection: null, hand, ask: null };
  }
  const flat = flatTally(weighed);
  const thread = firstSettled(probabilities.threads, flat.threads, settled.thread);
  const key = thread
    ? firstSettled(probabilities.connections, flat.connections, settled.connection)
    : null;
  const [family, size] = key?.split('\t') ?? [];
  const connection =
    key && family && size ? { family, size, ...variant(probabilities.rows.get(key)) } : null;
  const done = connection !== null || (thread !== null && carriesNothing(weighed, thread));
  if (done) return { state: 'settled', thread, connection, hand, ask: null };
  return { state: 'needs-reading', thread, connection, hand, ask: ask() };
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
  return photo !== null || (has('pitch-gauge') && has('caliper-od', 'caliper-id', 'rule-od'));
}
