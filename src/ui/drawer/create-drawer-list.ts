import { createResource, onCleanup, onMount } from 'solid-js';
import type { DrawerEntry } from '../../drawer/drawer-entry';
import { storageUse } from '../../drawer/storage-use';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { saveFile } from '../widgets/save-file';
import { takeIn } from '../work/intake';
import { drawerAccess } from '../work/keep';

/** Deletions can be undone for this long, and until the page is opened next. */
const undoMs = 20_000;

/** What the drawer holds, kept up to date while the owner lives, and what can be done with it. */
export function createDrawerList() {
  const [entries, { refetch }] = createResource(async () => {
    const { drawer, listDrawer } = await drawerAccess();
    const list = await listDrawer(drawer);
    if (!list.ok) notify(t().shell.storageOff);
    return list.ok ? list.value : [];
  });
  const [use, { refetch: useAgain }] = createResource(() => storageUse());
  const stops: (() => void)[] = [];
  onMount(async () => {
    const { drawer, sweepRemoved } = await drawerAccess();
    stops.push(drawer.onElsewhere(() => void refetch()));
    await sweepRemoved(drawer, new Date(Date.now() - undoMs));
  });
  onCleanup(() => {
    for (const stop of stops) stop();
  });

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

  const takeFile = async (file: File) => {
    await takeIn(file);
    await refetch();
    await useAgain();
  };

  return { entries, use, useAgain, remove, takeFile };
}

export async function exportAll(): Promise<void> {
  const { archiveFile, drawer, exportDrawer } = await drawerAccess();
  const made = await exportDrawer(drawer);
  if (!made.ok) {
    notify(made.advice);
    return;
  }
  const day = new Date().toISOString().slice(0, 10);
  const blob = new Blob([made.value.file.slice()], { type: archiveFile.mediaType });
  saveFile(blob, `crestwise-${day}${archiveFile.extension}`);
}
