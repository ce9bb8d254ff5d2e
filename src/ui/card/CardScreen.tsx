import { createEffect, createResource, createSignal, For, onCleanup, Show } from 'solid-js';
import { card, type Field } from '../../scale-card/geometry';
import { number } from '../language/format';
import { t } from '../language/language';
import { ScreenCard } from '../reference/ScreenCard';
import { notify } from '../shell/notices';
import { CardMarks } from '../widgets/CardMarks';
import { saveFile } from '../widgets/save-file';
import { Bars, createBars } from './Bars';
import { cardChecks, keepCheck, removeCheck, uOfBarsMm, useCheck, usedCheck } from './card-checks';
import './card.css';

type Paper = 'a4' | 'letter';

/** US Letter where it is the common paper; anyone can choose the other. */
const usualPaper = (): Paper => (/-(US|CA|MX)\b/.test(navigator.language) ? 'letter' : 'a4');

export function CardScreen() {
  const [field, setField] = createSignal<Field>('light');
  const [paper, setPaper] = createSignal<Paper>(usualPaper());
  const [onScreen, setOnScreen] = createSignal(false);
  const [drawing] = createResource(field, async (of) => {
    const { cardSvg } = await import('../../scale-card/card-svg');
    return cardSvg(of, t().cardWords);
  });
  const [url, setUrl] = createSignal<string | null>(null);
  createEffect(() => {
    const svg = drawing();
    if (!svg) return;
    const made = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
    setUrl(made);
    onCleanup(() => URL.revokeObjectURL(made));
  });
  const pdf = async () => {
    const { cardPdf } = await import('../../scale-card/card-pdf');
    const bytes = await cardPdf(field(), paper(), t().cardWords);
    saveFile(
      new Blob([bytes.slice()], { type: 'application/pdf' }),
      `crestwise-card-${field()}-${paper()}.pdf`,
    );
  };
  return (
    <div class="card-screen">
      <div class="screen-head">
        <h1>{t().card.title}</h1>
        <p class="soft measure-width">{t().card.lead}</p>
      </div>
      <div class="card-columns">
        <figure class="card-preview" data-paper={paper()}>
          <div class="card-picture">
            <Show when={url()} keyed>
              {(src) => <img src={src} alt={t().card.preview} width="736" height="544" />}
            </Show>
          </div>
          <figcaption class="small soft">{t().card.preview}</figcaption>
        </figure>
        <div class="stack">
          <fieldset>
            <legend class="caps">{t().card.field}</legend>
            <For each={['dark', 'light'] as const}>
              {(which) => (
                <label class="choice card-choice">
                  <input
                    type="radio"
                    name="field"
                    checked={field() === which}
                    onChange={() => setField(which)}
                  />
                  <span>
                    {t().card[which]}
                    <span class="small soft">
                      {which === 'dark' ? t().card.darkFor : t().card.lightFor}
                    </span>
                  </span>
                </label>
              )}
            </For>
          </fieldset>
          <fieldset>
            <legend class="caps">{t().card.paper}</legend>
            <div class="row card-papers">
              <For each={['a4', 'letter'] as const}>
                {(which) => (
                  <label class="choice">
                    <input
                      type="radio"
                      name="paper"
                      checked={paper() === which}
                      onChange={() => setPaper(which)}
                    />
                    {t().card[which]}
                  </label>
                )}
              </For>
            </div>
          </fieldset>
          <div class="row">
            <button type="button" class="button strong" onClick={() => void pdf()}>
              {t().card.pdf}
            </button>
            <button
              type="button"
              class="button"
              onClick={() =>
                saveFile(
                  new Blob([drawing() ?? ''], { type: 'image/svg+xml' }),
                  `crestwise-card-${field()}.svg`,
                )
              }
            >
              {t().card.svg}
            </button>
            <button type="button" class="button" onClick={() => setOnScreen(true)}>
              {t().card.onScreen}
            </button>
          </div>
          <p class="small">{t().card.printTip}</p>
          <p class="small soft">{t().card.onScreenTip}</p>
        </div>
      </div>
      <PrintCheck />
      <Show when={onScreen() && url()} keyed>
        {(src) => <ScreenCard src={src} onClose={() => setOnScreen(false)} />}
      </Show>
    </div>
  );
}

const { lengthMm: nominalLong } = card.bars.horizontal;
const { lengthMm: nominalShort } = card.bars.vertical;

function PrintCheck() {
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
  const factor = (mm: number, nominal: number) => number((mm / nominal) * 100, 2);
  return (
    <section class="print-check" aria-labelledby="check-title">
      <div class="stack">
        <h2 id="check-title">{t().card.checkTitle}</h2>
        <p class="measure-width">{t().card.checkLead}</p>
        <BarsPicture />
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
      </div>
      <div class="stack tight">
        <h2>{t().card.checks}</h2>
        <Show when={cardChecks().length > 0} fallback={<p class="soft">{t().card.none}</p>}>
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
                          factor(check.horizontalMm, nominalLong),
                          factor(check.verticalMm, nominalShort),
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
        </Show>
      </div>
    </section>
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
        150
      </text>
      <text x={card.window.xMm + card.window.widthMm - 5} y="72" text-anchor="end">
        100
      </text>
    </svg>
  );
}
