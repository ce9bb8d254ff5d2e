import type { Connection } from '../../standards/connections/connection';
import type { ConnectionCandidate, ThreadCandidate } from '../6-candidates/candidate';
import { otherUseShare } from '../6-candidates/priors';
import type { Weighed } from '../6-candidates/weigh';

/** Probabilities by thread and by connection, male and female ends and forms added up. */
export interface Tally {
  readonly threads: ReadonlyMap<string, number>;
  /** By 'family\tsize'. */
  readonly connections: ReadonlyMap<string, number>;
  /** The same, by the rows behind each key. */
  readonly rows: ReadonlyMap<string, ReadonlyMap<Connection, number>>;
  readonly unlisted: number;
  readonly male: number;
}

export const connectionKey = (c: { family: string; size: string }) => `${c.family}\t${c.size}`;

export function tally(weighed: Weighed): Tally {
  const threads = new Map<string, number>();
  const connections = new Map<string, number>();
  const rows = new Map<string, Map<Connection, number>>();
  let male = 0;
  for (const { hypothesis, weight, uses } of weighed.threads) {
    add(threads, hypothesis.thread.designation, weight / weighed.total);
    if (hypothesis.end === 'male') male += weight / weighed.total;
    for (const { use, weight: own } of uses) {
      if (!use.connection) continue;
      const key = connectionKey(use.connection);
      add(connections, key, own / weighed.total);
      const behind = rows.get(key) ?? new Map<Connection, number>();
      behind.set(use.connection, (behind.get(use.connection) ?? 0) + own / weighed.total);
      rows.set(key, behind);
    }
  }
  return { threads, connections, rows, unlisted: weighed.unlisted.weight / weighed.total, male };
}

/** The same with every listed thread, and every listed connection, equally likely beforehand. What
 *  this leaves open, no prior may settle. */
export function flatTally(weighed: Weighed): Omit<Tally, 'male' | 'rows'> {
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

export function threadCandidates(weighed: Weighed, t: Tally): ThreadCandidate[] {
  const listed = new Map(
    weighed.threads.map(({ hypothesis: { thread } }) => [thread.designation, thread]),
  );
  const candidates: ThreadCandidate[] = [...t.threads]
    .filter(([, probability]) => probability >= shownFrom)
    .map(([designation, probability]) => {
      const thread = listed.get(designation)!;
      const { system, basicMajorMm, pitchMm } = thread;
      return { system, designation, basicMajorMm, pitchMm, probability };
    });
  candidates.push({ system: null, probability: t.unlisted });
  return candidates.sort((a, b) => b.probability - a.probability).slice(0, 24);
}

/** A form or an end is named from this share of its connection on. */
const namedFrom = 0.98;

/** What the rows of one connection agree on, by weight. */
export function variant(
  rows: ReadonlyMap<Connection, number> | undefined,
): Pick<ConnectionCandidate, 'end' | 'endType' | 'form' | 'seat'> {
  const agreed = <T>(of: (row: Connection) => T): T | null => {
    const shares = new Map<T, number>();
    let total = 0;
    for (const [row, weight] of rows ?? []) {
      shares.set(of(row), (shares.get(of(row)) ?? 0) + weight);
      total += weight;
    }
    for (const [value, share] of shares) if (share >= namedFrom * total) return value;
    return null;
  };
  return {
    end: agreed((r) => r.end),
    endType: agreed((r) => r.endType),
    form: agreed((r) => r.form),
    seat: agreed((r) => r.seat),
  };
}

export function connectionCandidates(t: Tally): ConnectionCandidate[] {
  return [...t.connections]
    .filter(([, probability]) => probability >= shownFrom)
    .map(([key, probability]) => {
      const [family, size] = key.split('\t') as [string, string];
      return { family, size, ...variant(t.rows.get(key)), probability };
    })
    .sort((a, b) => b.probability - a.probability)
    .slice(0, 24);
}
