import { createMemo, createSignal } from 'solid-js';
import type { Tables } from '../identification/table-rows';
import type { CounterAnswer } from '../work/open-sheet';
import { change, openSheet } from '../work/sheets';
import { choicesOf, chosenKey, type Identified } from './choices';
import { counterName } from './counter-name';

const none: CounterAnswer = {
  verdict: 'open',
  identified: null,
  by: '',
  remarks: '',
  parts: [],
  at: '',
};
/** Beside the keys of `choicesOf`. */
export const asFound = 'as-found';
export const other = 'other';

/** The counter's answer to the open sheet, written into it whenever a part of it changes. */
export function createJudging(tables: Tables) {
  const sheet = () => openSheet()!.sheet;
  const answer = (): CounterAnswer => sheet().counter ?? none;
  const decided = () => sheet().conclusion.decision;
  const choices = createMemo(() =>
    choicesOf(sheet(), (c) => (c ? (tables.rows(c, decided().thread)[0]?.thread ?? null) : null)),
  );

  const own = answer().identified;
  const [chosen, setChosen] = createSignal(
    own ? (chosenKey(choices(), own) ?? other) : decided().thread ? asFound : '',
  );
  const [words, setWords] = createSignal<Identified>(own ?? { thread: null, connection: null });
  const [missing, setMissing] = createSignal(false);
  const [parts, setParts] = createSignal(
    answer()
      .parts.map((part) => part.number)
      .join('\n'),
  );
  const [remarks, setRemarks] = createSignal(answer().remarks);

  /** Null: as found. Undefined: nothing chosen yet. */
  const identified = (): Identified | null | undefined => {
    if (chosen() === asFound) return null;
    if (chosen() === other) return words().thread || words().connection ? words() : undefined;
    return choices().find(({ key }) => key === chosen())?.identified;
  };
  const write = (part: Partial<CounterAnswer> = {}) =>
    void change(({ sheet: now }) => ({
      sheet: {
        ...now,
        counter: {
          ...answer(),
          remarks: remarks().slice(0, 4000),
          parts: partsOf(parts()),
          by: counterName().slice(0, 120),
          ...part,
          at: new Date().toISOString(),
        },
      },
    }));
  const judge = (verdict: 'confirmed' | 'rejected') => {
    if (answer().verdict === verdict) {
      write({ verdict: 'open', identified: null });
      return;
    }
    const it = identified();
    setMissing(verdict === 'confirmed' && it === undefined);
    if (verdict === 'rejected') write({ verdict, identified: null });
    else if (it !== undefined) write({ verdict, identified: structuredClone(it) });
  };
  /** A verdict given already follows what is chosen. */
  const follow = () => {
    setMissing(false);
    const it = identified();
    if (answer().verdict === 'confirmed' && it !== undefined)
      write({ identified: structuredClone(it) });
  };

  return {
    answer,
    decided,
    choices,
    chosen,
    choose: (key: string) => {
      setChosen(key);
      follow();
    },
    words,
    say: (next: Identified) => {
      setWords(next);
      follow();
    },
    missing,
    parts,
    setParts,
    remarks,
    setRemarks,
    write,
    judge,
  };
}

export type Judging = ReturnType<typeof createJudging>;

function partsOf(text: string): CounterAnswer['parts'] {
  return text
    .split('\n')
    .map((line) => line.trim().slice(0, 120))
    .filter((line) => line !== '')
    .slice(0, 50)
    .map((number) => ({ number, note: '' }));
}
