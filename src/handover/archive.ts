import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import { z } from 'zod';
import {
  type SheetFileRefusal,
  type SheetWithPhotos,
  sheetFromFile,
  sheetToFile,
} from '../journey/8-sheet/sheet-file';
import { ok, type Result, refuse } from '../quantity/result';

/** All sheets of a drawer as one file: a ZIP with a table of contents and one sheet file each. */
export const archiveFile = {
  extension: '.crestwise-drawer',
  mediaType: 'application/vnd.crestwise.drawer+zip',
} as const;

const contentsName = 'drawer.json';
const contents = z.object({
  format: z.literal('crestwise-drawer'),
  version: z.literal(1),
  sheets: z.array(z.uuid()).max(10_000),
});

/** Browsers hold an archive in memory; above this, export in parts. */
const maxArchiveBytes = 1.5e9;
const maxContentsBytes = 1e6;

export type ArchiveRefusal = 'not-an-archive' | 'newer-version' | 'too-large';

export interface ReadArchive {
  readonly sheets: readonly SheetWithPhotos[];
  /** Sheets that could not be read, by their place in the archive, with the reason. */
  readonly refused: readonly { readonly id: string; readonly reason: SheetFileRefusal }[];
}

/** Sheets that cannot be written are left out and counted. */
export function archiveToFile(
  sheets: readonly SheetWithPhotos[],
): Result<{ readonly file: Uint8Array; readonly leftOut: number }, 'too-large'> {
  const parts: Zippable = {};
  const ids: string[] = [];
  let bytes = 0;
  for (const item of sheets) {
    const file = sheetToFile(item);
    if (!file.ok) continue;
    bytes += file.value.length;
    if (bytes > maxArchiveBytes) return tooLarge();
    ids.push(item.sheet.id);
    parts[sheetPart(item.sheet.id)] = [file.value, { level: 0 }];
  }
  const table = { format: 'crestwise-drawer', version: 1, sheets: ids };
  parts[contentsName] = [strToU8(JSON.stringify(table)), { level: 6 }];
  return ok({ file: zipSync(parts), leftOut: sheets.length - ids.length });
}

export function archiveFromFile(file: Uint8Array): Result<ReadArchive, ArchiveRefusal> {
  if (file.length > maxArchiveBytes) return tooLarge();
  const table = readContents(file);
  if (!table.ok) return table;
  const ids = new Map(table.value.map((id) => [sheetPart(id), id]));
  // Sheet files are stored, not packed, so together they cannot be larger than the archive itself.
  const parts = unpack(file, (name) => ids.has(name), file.length);
  const sheets: SheetWithPhotos[] = [];
  const refused: { id: string; reason: SheetFileRefusal }[] = [];
  for (const [name, id] of ids) {
    const sheet = sheetFromFile(parts[name] ?? new Uint8Array(0));
    if (sheet.ok) sheets.push(sheet.value);
    else refused.push({ id, reason: sheet.reason });
  }
  return ok({ sheets, refused });
}

function readContents(file: Uint8Array): Result<readonly string[], ArchiveRefusal> {
  let raw: unknown;
  try {
    const parts = unpack(file, (name) => name === contentsName, maxContentsBytes);
    raw = JSON.parse(strFromU8(parts[contentsName] ?? new Uint8Array(0)));
  } catch {
    return notAnArchive();
  }
  const table = contents.safeParse(raw);
  if (table.success) return ok(table.data.sheets);
  const newer = z
    .object({ format: z.literal('crestwise-drawer'), version: z.number().gt(1) })
    .safeParse(raw);
  return newer.success
    ? refuse(
        'newer-version',
        'This archive was made by a newer Crestwise: reload the page while online to update.',
      )
    : notAnArchive();
}

/** The wanted parts, as long as all of them together stay within a size. */
function unpack(
  file: Uint8Array,
  wanted: (name: string) => boolean,
  limitBytes: number,
): Record<string, Uint8Array> {
  let left = limitBytes;
  try {
    return unzipSync(file, {
      filter: ({ name, originalSize }) => {
        if (!wanted(name) || originalSize > left) return false;
        left -= originalSize;
        return true;
      },
    });
  } catch {
    return {};
  }
}

const sheetPart = (id: string) => `sheets/${id}.crestwise`;

const notAnArchive = () =>
  refuse('not-an-archive', 'Choose a drawer that Crestwise exported: this is something else.');

const tooLarge = () =>
  refuse('too-large', 'This is too much for one archive: export sheets one by one.');
