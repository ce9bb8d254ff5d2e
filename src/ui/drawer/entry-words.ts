import type { DrawerEntry } from '../../drawer/drawer-entry';
import type { SheetState } from '../work/open-sheet';

export function entryState(entry: DrawerEntry): SheetState {
  return entry.verdict === 'open' ? entry.decision.state : entry.verdict;
}

/** As nameOf says it for a whole sheet. */
export function entryName(entry: DrawerEntry): string | null {
  const { state, thread, connection } = entry.decision;
  if (state === 'unlisted') return null;
  const named = thread ?? (entry.likeliestThread ? `${entry.likeliestThread} ?` : null);
  return named && connection ? `${named} · ${connection.family} ${connection.size}` : named;
}
