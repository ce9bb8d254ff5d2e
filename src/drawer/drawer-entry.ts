import { z } from 'zod';
import { conclusionSchema } from '../journey/7-next-reading/decision';
import { counterSchema, type Sheet } from '../journey/8-sheet/sheet-schema';
import { whatHolds } from '../journey/8-sheet/what-holds';
import { aliasesOf } from '../standards/aliases';

/** One line of the drawer's list, derived from its sheet whenever that is kept. Another version may
 *  have written it: what does not fit is derived anew. */
export const entrySchema = z.object({
  id: z.uuid(),
  createdAt: z.string(),
  updatedAt: z.string(),
  title: z.string(),
  remarks: z.string(),
  decision: conclusionSchema.shape.decision.pick({ state: true, thread: true, connection: true }),
  verdict: counterSchema.shape.verdict,
  /** As on the sheet; entries written before these were known are neither. */
  handedOver: z.boolean().default(false),
  received: z.boolean().default(false),
  /** Designation with the highest probability, when any thread is listed. */
  likeliestThread: z.string().nullable(),
  pitchMm: z.number().nullable(),
  majorDiameterMm: z.number().nullable(),
  /** Thread that a used part should have, once it was asked whether it is still good. */
  usedThread: z.string().nullable(),
  /** Part numbers the counter noted; searched. */
  parts: z.array(z.string()),
  /** A small JPEG. */
  thumbnail: z.custom<Uint8Array>((value) => value instanceof Uint8Array).nullable(),
  sheetBytes: z.number(),
  photoBytes: z.number(),
  /** Set while a deletion can still be undone. */
  removedAt: z.string().nullable(),
});
export type DrawerEntry = z.infer<typeof entrySchema>;

export function drawerEntry(
  sheet: Sheet,
  thumbnail: Uint8Array | null,
  size: Pick<DrawerEntry, 'sheetBytes' | 'photoBytes'>,
): DrawerEntry {
  const { state } = sheet.conclusion.decision;
  const { thread, connection } = whatHolds(sheet);
  const { threads, nearest } = sheet.conclusion;
  // Where no thread fits, the likeliest is none.
  const likeliest = nearest ? null : threads.find((candidate) => candidate.system !== null);
  return {
    id: sheet.id,
    createdAt: sheet.createdAt,
    updatedAt: sheet.updatedAt,
    title: sheet.title,
    remarks: sheet.remarks,
    decision: { state, thread, connection },
    verdict: sheet.counter?.verdict ?? 'open',
    handedOver: sheet.handedOver,
    received: sheet.received,
    likeliestThread: likeliest?.system ? likeliest.designation : null,
    pitchMm: sheet.measurement?.pitchMm.value ?? null,
    majorDiameterMm: sheet.measurement?.majorDiameterMm.value ?? null,
    usedThread: sheet.wear ? (sheet.wear.thread ?? thread ?? '') : null,
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
    entry.usedThread,
    connection && `${connection.family} ${connection.size}`,
    ...(connection ? aliasesOf(connection) : []),
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
