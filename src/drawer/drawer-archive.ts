import { type ArchiveRefusal, archiveFromFile, archiveToFile } from '../handover/archive';
import type { SheetWithPhotos } from '../journey/8-sheet/sheet-file';
import { ok, type Result } from '../quantity/result';
import type { DrawerConnection, DrawerRefusal } from './drawer-connection';
import { keepSheet, listDrawer, recallSheet } from './kept-sheets';

/** Everything in the drawer as one file. `leftOut` counts sheets that could not be read. */
export async function exportDrawer(
  drawer: DrawerConnection,
): Promise<
  Result<{ readonly file: Uint8Array; readonly leftOut: number }, DrawerRefusal | 'too-large'>
> {
  const entries = await listDrawer(drawer);
  if (!entries.ok) return entries;
  const sheets: SheetWithPhotos[] = [];
  for (const { id } of entries.value) {
    const sheet = await recallSheet(drawer, id);
    if (sheet.ok) sheets.push(sheet.value);
  }
  const written = archiveToFile(sheets);
  if (!written.ok) return written;
  const leftOut = entries.value.length - sheets.length + written.value.leftOut;
  return ok({ file: written.value.file, leftOut });
}

export interface DrawerImport {
  readonly added: number;
  /** Sheets that were here already; the later change won. */
  readonly replaced: number;
  readonly unchanged: number;
  readonly refused: number;
}

/** Puts an archive's sheets into the drawer. Each sheet is kept whole or not at all; when the
 *  device runs out of room, those kept so far stay and the import can be repeated. */
export async function importDrawer(
  drawer: DrawerConnection,
  file: Uint8Array,
  thumbnailOf: (photo: Uint8Array) => Promise<Uint8Array | null>,
): Promise<Result<DrawerImport, DrawerRefusal | ArchiveRefusal | 'damaged-sheet'>> {
  const archive = archiveFromFile(file);
  if (!archive.ok) return archive;
  const entries = await listDrawer(drawer);
  if (!entries.ok) return entries;
  const here = new Map(entries.value.map((entry) => [entry.id, entry.updatedAt]));
  const count = { added: 0, replaced: 0, unchanged: 0, refused: archive.value.refused.length };
  for (const { sheet, photos } of archive.value.sheets) {
    const known = here.get(sheet.id);
    if (known !== undefined && known >= sheet.updatedAt) {
      count.unchanged++;
      continue;
    }
    const thumbnail = photos[0] ? await thumbnailOf(photos[0]) : null;
    const kept = await keepSheet(drawer, sheet, photos, thumbnail);
    if (!kept.ok) return kept;
    if (known === undefined) count.added++;
    else count.replaced++;
  }
  return ok(count);
}
