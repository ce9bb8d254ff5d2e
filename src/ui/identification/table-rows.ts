import type { Connection } from '../../standards/connections/connection';
import type { ConnectionName } from '../../standards/connections/find-connection';
import type { Thread } from '../../standards/thread';
import type { SectionDimensions } from './section-geometry';

export interface Tables {
  readonly thread: (designation: string) => Thread | null;
  /** Every row that agrees with what is settled; the first is the commonest form. */
  readonly rows: (name: ConnectionName) => readonly Connection[];
  /** What screws onto an end without belonging to it, as 'family size'. */
  readonly neverWith: (own: Connection) => readonly string[];
  /** Threads that pass for this one by hand. */
  readonly passesFor: (designation: string) => readonly string[];
  /** Connections that use a thread, this end only, one per family. */
  readonly users: (designation: string, end: Connection['end']) => readonly Connection[];
}

/** The tables load with the first screen that shows candidates, not with the page. */
export async function loadTables(): Promise<Tables> {
  const [{ findThread, threads }, { connections }, { confusions, screwsOnButMustNot }, { rowsOf }] =
    await Promise.all([
      import('../../standards/threads'),
      import('../../standards/connections/connections'),
      import('../../standards/look-alikes'),
      import('../../standards/connections/find-connection'),
    ]);
  const confused = confusions(threads, connections);
  return {
    thread: findThread,
    rows: (name) => rowsOf(name, connections),
    passesFor: (designation) => confused.get(designation) ?? [],
    neverWith: (own) => [
      ...new Set(screwsOnButMustNot(own, connections).map((c) => `${c.family} ${c.size}`)),
    ],
    users: (designation, end) => {
      const seen = new Set<string>();
      return connections.filter((c) => {
        const fresh = c.thread === designation && c.end === end && !seen.has(c.family);
        if (fresh) seen.add(c.family);
        return fresh;
      });
    },
  };
}

export function dimensionsOf(thread: Thread, connection: Connection | null): SectionDimensions {
  return {
    majorMm: thread.basicMajorMm,
    pitchMm: thread.pitchMm,
    flankAngleDeg: thread.flankAngleDeg,
    taper: thread.taper,
    end: connection?.end ?? 'male',
    minorInternalMm: thread.minorInternalMm,
    coneOutwards: connection?.coneOutwards ?? false,
    seat: connection?.seat ?? 'none',
    sealsOnThread: connection?.sealing === 'thread',
    tubeOdMm: connection?.tubeOdMm ?? null,
    oRing: connection?.oRing
      ? { insideMm: connection.oRing.innerDiameterMm, sectionMm: connection.oRing.sectionMm }
      : null,
  };
}
