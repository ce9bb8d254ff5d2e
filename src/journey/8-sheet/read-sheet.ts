import { z } from 'zod';
import { ok, type Result, refuse } from '../../quantity/result';
import { type Sheet, sheetSchema, sheetVersion } from './sheet-schema';

export type SheetRefusal = 'not-a-sheet' | 'newer-version' | 'damaged-sheet';

/** Turns the raw sheet of one version into the next. */
export type Migration = (older: Record<string, unknown>) => Record<string, unknown>;

/** From version n to n + 1, keyed by n. Version 1 is the first. */
const migrations: Readonly<Record<number, Migration>> = {};

const header = z.object({
  format: z.literal('crestwise-sheet'),
  version: z.number().int().positive(),
});

/** A sheet out of parsed JSON of any origin. Unknown keys are dropped, older versions brought up
 *  to date, newer ones refused. */
export function readSheet(raw: unknown): Result<Sheet, SheetRefusal> {
  const known = header.safeParse(raw);
  if (!known.success)
    return refuse('not-a-sheet', 'Choose a sheet that Crestwise exported: this is something else.');
  const current = bringUpToDate(raw as Record<string, unknown>, known.data.version, {
    to: sheetVersion,
    migrations,
  });
  if (!current.ok) return current;
  const sheet = sheetSchema.safeParse(current.value);
  if (sheet.success) return ok(sheet.data);
  const where = sheet.error.issues[0]?.path.join('.') || 'sheet';
  return refuse(
    'damaged-sheet',
    `This sheet is damaged (at ${where.slice(0, 80)}): ask for it to be exported again.`,
  );
}

/** Applies migrations one after the other. */
export function bringUpToDate(
  raw: Record<string, unknown>,
  from: number,
  { to, migrations }: { to: number; migrations: Readonly<Record<number, Migration>> },
): Result<Record<string, unknown>, 'newer-version' | 'damaged-sheet'> {
  if (from > to)
    return refuse(
      'newer-version',
      'This sheet was made by a newer Crestwise: reload the page while online to update, then open it again.',
    );
  let sheet = raw;
  for (let version = from; version < to; version++) {
    const migrate = migrations[version];
    if (!migrate)
      return refuse('damaged-sheet', `Sheets of version ${version} can no longer be read here.`);
    sheet = { ...migrate(sheet), version: version + 1 };
  }
  return ok(sheet);
}
