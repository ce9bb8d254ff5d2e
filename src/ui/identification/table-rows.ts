import type { Connection } from '../../standards/connections/connection';
import type { Thread } from '../../standards/thread';
import type { SectionDimensions } from './section-geometry';

export interface Tables {
  readonly thread: (designation: string) => Thread | null;
  readonly connection: (family: string, size: string, end: Connection['end']) => Connection | null;
  /** What screws onto an end without belonging to it, as 'family size'. */
  readonly neverWith: (own: Connection) => readonly string[];
  /** Connections that use a thread, this end only, one per family. */
  readonly users: (designation: string, end: Connection['end']) => readonly Connection[];
}

/** The tables load with the first screen that shows candidates, not with the page. */
export async function loadTables(): Promise<Tables> {
  const [{ findThread }, { connections }, { screwsOnButMustNot }] = await Promise.all([
    import('../../standards/threads'),
    import('../../standards/connections/connections'),
    import('../../standards/look-alikes'),
  ]);
  return {
    thread: findThread,
    connection: (family, size, end) =>
      connections.find((c) => c.family === family && c.size === size && c.end === end) ??
      connections.find((c) => c.family === family && c.size === size) ??
      null,
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
