import type { Sheet } from '../../journey/8-sheet/sheet-schema';
import { wearOfSheet } from './wear-of-sheet';
import { findingLine } from './wear-words';

/** One line for the shared picture. */
export function wearLines(sheet: Sheet): string[] {
  const wear = wearOfSheet(sheet);
  return wear ? [findingLine(wear)] : [];
}
