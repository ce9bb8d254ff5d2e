import { For, Show } from 'solid-js';
import { t } from '../language/language';
import { narrow } from '../widgets/narrow';
import './cautions.css';

const cautionOrder = ['pressure', 'mix', 'injection', 'gauge', 'authority'] as const;

/** Shown with every identification. `brief`: a phone shows the first, and the rest on request. */
export function Cautions(props: { readonly brief?: boolean }) {
  const brief = () => props.brief && narrow();
  const item = (key: (typeof cautionOrder)[number]) => <li>{t().result.caution[key]}</li>;
  const title = () => (
    <h2 id="cautions-title">
      <svg viewBox="0 0 24 22" width="24" height="22" aria-hidden="true">
        <path d="M12 1.5 L23 20.5 H1 Z M12 8 V14 M12 16.2 V18" />
      </svg>
      {t().result.cautions}
    </h2>
  );
  return (
    <section class="cautions" classList={{ brief: brief() }} aria-labelledby="cautions-title">
      <Show
        when={brief()}
        fallback={
          <>
            {title()}
            <ul>
              <For each={cautionOrder}>{item}</For>
            </ul>
          </>
        }
      >
        <p>{t().result.caution[cautionOrder[0]]}</p>
        <details>
          <summary>{title()}</summary>
          <ul>
            <For each={cautionOrder.slice(1)}>{item}</For>
          </ul>
        </details>
      </Show>
    </section>
  );
}
