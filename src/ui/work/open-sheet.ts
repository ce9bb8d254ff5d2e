import type { Tool } from '../../journey/7-next-reading/next-reading';
import type { SheetWithPhotos } from '../../journey/8-sheet/sheet-file';
import type { CounterAnswer, Sheet, Shot } from '../../journey/8-sheet/sheet-schema';
import { type Holding, whatHolds } from '../../journey/8-sheet/what-holds';
import { endWords, threadName } from '../result/end-words';

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
  const { threads, decision } = sheet.conclusion;
  const held = whatHolds(sheet);
  if (held.by === 'evidence' && decision.state === 'unlisted') return null;
  const likeliest = threads.find((candidate) => candidate.system !== null);
  const named = held.thread && threadName(held.thread, held.hand);
  const thread =
    named ?? (likeliest?.system && !held.connection ? `${likeliest.designation} ?` : null);
  const connection = held.connection && connectionWords(held.connection);
  return [thread, connection].filter((part) => part).join(' · ') || null;
}

/** 'ISO 11926 -8, male, stud'. */
export function connectionWords(connection: NonNullable<Holding['connection']>): string {
  return [`${connection.family} ${connection.size}`, endWords(connection)]
    .filter((part) => part !== '')
    .join(', ');
}
