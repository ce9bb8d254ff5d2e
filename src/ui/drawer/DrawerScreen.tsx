import { createMemo, createResource, createSignal, For, onCleanup, onMount, Show } from 'solid-js';
import { type DrawerEntry, entryMatches } from '../../drawer/drawer-entry';
import { askToPersist, storageUse } from '../../drawer/storage-use';
import { bytes } from '../language/format';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { FileButton } from '../start/FileButton';
import { saveFile } from '../widgets/save-file';
import { takeIn } from '../work/intake';
import { drawerAccess } from '../work/keep';
import type { SheetState } from '../work/open-sheet';
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

/** Deletions can be undone for this long, and until the page is opened next. */
const undoMs = 20_000;

export function DrawerScreen() {
  const [search, setSearch] = createSignal('');
  const [state, setState] = createSignal<SheetState | 'all'>('all');
  const [entries, { refetch }] = createResource(async () => {
    const { drawer, listDrawer } = await drawerAccess();
    const list = await listDrawer(drawer);
    if (!list.ok) notify(t().shell.storageOff);
    return list.ok ? list.value : [];
  });
  const [use, { refetch: useAgain }] = createResource(() => storageUse());
  onMount(async () => {
    const { drawer, sweepRemoved } = await drawerAccess();
    onCleanupLater(drawer.onElsewhere(() => void refetch()));
    await sweepRemoved(drawer, new Date(Date.now() - undoMs));
  });
  const stops: (() => void)[] = [];
  const onCleanupLater = (stop: () => void) => stops.push(stop);
  onCleanup(() => {
    for (const stop of stops) stop();
  });

  const shown = createMemo(() =>
    (entries.latest ?? []).filter(
      (entry) =>
        (state() === 'all' || entryState(entry) === state()) && entryMatches(entry, search()),
    ),
  );

  const remove = async (entry: DrawerEntry) => {
    const { drawer, removeSheet, restoreSheet } = await drawerAccess();
    await removeSheet(drawer, entry.id, new Date());
    await refetch();
    notify(t().drawer.deleted, {
      label: t().drawer.undo,
      run: async () => {
        await restoreSheet(drawer, entry.id);
        await refetch();
      },
    });
  };

  const exportAll = async () => {
    const { archiveFile, drawer, exportDrawer } = await drawerAccess();
    const made = await exportDrawer(drawer);
    if (!made.ok) {
      notify(made.advice);
      return;
    }
    const day = new Date().toISOString().slice(0, 10);
    const blob = new Blob([made.value.file.slice()], { type: archiveFile.mediaType });
    saveFile(blob, `crestwise-${day}${archiveFile.extension}`);
  };

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
        <label class="field">
          <span class="small soft">{t().drawer.filter}</span>
          <select
            value={state()}
            onChange={(event) => setState(event.currentTarget.value as SheetState | 'all')}
          >
            <option value="all">{t().drawer.all}</option>
            <For each={states}>{(one) => <option value={one}>{t().sheet.states[one]}</option>}</For>
          </select>
        </label>
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
            onFile={async (file) => {
              await takeIn(file);
              await refetch();
              await useAgain();
            }}
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
        {(now) => (
          <footer class="drawer-use small soft">
            <Show when={now().usedBytes}>
              {(used) => <span>{t().drawer.used(bytes(used()))}</span>}
            </Show>
            <span>{now().persistent ? t().drawer.persisted : t().drawer.notPersisted}</span>
            <Show when={!now().persistent}>
              <button
                type="button"
                class="button"
                onClick={async () => {
                  await askToPersist();
                  await useAgain();
                }}
              >
                {t().drawer.persist}
              </button>
            </Show>
          </footer>
        )}
      </Show>
    </div>
  );
}
