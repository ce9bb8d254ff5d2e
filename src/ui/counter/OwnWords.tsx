import { createMemo, For, Show } from 'solid-js';
import { connectionTitle } from '../identification/connection-words';
import type { Tables } from '../identification/table-rows';
import { t } from '../language/language';
import type { Identified } from './choices';

/** A thread by name, of the tables or not, and a connection on it. */
export function OwnWords(props: {
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
