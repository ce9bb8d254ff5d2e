import type { Thread } from '../thread';
import { threads } from '../threads';

/** A thread by the name a person types: '3/4-16 UNF', '3/4-16unf', 'm22 x 1.5', 'G 1/2', '3/4-16'.
 *  Null when no row of the tables is meant. */
export function namedThread(typed: string): Thread | null {
  const wanted = plain(typed);
  return byName.get(wanted) ?? withoutSeries.get(wanted) ?? null;
}

const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/×/g, 'x')
    .replace(/,/g, '.')
    .replace(/[\s"″]+/g, '');

const byName = new Map(threads.map((thread) => [plain(thread.designation), thread]));

/** Unified rows are unique without their series. */
const withoutSeries = new Map(
  threads
    .filter(({ system }) => system === 'UN')
    .map((thread) => [plain(thread.designation.replace(/ UN[A-Z]*$/, '')), thread]),
);
