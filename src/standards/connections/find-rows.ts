import type { Connection, EndType } from './connection';
import { connections } from './connections';

/** One connection end as far as it is known; null where that is open. */
export interface KnownEnd {
  readonly family: string;
  readonly size: string;
  readonly end: 'male' | 'female' | null;
  readonly form: string | null;
  readonly endTypes: readonly EndType[];
}

/** All rows that a known end may still be. Never one of them for all: what the rows do not share
 *  (seat, O-ring, sealing) is open. */
export function rowsOf(known: KnownEnd, thread: string | null = null): readonly Connection[] {
  const named = connections.filter((c) => c.family === known.family && c.size === known.size);
  const narrowed = (rows: readonly Connection[], keep: (c: Connection) => boolean) => {
    const kept = rows.filter(keep);
    return kept.length > 0 ? kept : rows;
  };
  const byEnd = known.end === null ? named : named.filter((c) => c.end === known.end);
  const byThread = narrowed(byEnd, (c) => thread === null || c.thread === thread);
  return known.form === null ? byThread : byThread.filter((c) => c.form === known.form);
}
