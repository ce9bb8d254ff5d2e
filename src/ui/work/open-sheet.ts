import type { Tool } from '../../journey/7-next-reading/tools';
import type { SheetWithPhotos } from '../../journey/8-sheet/sheet-file';
import type { CounterAnswer, Sheet, Shot } from '../../journey/8-sheet/sheet-schema';
import { whatHolds } from '../../journey/8-sheet/what-holds';
import { connectionTitle } from '../identification/connection-words';

export type { CounterAnswer, Sheet, SheetWithPhotos, Shot, Tool };

export type SheetState =
  | Sheet['conclusion']['decision']['state']
  | 'handed-over'
  | 'confirmed'
  | 'rejected';

/** What the counter said outranks what the numbers say. */
export function stateOf(sheet: Pick<Sheet, 'counter' | 'conclusion' | 'handedOver'>): SheetState {
  const verdict = sheet.counter?.verdict ?? 'open';
  if (verdict !== 'open') return verdict;
  const { state } = sheet.conclusion.decision;
  return sheet.handedOver && state !== 'settled' ? 'handed-over' : state;
}

/** What to call it in a list: what holds, else the likeliest thread. */
export function nameOf(sheet: Pick<Sheet, 'conclusion' | 'counter'>): string | null {
  const { threads, decision, nearest } = sheet.conclusion;
  const held = whatHolds(sheet);
  if (held.by === 'evidence' && (decision.state === 'unlisted' || nearest)) return null;
  const likeliest = threads.find((candidate) => candidate.system !== null);
  const thread =
    held.thread ?? (likeliest?.system && !held.connection ? `${likeliest.designation} ?` : null);
  const connection = held.connection && connectionTitle(held.connection);
  return [thread, connection].filter((part) => part).join(' · ') || null;
}
