import type { Connection } from '../../standards/connections/connection';
import type {
  ConnectionCandidate,
  ConnectionEnd,
  ThreadCandidate,
} from '../6-candidates/candidate';
import { otherUseShare } from '../6-candidates/priors';
import type { Reading } from '../6-candidates/reading';
import type { Weighed } from '../6-candidates/weigh';

/** Probabilities by thread and by connection, male and female ends and forms added up. */
export interface Tally {
  readonly threads: ReadonlyMap<string, number>;
  /** By 'family\tsize'. */
  readonly connections: ReadonlyMap<string, number>;
  readonly unlisted: number;
  readonly male: number;
}

export const connectionKey = (c: { family: string; size: string }) => `${c.family}\t${c.size}`;

export function tally(weighed: Weighed): Tally {
  const threads = new Map<string, number>();
  const connections = new Map<string, number>();
  let male = 0;
  for (const { hypothesis, weight, uses } of weighed.threads) {
    add(threads, hypothesis.thread.designation, weight / weighed.total);
    if (hypothesis.end === 'male') male += weight / weighed.total;
    for (const { use, weight: own } of uses) {
      if (use.connection) add(connections, connectionKey(use.connection), own / weighed.total);
    }
  }
  for (const { use, weight } of weighed.heads) {
    add(connections, connectionKey(use.connection!), weight / weighed.total);
    male += weight / weighed.total;
  }
  return { threads, connections, unlisted: weighed.unlisted.weight / weighed.total, male };
}

/** Rows below this share of the whole are no candidates. */
const negligible = 1e-7;
/** Above this share of a connection's weight its gender and form are known. */
const knownShare = 0.98;

/** Gender, form and make of each connection, as far as the evidence says. */
export function connectionEnds(
  weighed: Weighed,
  readings: readonly Reading[],
): (key: string) => ConnectionEnd {
  const rows = new Map<string, Map<Connection, number>>();
  const all = [...weighed.threads.flatMap((w) => w.uses), ...weighed.heads];
  for (const { use, weight } of all) {
    if (!use.connection || weight < negligible * weighed.total) continue;
    const key = connectionKey(use.connection);
    const own = rows.get(key) ?? new Map<Connection, number>();
    rows.set(key, own.set(use.connection, weight));
  }
  const named = readings.flatMap((r) => (r.kind === 'end-type' ? [r.type] : []));
  return (key) => {
    const [family, size] = key.split('\t') as [string, string];
    const own = [...(rows.get(key) ?? [])];
    const total = own.reduce((sum, [, weight]) => sum + weight, 0);
    const settled = <T>(of: (c: Connection) => T): T | null => {
      const shares = new Map<T, number>();
      for (const [c, weight] of own) shares.set(of(c), (shares.get(of(c)) ?? 0) + weight);
      for (const [value, weight] of shares) if (weight >= knownShare * total) return value;
      return null;
    };
    const likely = own.filter(([, weight]) => weight > (1 - knownShare) * total).map(([c]) => c);
    const types = [...new Set(likely.flatMap((c) => c.endTypes))];
    const called = types.filter((type) => named.includes(type));
    return {
      family,
      size,
      end: settled((c) => c.end),
      form: settled((c) => c.form),
      endTypes: called.length > 0 ? called : types,
    };
  };
}

/** The same with every listed thread, and every listed connection, equally likely beforehand. What
 *  this leaves open, no prior may settle. */
export function flatTally(weighed: Weighed): Omit<Tally, 'male'> {
  const threads = new Map<string, number>();
  const connections = new Map<string, number>();
  let threadTotal = 0;
  let useTotal = 0;
  for (const { hypothesis, uses } of weighed.threads) {
    const mean = uses.reduce((sum, u) => sum + u.likelihood, 0) / uses.length;
    add(threads, hypothesis.thread.designation, mean);
    threadTotal += mean;
    for (const { use, likelihood } of uses) {
      useTotal += likelihood * (use.connection ? 1 : otherUseShare);
      if (use.connection) add(connections, connectionKey(use.connection), likelihood);
    }
  }
  for (const { use, likelihood } of weighed.heads) {
    threadTotal += likelihood;
    useTotal += likelihood;
    add(connections, connectionKey(use.connection!), likelihood);
  }
  for (const [key, value] of threads) threads.set(key, value / (threadTotal || 1));
  for (const [key, value] of connections) connections.set(key, value / (useTotal || 1));
  return { threads, connections, unlisted: 0 };
}

function add(map: Map<string, number>, key: string, value: number): void {
  map.set(key, (map.get(key) ?? 0) + value);
}

export function best(map: ReadonlyMap<string, number>): [key: string, probability: number] | null {
  let found: [string, number] | null = null;
  for (const entry of map) if (!found || entry[1] > found[1]) found = entry;
  return found;
}

/** Candidates below this do not matter to anyone. */
const shownFrom = 1e-4;

export function threadCandidates(weighed: Weighed, t: Tally, suffix = ''): ThreadCandidate[] {
  const listed = new Map(
    weighed.threads.map(({ hypothesis: { thread } }) => [thread.designation, thread]),
  );
  const candidates: ThreadCandidate[] = [...t.threads]
    .filter(([, probability]) => probability >= shownFrom)
    .map(([designation, probability]) => {
      const thread = listed.get(designation)!;
      const { system, basicMajorMm, pitchMm } = thread;
      const named = `${designation}${suffix}`;
      return { system, designation: named, basicMajorMm, pitchMm, probability };
    });
  candidates.push({ system: null, probability: t.unlisted });
  return candidates.sort((a, b) => b.probability - a.probability).slice(0, 24);
}

export function connectionCandidates(
  t: Tally,
  endOf: (key: string) => ConnectionEnd,
): ConnectionCandidate[] {
  return [...t.connections]
    .filter(([, probability]) => probability >= shownFrom)
    .map(([key, probability]) => ({ ...endOf(key), probability }))
    .sort((a, b) => b.probability - a.probability)
    .slice(0, 24);
}
