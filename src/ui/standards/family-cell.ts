import { aliasesOf } from '../../standards/aliases';
import type { Connection } from '../../standards/connections/connection';
import { tradeName } from '../language/trade-names';

/** Number, name and second names of a family: what the search looks through. */
export const familyCell = (row: Connection): string =>
  [row.family, ...new Set([tradeName(row.tradeName), ...aliasesOf(row)])].join(' · ');
