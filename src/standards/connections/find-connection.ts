import type { Connection } from './connection';

/** What is known of an end: family and size always, the rest where it is settled. */
export interface ConnectionName {
  readonly family: string;
  readonly size: string;
  readonly end?: Connection['end'] | null | undefined;
  readonly form?: string | null | undefined;
  readonly seat?: Connection['seat'] | null | undefined;
  readonly thread?: string | null | undefined;
}

/** Every row that agrees with all that is known: several forms where the form is open. */
export function rowsOf(name: ConnectionName, rows: readonly Connection[]): Connection[] {
  return rows.filter(
    (row) =>
      row.family === name.family &&
      row.size === name.size &&
      (!name.end || row.end === name.end) &&
      (!name.form || row.form === name.form) &&
      (!name.seat || row.seat === name.seat) &&
      (!name.thread || row.thread === name.thread),
  );
}
