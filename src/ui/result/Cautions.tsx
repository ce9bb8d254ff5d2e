import { For } from 'solid-js';
import { t } from '../language/language';
import './cautions.css';

export const cautionOrder = ['pressure', 'mix', 'injection', 'gauge', 'authority'] as const;

/** Shown with every identification. */
export function Cautions() {
  return (
    <section class="cautions" aria-labelledby="cautions-title">
      <h2 id="cautions-title">
        <svg viewBox="0 0 24 22" width="24" height="22" aria-hidden="true">
          <path d="M12 1.5 L23 20.5 H1 Z M12 8 V14 M12 16.2 V18" />
        </svg>
        {t().result.cautions}
      </h2>
      <ul>
        <For each={cautionOrder}>{(key) => <li>{t().result.caution[key]}</li>}</For>
      </ul>
    </section>
  );
}
