import { createEffect, createResource, createSignal, For, onCleanup, Show } from 'solid-js';
import type { Field } from '../../scale-card/geometry';
import { t } from '../language/language';
import { type Paper, usualPaper } from '../reference/reference-choice';
import { ScreenCard } from '../reference/ScreenCard';
import { saveFile } from '../widgets/save-file';
import { PrintCheck } from './PrintCheck';
import './card.css';

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
          <FieldChoice field={field()} onField={setField} />
          <PaperChoice paper={paper()} onPaper={setPaper} />
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

function FieldChoice(props: { readonly field: Field; readonly onField: (field: Field) => void }) {
  return (
    <fieldset>
      <legend class="caps">{t().card.field}</legend>
      <For each={['dark', 'light'] as const}>
        {(which) => (
          <label class="choice card-choice">
            <input
              type="radio"
              name="field"
              checked={props.field === which}
              onChange={() => props.onField(which)}
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
  );
}

function PaperChoice(props: { readonly paper: Paper; readonly onPaper: (paper: Paper) => void }) {
  return (
    <fieldset>
      <legend class="caps">{t().card.paper}</legend>
      <div class="row card-papers">
        <For each={['a4', 'letter'] as const}>
          {(which) => (
            <label class="choice">
              <input
                type="radio"
                name="paper"
                checked={props.paper === which}
                onChange={() => props.onPaper(which)}
              />
              {t().card[which]}
            </label>
          )}
        </For>
      </div>
    </fieldset>
  );
}
