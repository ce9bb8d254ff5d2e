import { For, Show } from 'solid-js';
import type { WearAssessment } from '../../journey/wear/assess';
import { t } from '../language/language';
import { levelWords, openInWords } from './wear-words';

/** The finding with its reasons in the trade's order, and what nobody has looked at. */
export function FindingBlock(props: { readonly wear: WearAssessment; readonly short?: boolean }) {
  const finding = () => props.wear.finding;
  return (
    <div class="wear-finding stack tight" data-level={finding().level ?? 'nothing'}>
      <p class="wear-level">{levelWords(finding().level)}</p>
      <Show when={!props.short}>
        <p>{t().wear.levelText[finding().level ?? 'nothing']}</p>
      </Show>
      <Show when={finding().reasons.length > 0}>
        <ul class="wear-reasons">
          <For each={finding().reasons}>
            {({ level, reason }) => (
              <li data-level={level} data-reason={reason}>
                {t().wear.reasons[reason]}
              </li>
            )}
          </For>
        </ul>
      </Show>
      <Show when={finding().open.length > 0}>
        <p class="small soft">
          {t().wear.notLooked}: {openInWords(props.wear)}
        </p>
      </Show>
      <p class="small">
        <strong>{t().wear.confirm}</strong>
      </p>
    </div>
  );
}
