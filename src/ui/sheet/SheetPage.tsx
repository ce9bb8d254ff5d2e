import { createSignal, type JSX, Match, onMount, Switch } from 'solid-js';
import { t } from '../language/language';
import { hashOf } from '../shell/route';
import { openById, openSheet } from '../work/sheets';

/** A page about one kept sheet: opens it, and says so where it is not on this device. */
export function SheetPage(props: {
  readonly id: string;
  readonly title: string;
  /** More that the page cannot do without is still being fetched. */
  readonly waiting?: boolean;
  readonly children: JSX.Element;
}) {
  const [state, setState] = createSignal<'opening' | 'open' | 'missing'>('opening');
  onMount(async () => setState((await openById(props.id)) ? 'open' : 'missing'));
  return (
    <Switch fallback={<div class="screen-wait" />}>
      <Match when={state() === 'missing'}>
        <div class="stack">
          <h1>{props.title}</h1>
          <p>{t().sheet.missing}</p>
          <p>
            <a href={hashOf({ screen: 'drawer' })}>{t().drawer.title}</a>
          </p>
        </div>
      </Match>
      <Match when={state() === 'open' && openSheet() && !props.waiting}>{props.children}</Match>
    </Switch>
  );
}
