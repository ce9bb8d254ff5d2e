import { createMemo, For, Show } from 'solid-js';
import { dateTime, plusMinus } from '../language/format';
import { t } from '../language/language';
import type { Sheet } from '../work/open-sheet';

/** Every measurement of the part, dated; the last one holds. Nothing where there is only one. */
export function BeforeAfter(props: { readonly sheet: Sheet }) {
  const rows = createMemo(() => {
    const { earlier, measurement: m, measuredAt, measuredBy, createdAt } = props.sheet;
    const now = m && {
      at: measuredAt ?? createdAt,
      by: measuredBy,
      pitchMm: m.pitchMm,
      majorDiameterMm: m.majorDiameterMm,
    };
    return now ? [...earlier, now] : earlier;
  });
  return (
    <Show when={props.sheet.earlier.length > 0}>
      <section class="before-after stack tight" aria-labelledby="before-after-title">
        <h2 id="before-after-title">{t().loop.before}</h2>
        <ol class="plain-list">
          <For each={rows()}>
            {(row, index) => (
              <li data-holds={index() === rows().length - 1}>
                <span>
                  <strong>⌀ {plusMinus(row.majorDiameterMm, 'mm')}</strong>
                  {' · '}P {plusMinus(row.pitchMm, 'mm')}
                </span>
                <span class="small soft">
                  {t().loop[row.by]}, {dateTime(row.at)} ·{' '}
                  <b>{index() === rows().length - 1 ? t().loop.holds : t().loop.replaced}</b>
                </span>
              </li>
            )}
          </For>
        </ol>
      </section>
    </Show>
  );
}
