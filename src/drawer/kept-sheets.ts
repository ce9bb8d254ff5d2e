import { readSheet, type SheetRefusal } from '../journey/8-sheet/read-sheet';
import type { SheetWithPhotos } from '../journey/8-sheet/sheet-file';
import { type Sheet, sheetSchema } from '../journey/8-sheet/sheet-schema';
import { ok, type Result, refuse } from '../quantity/result';
import type { DrawerConnection, DrawerRefusal } from './drawer-connection';
import { type DrawerEntry, drawerEntry, entrySchema } from './drawer-entry';

/** Keeps a sheet whole or not at all. Photos and thumbnail may be left out (`undefined`) when only
 *  the sheet changed; those already kept then stay. */
export async function keepSheet(
  drawer: DrawerConnection,
  sheet: Sheet,
  photos?: readonly Uint8Array[],
  thumbnail?: Uint8Array | null,
): Promise<Result<void, DrawerRefusal | 'damaged-sheet'>> {
  const checked = sheetSchema.safeParse(sheet);
  if (!checked.success)
    return refuse('damaged-sheet', 'This sheet holds a value that cannot be kept: measure again.');
  const kept = await drawer.run(async (db) => {
    const tx = db.transaction(['entries', 'sheets', 'photos'], 'readwrite');
    const entries = tx.objectStore('entries');
    const photoStore = tx.objectStore('photos');
    const before = await entries.get(sheet.id);
    const json = JSON.stringify(checked.data).length;
    const photoBytes =
      photos?.reduce((sum, photo) => sum + photo.length, 0) ?? before?.photoBytes ?? 0;
    const entry = drawerEntry(
      checked.data,
      thumbnail === undefined ? (before?.thumbnail ?? null) : thumbnail,
      { sheetBytes: json, photoBytes },
    );
    await wholly(tx, [
      () => entries.put(entry),
      () => tx.objectStore('sheets').put(checked.data, sheet.id),
      ...(photos ? [() => photoStore.delete(photoRange(sheet.id))] : []),
      ...(photos ?? []).map((photo, shot) => () => photoStore.put(photo, [sheet.id, shot])),
    ]);
  });
  if (kept.ok) drawer.announce({ kind: 'kept', id: sheet.id });
  return kept;
}

export async function recallSheet(
  drawer: DrawerConnection,
  id: string,
): Promise<Result<SheetWithPhotos, DrawerRefusal | SheetRefusal | 'not-here'>> {
  const read = await drawer.run(async (db) => {
    const tx = db.transaction(['sheets', 'photos']);
    const [raw, photos] = await Promise.all([
      tx.objectStore('sheets').get(id),
      tx.objectStore('photos').getAll(photoRange(id)),
    ]);
    return { raw, photos };
  });
  if (!read.ok) return read;
  if (read.value.raw === undefined)
    return refuse('not-here', 'This sheet is not in the drawer of this device.');
  const sheet = readSheet(read.value.raw);
  return sheet.ok ? ok({ sheet: sheet.value, photos: read.value.photos }) : sheet;
}

/** Everything kept, newest change first; what was removed is left out. */
export async function listDrawer(
  drawer: DrawerConnection,
): Promise<Result<DrawerEntry[], DrawerRefusal>> {
  const all = await drawer.run((db) => db.getAll('entries'));
  if (!all.ok) return all;
  const entries: DrawerEntry[] = [];
  for (const kept of all.value) {
    const known = entrySchema.safeParse(kept);
    const entry = known.success ? known.data : await entryAnew(drawer, String(kept.id));
    if (entry && entry.removedAt === null) entries.push(entry);
  }
  return ok(entries.sort((a, b) => b.updatedAt.localeCompare(a.updatedAt)));
}

/** From the sheet itself; null when that cannot be read either. */
async function entryAnew(drawer: DrawerConnection, id: string): Promise<DrawerEntry | null> {
  const read = await recallSheet(drawer, id);
  if (!read.ok) return null;
  const photoBytes = read.value.photos.reduce((sum, photo) => sum + photo.length, 0);
  const sheetBytes = JSON.stringify(read.value.sheet).length;
  return drawerEntry(read.value.sheet, null, { sheetBytes, photoBytes });
}

/** Out of the list at once; gone for good only when swept. */
export function removeSheet(
  drawer: DrawerConnection,
  id: string,
  now: Date,
): Promise<Result<void, DrawerRefusal>> {
  return markRemoved(drawer, id, now.toISOString());
}

export function restoreSheet(
  drawer: DrawerConnection,
  id: string,
): Promise<Result<void, DrawerRefusal>> {
  return markRemoved(drawer, id, null);
}

async function markRemoved(
  drawer: DrawerConnection,
  id: string,
  removedAt: string | null,
): Promise<Result<void, DrawerRefusal>> {
  const marked = await drawer.run(async (db) => {
    const tx = db.transaction('entries', 'readwrite');
    const entry = await tx.store.get(id);
    await wholly(tx, entry ? [() => tx.store.put({ ...entry, removedAt })] : []);
  });
  if (marked.ok) drawer.announce({ kind: removedAt ? 'removed' : 'restored', id });
  return marked;
}

/** Deletes for good what was removed before a time; gives back how many. */
export function sweepRemoved(
  drawer: DrawerConnection,
  before: Date,
): Promise<Result<number, DrawerRefusal>> {
  return drawer.run(async (db) => {
    const tx = db.transaction(['entries', 'sheets', 'photos'], 'readwrite');
    const limit = before.toISOString();
    const old = (await tx.objectStore('entries').getAll()).filter(
      (entry) => entry.removedAt !== null && entry.removedAt <= limit,
    );
    await wholly(
      tx,
      old.flatMap(({ id }) => [
        () => tx.objectStore('entries').delete(id),
        () => tx.objectStore('sheets').delete(id),
        () => tx.objectStore('photos').delete(photoRange(id)),
      ]),
    );
    return old.length;
  });
}

function photoRange(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]);
}

/** Queues all writes of a transaction and waits until it is through, or until nothing of it is. */
async function wholly(
  tx: { readonly done: Promise<void>; abort(): void },
  writes: readonly (() => Promise<unknown>)[],
): Promise<void> {
  let failure: unknown;
  try {
    for (const write of writes)
      write().catch((cause) => {
        failure ??= cause;
      });
  } catch (cause) {
    // What is queued already would go through by itself.
    tx.abort();
    await tx.done.catch(() => undefined);
    throw cause;
  }
  try {
    await tx.done;
  } catch (cause) {
    // A failed request aborts its transaction, which may then say no more than 'AbortError'.
    throw nameOf(cause) === 'AbortError' && failure !== undefined ? failure : cause;
  }
}

const nameOf = (cause: unknown) => (cause instanceof DOMException ? cause.name : '');
