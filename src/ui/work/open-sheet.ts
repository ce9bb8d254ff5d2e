import type { Tool } from '../../journey/7-next-reading/next-reading';
import type { SheetWithPhotos } from '../../journey/8-sheet/sheet-file';
import type { CounterAnswer, Sheet, Shot } from '../../journey/8-sheet/sheet-schema';
import { connectionTitle } from '../identification/connection-words';

export type { CounterAnswer, Sheet, SheetWithPhotos, Shot, Tool };

export type SheetState = Sheet['conclusion']['decision']['state'] | 'confirmed' | 'rejected';

/** What the counter said outranks what the numbers say. */
export function stateOf(sheet: Pick<Sheet, 'counter' | 'conclusion'>): SheetState {
  const verdict = sheet.counter?.verdict ?? 'open';
  return verdict === 'open' ? sheet.conclusion.decision.state : verdict;
}

/** What to call it in a list: the settled thread and connection, else the likeliest thread. */
export function nameOf(sheet: Pick<Sheet, 'conclusion'>): string | null {
  const { decision, threads, nearest } = sheet.conclusion;
  if (decision.state === 'unlisted' || nearest) return null;
  const likeliest = threads.find((candidate) => candidate.system !== null);
  const thread = decision.thread ?? (likeliest?.system ? `${likeliest.designation} ?` : null);
  if (!thread) return decision.connection && connectionTitle(decision.connection);
  return decision.connection ? `${thread} · ${connectionTitle(decision.connection)}` : thread;
}
