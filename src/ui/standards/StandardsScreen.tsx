import { createResource, createSignal, For, Match, Show, Switch } from 'solid-js';
import type { Connection } from '../../standards/connections/connection';
import { t } from '../language/language';
import { route } from '../shell/route';
import { ConnectionTable } from './ConnectionTable';
import { ThreadTable } from './ThreadTable';
import './standards.css';

export function StandardsScreen() {
  const asked = () => {
    const now = route();
    return now.screen === 'standards' ? now.query : '';
  };
  const [tab, setTab] = createSignal<'threads' | 'connections'>(
    asked() ? 'connections' : 'threads',
  );
  const [search, setSearch] = createSignal(asked());
  const [unit, setUnit] = createSignal<'mm' | 'in'>('mm');
  const [data] = createResource(async () => {
    const [{ threads }, { connections }] = await Promise.all([
      import('../../standards/threads'),
      import('../../standards/connections/connections'),
    ]);
    const users = new Map<string, Connection[]>();
    for (const one of connections)
      if (one.thread !== null) users.set(one.thread, [...(users.get(one.thread) ?? []), one]);
    return { threads, connections, users };
  });
  return (
    <div class="standards-screen">
      <div class="screen-head">
        <h1>{t().standards.title}</h1>
        <p class="soft">{t().standards.lead}</p>
      </div>
      <div class="standards-tools">
        <div class="row">
          <For each={['threads', 'connections'] as const}>
            {(which) => (
              <button
                type="button"
                class="button"
                aria-pressed={tab() === which}
                onClick={() => setTab(which)}
              >
                {t().standards[which]}
              </button>
            )}
          </For>
        </div>
        <label class="field">
          <span class="small soft">{t().standards.search}</span>
          <input
            type="search"
            value={search()}
            onInput={(event) => setSearch(event.currentTarget.value)}
          />
        </label>
        <label class="field">
          <span class="small soft">{t().standards.unit}</span>
          <select
            value={unit()}
            onChange={(event) => setUnit(event.currentTarget.value as 'mm' | 'in')}
          >
            <option value="mm">mm</option>
            <option value="in">{t().reading.units.in}</option>
          </select>
        </label>
      </div>
      <Show
        when={data()}
        fallback={<p class="screen-wait soft">{t().standards.loading} …</p>}
        keyed
      >
        {({ threads, connections, users }) => (
          <Switch>
            <Match when={tab() === 'threads'}>
              <ThreadTable rows={threads} users={users} search={search()} unit={unit()} />
            </Match>
            <Match when={tab() === 'connections'}>
              <ConnectionTable rows={connections} search={search()} unit={unit()} />
            </Match>
          </Switch>
        )}
      </Show>
    </div>
  );
}
