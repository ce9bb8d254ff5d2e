import { createMemo, createSignal, For, Show } from 'solid-js';
import { entryMatches } from '../../drawer/drawer-entry';
import { askToPersist, type StorageUse } from '../../drawer/storage-use';
import { bytes } from '../language/format';
import { t } from '../language/language';
import { FileButton } from '../start/FileButton';
import type { SheetState } from '../work/open-sheet';
import { createDrawerList, exportAll } from './create-drawer-list';
import { entryState } from './entry-words';
import { SheetCard } from './SheetCard';
import './drawer.css';

const states: readonly SheetState[] = [
  'settled',
  'needs-reading',
  'unlisted',
  'handed-over',
  'confirmed',
  'rejected',
];

export function DrawerScreen() {
  const [search, setSearch] = createSignal('');
  const [state, setState] = createSignal<SheetState | 'all'>('all');
  const { entries, use, useAgain, remove, takeFile } = createDrawerList();
  const shown = createMemo(() =>
    (entries.latest ?? []).filter(
      (entry) =>
        (state() === 'all' || entryState(entry) === state()) && entryMatches(entry, search()),
    ),
  );
  return (
    <div class="drawer-screen">
      <div class="screen-head">
        <h1>{t().drawer.title}</h1>
        <p class="soft">{t().drawer.lead}</p>
      </div>
      <div class="drawer-tools">
        <label class="field">
          <span class="small soft">{t().drawer.search}</span>
          <input
            type="search"
            value={search()}
            onInput={(event) => setSearch(event.currentTarget.value)}
          />
        </label>
        <StateChoice state={state()} onState={setState} />
        <div class="row drawer-files">
          <button
            type="button"
            class="button"
            disabled={(entries.latest?.length ?? 0) === 0}
            onClick={() => void exportAll()}
          >
            {t().drawer.exportAll}
          </button>
          <FileButton
            label={t().drawer.import}
            accept=".crestwise,.crestwise-drawer,image/*"
            onFile={takeFile}
          />
        </div>
      </div>
      <Show when={entries.latest} fallback={<div class="screen-wait" />}>
        {(all) => (
          <>
            <p class="small soft" role="status">
              {t().drawer.count(shown().length)}
            </p>
            <Show
              when={shown().length > 0}
              fallback={<p>{all().length === 0 ? t().drawer.empty : t().drawer.noMatch}</p>}
            >
              <ul class="sheet-cards">
                <For each={shown()}>
                  {(entry) => <SheetCard entry={entry} onDelete={(one) => void remove(one)} />}
                </For>
              </ul>
            </Show>
          </>
        )}
      </Show>
      <Show when={use()}>
        {(now) => <StorageNote use={now()} onAsked={() => void useAgain()} />}
      </Show>
    </div>
  );
}

function StateChoice(props: {
  readonly state: SheetState | 'all';
  readonly onState: (state: SheetState | 'all') => void;
}) {
  return (
    <label class="field">
      <span class="small soft">{t().drawer.filter}</span>
      <select
        value={props.state}
        onChange={(event) => props.onState(event.currentTarget.value as SheetState | 'all')}
      >
        <option value="all">{t().drawer.all}</option>
        <For each={states}>{(one) => <option value={one}>{t().sheet.states[one]}</option>}</For>
      </select>
    </label>
  );
}

/** How much is stored, and whether the browser may clear it away. */
function StorageNote(props: { readonly use: StorageUse; readonly onAsked: () => void }) {
  return (
    <footer class="drawer-use small soft">
      <Show when={props.use.usedBytes}>
        {(used) => <span>{t().drawer.used(bytes(used()))}</span>}
      </Show>
      <span>{props.use.persistent ? t().drawer.persisted : t().drawer.notPersisted}</span>
      <Show when={!props.use.persistent}>
        <button
          type="button"
          class="button"
          onClick={async () => {
            await askToPersist();
            props.onAsked();
          }}
        >
          {t().drawer.persist}
        </button>
      </Show>
    </footer>
  );
}
