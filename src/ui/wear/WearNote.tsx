import { createMemo, Show } from 'solid-js';
import { t } from '../language/language';
import { hashOf } from '../shell/route';
import { openSheet } from '../work/sheets';
import { FindingBlock } from './FindingBlock';
import { expectedThread, freshWear, isFemale, wearOfSheet } from './wear-of-sheet';
import { overlapWords, photoWords, verdictWords } from './wear-words';
import './wear.css';

/** The question on the open sheet: its answer so far, or what its photo would be worth for it. */
export function WearNote() {
  const sheet = () => openSheet()!.sheet;
  const wear = createMemo(() => wearOfSheet(sheet()));
  const worth = createMemo(() => {
    const would = wearOfSheet({ ...sheet(), wear: freshWear() });
    const seen = would?.photo?.diameterMm;
    return would?.limits && seen ? photoWords(seen, would.limits) : null;
  });
  const shown = () =>
    !isFemale(sheet()) && (sheet().wear !== null || expectedThread(sheet()) !== null);
  return (
    <Show when={shown()}>
      <section class="wear-note stack tight" aria-labelledby="wear-note-title">
        <h2 id="wear-note-title">{t().wear.title}</h2>
        <Show when={wear()} fallback={<p class="small soft">{worth() ?? t().wear.readingsText}</p>}>
          {(now) => <FindingBlock wear={now()} short />}
        </Show>
        <div class="row">
          <a class="button" href={hashOf({ screen: 'wear', id: sheet().id })}>
            {t().wear.start}
          </a>
        </div>
      </section>
    </Show>
  );
}

/** The same on the result page, once it was asked. */
export function WearResult() {
  const wear = createMemo(() => wearOfSheet(openSheet()!.sheet));
  return (
    <Show when={wear()}>
      {(now) => (
        <section class="wear-note stack tight" aria-labelledby="wear-result-title">
          <h2 id="wear-result-title">
            {t().wear.title} {now().thread.designation} {now().limits?.class}
          </h2>
          <FindingBlock wear={now()} short />
          <Show when={now().overlap} keyed>
            {(overlap) => <p class="small">{overlapWords(overlap)}</p>}
          </Show>
          <Show when={now().crest} keyed>
            {(crest) => (
              <p class="small">
                {t().wear.crests}: {verdictWords(crest)}
              </p>
            )}
          </Show>
        </section>
      )}
    </Show>
  );
}
