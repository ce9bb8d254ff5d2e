import { createResource, For, onCleanup, onMount, Show } from 'solid-js';
import { SheetCard } from '../drawer/SheetCard';
import { t } from '../language/language';
import { hashOf } from '../shell/route';
import { drawerAccess } from '../work/keep';

export function Recent() {
  const [entries, { refetch }] = createResource(async () => {
    const { drawer, listDrawer } = await drawerAccess();
    const list = await listDrawer(drawer);
    return list.ok ? list.value.slice(0, 4) : [];
  });
  let stop: (() => void) | null = null;
  onMount(async () => {
    const { drawer } = await drawerAccess();
    stop = drawer.onElsewhere(() => void refetch());
  });
  onCleanup(() => stop?.());
  return (
    <Show when={(entries.latest?.length ?? 0) > 0}>
      <section class="start-recent stack tight" aria-labelledby="recent-title">
        <h2 id="recent-title">{t().start.recent}</h2>
        <ul class="sheet-cards">
          <For each={entries.latest}>{(entry) => <SheetCard entry={entry} />}</For>
        </ul>
        <p>
          <a href={hashOf({ screen: 'drawer' })}>{t().shell.drawer}</a>
        </p>
      </section>
    </Show>
  );
}
