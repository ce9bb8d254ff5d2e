import { createMemo, createSignal, For, Show } from 'solid-js';
import { connectionTitle } from '../identification/connection-words';
import type { Tables } from '../identification/table-rows';
import { dateTime } from '../language/format';
import { t } from '../language/language';
import type { CounterAnswer } from '../work/open-sheet';
import { change, openSheet } from '../work/sheets';
import { choicesOf, chosenKey, type Identified } from './choices';
import { counterName, setCounterName } from './counter-name';

const none: CounterAnswer = {
  verdict: 'open',
  identified: null,
  by: '',
  remarks: '',
  parts: [],
  at: '',
};
const asFound = 'as-found';
const other = 'other';

/** The counter's verdict on the open sheet: what it is, yes or no, own numbers, by whom. */
export function JudgeForm(props: { readonly tables: Tables }) {
  const sheet = () => openSheet()!.sheet;
  const answer = (): CounterAnswer => sheet().counter ?? none;
  const decided = () => sheet().conclusion.decision;
  const choices = createMemo(() =>
    choicesOf(sheet(), (c) =>
      c ? (props.tables.rows(c, decided().thread)[0]?.thread ?? null) : null,
    ),
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
  const write = (part: Partial<CounterAnswer>) =>
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
    else if (it !== undefined) write({ verdict, identified: copied(it) });
  };
  /** A verdict given already follows what is chosen. */
  const follow = () => {
    setMissing(false);
    const it = identified();
    if (answer().verdict === 'confirmed' && it !== undefined) write({ identified: copied(it) });
  };

  return (
    <section class="judge stack" aria-labelledby="judge-title">
      <h2 id="judge-title">{t().loop.judge}</h2>
      <label class="field">
        <span class="small soft">{t().loop.itIs}</span>
        <select
          value={chosen()}
          aria-invalid={missing()}
          onChange={(event) => {
            setChosen(event.currentTarget.value);
            follow();
          }}
        >
          <Show when={!decided().thread}>
            <option value="">{t().loop.choose}</option>
          </Show>
          <Show when={decided().thread}>
            <option value={asFound} selected={chosen() === asFound}>
              {t().loop.asFound(spoken(decided()))}
            </option>
          </Show>
          <For each={choices()}>
            {({ key, identified: it }) => (
              <option value={key} selected={chosen() === key}>
                {spoken(it)}
              </option>
            )}
          </For>
          <option value={other} selected={chosen() === other}>
            {t().loop.other}
          </option>
        </select>
        <Show when={missing()}>
          <span class="small wrong" role="alert">
            {t().loop.sayFirst}
          </span>
        </Show>
      </label>
      <Show when={chosen() === other}>
        <OwnWords
          tables={props.tables}
          words={words()}
          onWords={(next) => {
            setWords(next);
            follow();
          }}
        />
      </Show>
      <fieldset>
        <legend class="visually-hidden">{t().sheet.state}</legend>
        <div class="row verdict-buttons">
          <For
            each={
              [
                ['confirmed', t().result.confirm],
                ['rejected', t().result.reject],
              ] as const
            }
          >
            {([verdict, label]) => (
              <button
                type="button"
                class="button"
                data-verdict={verdict}
                aria-pressed={answer().verdict === verdict}
                onClick={() => judge(verdict)}
              >
                {label}
              </button>
            )}
          </For>
          <span class="small soft" role="status">
            {answer().verdict === 'open'
              ? t().loop.noVerdict
              : t().loop.judged(answer().by, dateTime(answer().at))}
          </span>
        </div>
      </fieldset>
      <label class="field">
        <span class="small soft">{t().loop.yourName}</span>
        <input
          value={counterName()}
          maxLength={120}
          autocomplete="name"
          onChange={(event) => {
            setCounterName(event.currentTarget.value.trim());
            if (sheet().counter) write({});
          }}
        />
      </label>
      <div class="judge-fields">
        <label class="field">
          <span class="small soft">{t().result.partNumbers}</span>
          <textarea
            rows={2}
            value={parts()}
            onInput={(event) => setParts(event.currentTarget.value)}
            onChange={() => write({})}
          />
        </label>
        <label class="field">
          <span class="small soft">{t().result.notes}</span>
          <textarea
            rows={2}
            value={remarks()}
            onInput={(event) => setRemarks(event.currentTarget.value)}
            onChange={() => write({})}
          />
        </label>
      </div>
    </section>
  );
}

/** A thread by name, of the tables or not, and a connection on it. */
function OwnWords(props: {
  readonly tables: Tables;
  readonly words: Identified;
  readonly onWords: (words: Identified) => void;
}) {
  const users = createMemo(() => {
    const name = props.words.thread;
    return name ? props.tables.users(name) : [];
  });
  return (
    <div class="judge-fields">
      <label class="field">
        <span class="small soft">{t().loop.otherThread}</span>
        <input
          value={props.words.thread ?? ''}
          maxLength={120}
          onChange={(event) => {
            const thread = event.currentTarget.value.trim() || null;
            props.onWords({ thread, connection: null });
          }}
        />
        <Show when={props.words.thread && !props.tables.thread(props.words.thread)}>
          <span class="small soft">{t().loop.unknownThread}</span>
        </Show>
      </label>
      <label class="field">
        <span class="small soft">{t().loop.otherConnection}</span>
        <select
          onChange={(event) => {
            const row = users()[event.currentTarget.selectedIndex - 1];
            const connection = row
              ? {
                  family: row.family,
                  size: row.size,
                  end: row.end,
                  form: row.form,
                  endTypes: [...row.endTypes],
                }
              : null;
            props.onWords({ ...props.words, connection });
          }}
        >
          <option>{t().loop.noConnection}</option>
          <For each={users()}>
            {(row) => (
              <option
                selected={
                  props.words.connection?.family === row.family &&
                  props.words.connection?.end === row.end
                }
              >
                {connectionTitle(row)}
              </option>
            )}
          </For>
        </select>
      </label>
    </div>
  );
}

function spoken(it: Pick<Identified, 'thread' | 'connection'>): string {
  return [it.thread, it.connection && connectionTitle(it.connection)]
    .filter((part) => part)
    .join(' · ');
}

function partsOf(text: string): CounterAnswer['parts'] {
  return text
    .split('\n')
    .map((line) => line.trim().slice(0, 120))
    .filter((line) => line !== '')
    .slice(0, 50)
    .map((number) => ({ number, note: '' }));
}

const copied = (it: Identified | null) => structuredClone(it);
