import { whatHolds } from '../../journey/8-sheet/what-holds';
import type { Connection } from '../../standards/connections/connection';
import type { Tables } from '../identification/table-rows';
import type { Sheet } from '../work/open-sheet';
import { type AssemblyKind, assemblyKind } from './assembly';

export interface SettledEnd {
  /** The commonest of the rows that agree with what is settled. */
  readonly row: Connection;
  /** Null where those rows are put together in different ways: the form is still open. */
  readonly kind: AssemblyKind | null;
}

/** The table row of the connection that holds for a sheet, with end, form and thread as far as settled.
 *  The first sheets named family and size alone: their end stands in the conclusion. */
export function settledEnd(
  sheet: Pick<Sheet, 'conclusion' | 'counter'>,
  tables: Tables,
): SettledEnd | null {
  const { thread, connection: decided } = whatHolds(sheet);
  if (!decided) return null;
  const rows = tables.rows({ ...decided, end: decided.end ?? sheet.conclusion.end, thread });
  const [row] = rows;
  if (!row) return null;
  const kinds = new Set(rows.map(assemblyKind));
  return { row, kind: kinds.size === 1 ? assemblyKind(row) : null };
}
