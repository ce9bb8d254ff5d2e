import { For, Show } from 'solid-js';
import { connectionTitle } from '../identification/connection-words';
import type { Tables } from '../identification/table-rows';
import { dateTime } from '../language/format';
import { t } from '../language/language';
import { openSheet } from '../work/sheets';
import type { Identified } from './choices';
import { counterName, setCounterName } from './counter-name';
import { asFound, createJudging, type Judging, other } from './create-judging';
import { OwnWords } from './OwnWords';

/** The counter's verdict on the open sheet: what it is, yes or no, own numbers, by whom. */
export function JudgeForm(props: { readonly tables: Tables }) {
  const judging = createJudging(props.tables);
  return (
    <section class="judge stack" aria-labelledby="judge-title">
      <h2 id="judge-title">{t().loop.judge}</h2>
      <WhatItIs of={judging} />
      <Show when={judging.chosen() === other}>
        <OwnWords tables={props.tables} words={judging.words()} onWords={judging.say} />
      </Show>
      <Verdict of={judging} />
      <JudgeName onName={() => openSheet()!.sheet.counter && judging.write()} />
      <PartsAndNotes of={judging} />
    </section>
  );
}

function WhatItIs(props: { readonly of: Judging }) {
  const { decided, choices, chosen, choose, missing } = props.of;
  return (
    <label class="field">
      <span class="small soft">{t().loop.itIs}</span>
      <select
        value={chosen()}
        aria-invalid={missing()}
        onChange={(event) => choose(event.currentTarget.value)}
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
          {({ key, identified }) => (
            <option value={key} selected={chosen() === key}>
              {spoken(identified)}
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
  );
}

function Verdict(props: { readonly of: Judging }) {
  const { answer, judge } = props.of;
  const verdicts = () =>
    [
      ['confirmed', t().result.confirm],
      ['rejected', t().result.reject],
    ] as const;
  return (
    <fieldset>
      <legend class="visually-hidden">{t().sheet.state}</legend>
      <div class="row verdict-buttons">
        <For each={verdicts()}>
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
  );
}

function JudgeName(props: { readonly onName: () => void }) {
  return (
    <label class="field">
      <span class="small soft">{t().loop.yourName}</span>
      <input
        value={counterName()}
        maxLength={120}
        autocomplete="name"
        onChange={(event) => {
          setCounterName(event.currentTarget.value.trim());
          props.onName();
        }}
      />
    </label>
  );
}

function PartsAndNotes(props: { readonly of: Judging }) {
  const { parts, setParts, remarks, setRemarks, write } = props.of;
  return (
    <div class="judge-fields">
      <label class="field">
        <span class="small soft">{t().result.partNumbers}</span>
        <textarea
          rows={2}
          value={parts()}
          onInput={(event) => setParts(event.currentTarget.value)}
          onChange={() => write()}
        />
      </label>
      <label class="field">
        <span class="small soft">{t().result.notes}</span>
        <textarea
          rows={2}
          value={remarks()}
          onInput={(event) => setRemarks(event.currentTarget.value)}
          onChange={() => write()}
        />
      </label>
    </div>
  );
}

function spoken(it: Pick<Identified, 'thread' | 'connection'>): string {
  return [it.thread, it.connection && connectionTitle(it.connection)]
    .filter((part) => part)
    .join(' · ');
}
