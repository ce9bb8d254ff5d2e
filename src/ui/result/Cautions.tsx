import { For, Show } from 'solid-js';
import { t } from '../language/language';
import { Fold } from '../widgets/Fold';
import './cautions.css';

const cautionOrder = ['pressure', 'mix', 'injection', 'gauge', 'authority'] as const;

/** Shown with every identification. `brief`: a phone shows the first, and the rest on request. */
export function Cautions(props: { readonly brief?: boolean }) {
  const list = (keys: readonly (typeof cautionOrder)[number][]) => (
    <ul>
      <For each={keys}>{(key) => <li>{t().result.caution[key]}</li>}</For>
    </ul>
  );
  return (
    <section class="cautions" aria-labelledby="cautions-title">
      <h2 id="cautions-title">
        <svg viewBox="0 0 24 22" width="24" height="22" aria-hidden="true">
          <path d="M12 1.5 L23 20.5 H1 Z M12 8 V14 M12 16.2 V18" />
        </svg>
        {t().result.cautions}
      </h2>
      <Show when={props.brief} fallback={list(cautionOrder)}>
        {list(cautionOrder.slice(0, 1))}
        <Fold title={t().loop.allCautions}>{list(cautionOrder.slice(1))}</Fold>
      </Show>
    </section>
  );
}
