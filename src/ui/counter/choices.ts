import type { Sheet } from '../work/open-sheet';

export type Identified = NonNullable<NonNullable<Sheet['counter']>['identified']>;

/** What the counter may say a part is: each candidate of the sheet, with its key. */
export interface Choice {
  readonly key: string;
  readonly identified: Identified;
}

/** As many as a list can be overlooked. */
const most = 6;

export function choicesOf(
  { conclusion }: Pick<Sheet, 'conclusion'>,
  threadOf: (c: Identified['connection']) => string | null,
): Choice[] {
  const { connections, threads, decision } = conclusion;
  return [
    ...connections.slice(0, most).map(({ probability: _, ...connection }, i) => ({
      key: `connection-${i}`,
      identified: { thread: threadOf(connection) ?? decision.thread, connection },
    })),
    ...threads.flatMap((thread, i) =>
      thread.system === null || i >= most
        ? []
        : [{ key: `thread-${i}`, identified: { thread: thread.designation, connection: null } }],
    ),
  ];
}

/** Which of them an earlier verdict chose; null for one of the counter's own words. */
export function chosenKey(choices: readonly Choice[], identified: Identified): string | null {
  const same = (choice: Choice) =>
    choice.identified.thread === identified.thread &&
    JSON.stringify(choice.identified.connection) === JSON.stringify(identified.connection);
  return choices.find(same)?.key ?? null;
}
