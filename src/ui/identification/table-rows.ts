import type { ConnectionEnd } from '../../journey/6-candidates/candidate';
import type { AlsoUsed } from '../../standards/also-used';
import type { Connection } from '../../standards/connections/connection';
import type { Note } from '../../standards/families';
import type { NeverJoin } from '../../standards/never-join';
import type { Thread } from '../../standards/thread';
import type { SectionDimensions } from './section';
import { depthMm } from './section-geometry';

export interface Tables {
  readonly thread: (designation: string) => Thread | null;
  /** All rows that a known end may still be. */
  readonly rows: (known: ConnectionEnd, thread: string | null) => readonly Connection[];
  readonly neverJoin: (own: Connection) => NeverJoin;
  readonly alsoUsed: (own: Connection) => readonly AlsoUsed[];
  readonly notes: (own: Connection) => readonly Note[];
  readonly aliases: (own: Connection) => readonly string[];
  /** 'ISO 8434-2 -8 (JIC)', for a family and size as `neverJoin` names them. */
  readonly called: (name: string) => string;
  /** Connections on a thread, one for each family and end. */
  readonly users: (thread: string) => readonly Connection[];
}

/** The tables load with the first screen that shows candidates, not with the page. */
export async function loadTables(): Promise<Tables> {
  const [
    { findThread },
    { rowsOf },
    { neverJoin },
    { alsoUsed },
    { aliasesOf },
    { notesOn },
    { connections },
  ] = await Promise.all([
    import('../../standards/threads'),
    import('../../standards/connections/find-rows'),
    import('../../standards/never-join'),
    import('../../standards/also-used'),
    import('../../standards/aliases'),
    import('../../standards/families'),
    import('../../standards/connections/connections'),
  ]);
  const second = new Map(connections.map((c) => [`${c.family} ${c.size}`, aliasesOf(c)[0]]));
  return {
    thread: findThread,
    rows: rowsOf,
    neverJoin,
    alsoUsed: (own) => (own.thread === null ? [] : alsoUsed(own.thread, own.end)),
    notes: notesOn,
    aliases: aliasesOf,
    called: (name) => (second.get(name) ? `${name} (${second.get(name)})` : name),
    users: (thread) => {
      const on = connections.filter((c) => c.thread === thread);
      return on.filter(
        (c, i) => on.findIndex((one) => one.family === c.family && one.end === c.end) === i,
      );
    },
  };
}

/** Of a connection that is still open, at least the end is known. */
export function dimensionsOf(
  thread: Thread,
  connection: Connection | null,
  end: Connection['end'] = 'male',
): SectionDimensions {
  return {
    majorMm: thread.basicMajorMm,
    pitchMm: thread.pitchMm,
    flankAngleDeg: thread.flankAngleDeg,
    taper: thread.taper,
    depthMm: depthMm(thread),
    end: connection?.end ?? end,
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
