import type { Sheet } from '../journey/8-sheet/sheet-schema';

/** One line of the drawer's list, derived from its sheet whenever that is kept. */
export interface DrawerEntry {
  readonly id: string;
  readonly createdAt: string;
  readonly updatedAt: string;
  readonly title: string;
  readonly remarks: string;
  readonly decision: Pick<Sheet['conclusion']['decision'], 'state' | 'thread' | 'connection'>;
  readonly verdict: 'open' | 'confirmed' | 'rejected';
  /** Designation with the highest probability, when any thread is listed. */
  readonly likeliestThread: string | null;
  readonly pitchMm: number | null;
  readonly majorDiameterMm: number | null;
  /** Part numbers the counter noted; searched. */
  readonly parts: readonly string[];
  /** A small JPEG. */
  readonly thumbnail: Uint8Array | null;
  readonly sheetBytes: number;
  readonly photoBytes: number;
  /** Set while a deletion can still be undone. */
  readonly removedAt: string | null;
}

export function drawerEntry(
  sheet: Sheet,
  thumbnail: Uint8Array | null,
  size: Pick<DrawerEntry, 'sheetBytes' | 'photoBytes'>,
): DrawerEntry {
  const { state, thread, connection } = sheet.conclusion.decision;
  const likeliest = sheet.conclusion.threads.find((candidate) => candidate.system !== null);
  return {
    id: sheet.id,
    createdAt: sheet.createdAt,
    updatedAt: sheet.updatedAt,
    title: sheet.title,
    remarks: sheet.remarks,
    decision: { state, thread, connection },
    verdict: sheet.counter?.verdict ?? 'open',
    likeliestThread: likeliest?.system ? likeliest.designation : null,
    pitchMm: sheet.measurement?.pitchMm.value ?? null,
    majorDiameterMm: sheet.measurement?.majorDiameterMm.value ?? null,
    parts: sheet.counter?.parts.map((part) => part.number) ?? [],
    thumbnail,
    ...size,
    removedAt: null,
  };
}

/** Whether every word of a search occurs in an entry, in any case and order. */
export function entryMatches(entry: DrawerEntry, search: string): boolean {
  const { thread, connection } = entry.decision;
  const haystack = [
    entry.title,
    entry.remarks,
    thread,
    entry.likeliestThread,
    connection && `${connection.family} ${connection.size}`,
    ...entry.parts,
    entry.createdAt.slice(0, 10),
  ]
    .join('\n')
    .toLocaleLowerCase();
  return search
    .toLocaleLowerCase()
    .split(/\s+/)
    .every((word) => haystack.includes(word));
}
