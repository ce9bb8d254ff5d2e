import { createSignal, For, Show } from 'solid-js';
import { card, uOfBarsMm } from '../../scale-card/geometry';
import { number } from '../language/format';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { CardMarks } from '../widgets/CardMarks';
import { Bars, createBars } from './Bars';
import { cardChecks, keepCheck, removeCheck, useCheck, usedCheck } from './card-checks';

/** The two bars of one print, measured: how its scale is corrected. */
export function PrintCheck() {
  return (
    <section class="print-check" aria-labelledby="check-title">
      <div class="stack">
        <h2 id="check-title">{t().card.checkTitle}</h2>
        <p class="measure-width">{t().card.checkLead}</p>
        <BarsPicture />
        <CheckForm />
      </div>
      <div class="stack tight">
        <h2>{t().card.checks}</h2>
        <Show when={cardChecks().length > 0} fallback={<p class="soft">{t().card.none}</p>}>
          <CheckList />
        </Show>
      </div>
    </section>
  );
}

function CheckForm() {
  const bars = createBars();
  const [name, setName] = createSignal('');
  const [tool, setTool] = createSignal<keyof typeof uOfBarsMm>('rule');
  const submit = (event: Event) => {
    event.preventDefault();
    const typed = bars.read();
    if (!typed) return;
    keepCheck({
      name: name().trim() || t().card.title,
      ...typed,
      uMm: uOfBarsMm[tool()],
    });
    notify(t().card.kept);
    bars.clear();
  };
  return (
    <form class="stack" onSubmit={submit} novalidate>
      <div class="value-form">
        <Bars of={bars} />
      </div>
      <div class="check-more">
        <label class="field">
          <span class="small soft">{t().card.with}</span>
          <select
            value={tool()}
            onChange={(event) => setTool(event.currentTarget.value as keyof typeof uOfBarsMm)}
          >
            <option value="rule">{t().card.withRule}</option>
            <option value="caliper">{t().card.withCaliper}</option>
          </select>
        </label>
        <label class="field">
          <span class="small soft">{t().card.name}</span>
          <input
            value={name()}
            maxLength={80}
            placeholder={t().card.namePlaceholder}
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="button strong">
          {t().card.keep}
        </button>
      </div>
    </form>
  );
}

/** The checks that are kept, and which of them is used. */
function CheckList() {
  const { horizontal, vertical } = card.bars;
  const factor = (mm: number, nominal: number) => number((mm / nominal) * 100, 2);
  return (
    <ul class="check-list">
      <For each={cardChecks()}>
        {(check) => (
          <li>
            <label class="choice">
              <input
                type="radio"
                name="used-card"
                checked={usedCheck()?.name === check.name}
                onChange={() => useCheck(check.name)}
              />
              <span>
                {check.name}
                <span class="small soft">
                  {t().card.factor(
                    factor(check.horizontalMm, horizontal.lengthMm),
                    factor(check.verticalMm, vertical.lengthMm),
                  )}
                </span>
              </span>
            </label>
            <button
              type="button"
              class="button plain"
              aria-label={`${t().card.remove} ${check.name}`}
              onClick={() => removeCheck(check.name)}
            >
              {t().card.remove}
            </button>
          </li>
        )}
      </For>
      <li>
        <label class="choice">
          <input
            type="radio"
            name="used-card"
            checked={usedCheck() === null}
            onChange={() => useCheck(null)}
          />
          {t().card.useNominal}
        </label>
      </li>
    </ul>
  );
}

/** Where the two bars are on the card. */
function BarsPicture() {
  const { horizontal, vertical, tickMm } = card.bars;
  const tick = tickMm / 2 + 1;
  return (
    <svg class="bars-picture" viewBox="-2 -2 188 140" aria-hidden="true">
      <rect width={card.widthMm} height={card.heightMm} />
      <CardMarks />
      <path
        d={`M${horizontal.fromXMm} ${horizontal.yMm - tick}v${2 * tick}m0 ${-tick}H${horizontal.toXMm}m0 ${-tick}v${2 * tick}`}
      />
      <path
        d={`M${vertical.xMm - tick} ${vertical.fromYMm}h${2 * tick}m${-tick} 0V${vertical.toYMm}m${-tick} 0h${2 * tick}`}
      />
      <text x="92" y={card.window.yMm + card.window.heightMm - 6} text-anchor="middle">
        {card.bars.horizontal.lengthMm}
      </text>
      <text x={card.window.xMm + card.window.widthMm - 5} y="72" text-anchor="end">
        {card.bars.vertical.lengthMm}
      </text>
    </svg>
  );
}
