import { For, type JSX } from 'solid-js';
import { LanguagePicker } from '../language/LanguagePicker';
import { t } from '../language/language';
import { hashOf, type Route, route } from './route';
import './shell.css';

const places: readonly { readonly to: Route; readonly covers: readonly Route['screen'][] }[] = [
  {
    to: { screen: 'start' },
    covers: [
      'start',
      'shoot',
      'measuring',
      'readings',
      'used',
      'sheet',
      'result',
      'wear',
      'counter',
    ],
  },
  { to: { screen: 'card' }, covers: ['card'] },
  { to: { screen: 'drawer' }, covers: ['drawer'] },
  { to: { screen: 'standards', query: '' }, covers: ['standards'] },
];

/** The drawing sheet everything lies on: a border, and its title strip for moving about. */
export function ShellFrame(props: { readonly children: JSX.Element }) {
  const name = (to: Route) =>
    ({
      start: t().shell.measure,
      card: t().shell.card,
      drawer: t().shell.drawer,
      standards: t().shell.standards,
    })[to.screen as 'start' | 'card' | 'drawer' | 'standards'];
  return (
    <div class="frame">
      <button
        type="button"
        class="skip"
        onClick={() => document.querySelector<HTMLElement>('main')?.focus()}
      >
        {t().shell.skip}
      </button>
      <header class="strip">
        <a class="wordmark" href="#/" aria-label="Crestwise">
          <Mark />
          <span>Crestwise</span>
        </a>
        <nav class="places" aria-label={t().shell.nav}>
          <For each={places}>
            {(place) => (
              <a
                href={hashOf(place.to)}
                aria-current={place.covers.includes(route().screen) ? 'page' : undefined}
              >
                {name(place.to)}
              </a>
            )}
          </For>
        </nav>
        <LanguagePicker />
      </header>
      <main id="content" tabIndex={-1}>
        {props.children}
      </main>
      <footer class="foot small soft">
        <a href={hashOf({ screen: 'about' })}>{t().shell.about}</a>
      </footer>
    </div>
  );
}

/** Three crests over an axis. */
function Mark() {
  return (
    <svg viewBox="0 0 28 20" width="28" height="20" aria-hidden="true">
      <path d="M2 12 L6 4 L10 12 L14 4 L18 12 L22 4 L26 12" class="mark-crest" />
      <path d="M1 17.5 h10 m2 0 h2 m2 0 h10" class="mark-axis" />
    </svg>
  );
}
