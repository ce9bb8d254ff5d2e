import type { DrawerEntry } from '../../drawer/drawer-entry';
import { connectionTitle } from '../identification/connection-words';
import type { SheetState } from '../work/open-sheet';

export function entryState(entry: DrawerEntry): SheetState {
  if (entry.verdict !== 'open') return entry.verdict;
  const { state } = entry.decision;
  return entry.handedOver && state !== 'settled' ? 'handed-over' : state;
}

/** As nameOf says it for a whole sheet. */
export function entryName(entry: DrawerEntry): string | null {
  const { state, thread, connection } = entry.decision;
  if (state === 'unlisted' && entry.verdict !== 'confirmed') return null;
  const named = thread ?? (entry.likeliestThread ? `${entry.likeliestThread} ?` : null);
  if (!connection) return named;
  return named ? `${named} · ${connectionTitle(connection)}` : connectionTitle(connection);
}
