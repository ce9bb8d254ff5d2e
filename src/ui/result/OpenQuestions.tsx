import { createMemo, For, Show } from 'solid-js';
import { stampOf, whatHolds } from '../../journey/8-sheet/what-holds';
import { connectionTitle } from '../identification/connection-words';
import { headline } from '../identification/headline';
import { likelihoodWord } from '../identification/likelihood-words';
import { kindWords } from '../identification/reading-text';
import { percent } from '../language/format';
import { t } from '../language/language';
import type { Sheet } from '../work/open-sheet';
import './result.css';

const most = 4;

/** What the sheet leaves open, with what is left; nothing once someone has settled it. */
export function OpenQuestions(props: { readonly sheet: Sheet }) {
  const held = createMemo(() => whatHolds(props.sheet));
  const threads = () =>
    props.sheet.conclusion.threads.filter((c) => c.probability >= 0.02).slice(0, most);
  const connections = () =>
    props.sheet.conclusion.connections.filter((c) => c.probability >= 0.02).slice(0, most);
  return (
    <Show when={stampOf(props.sheet) === 'open'}>
      <section class="open-questions stack tight" aria-labelledby="open-title">
        <h2 id="open-title">{t().loop.whatIsOpen}</h2>
        <p>{headline(props.sheet.conclusion)}</p>
        <Show when={!held().thread && threads().length > 0}>
          <h3>{t().loop.openThread}</h3>
          <ul class="plain-list">
            <For each={threads()}>
              {(one) => (
                <li>
                  {one.system === null ? t().identification.none : one.designation}{' '}
                  <Likely probability={one.probability} />
                </li>
              )}
            </For>
          </ul>
        </Show>
        <Show when={!held().connection && connections().length > 0}>
          <h3>{t().loop.openConnection}</h3>
          <ul class="plain-list">
            <For each={connections()}>
              {(one) => (
                <li>
                  {connectionTitle(one)} <Likely probability={one.probability} />
                </li>
              )}
            </For>
          </ul>
        </Show>
        <Show when={props.sheet.conclusion.decision.ask} keyed>
          {(ask) => <p class="small soft">{t().loop.wouldSettle(kindWords(ask.reading).title)}</p>}
        </Show>
      </section>
    </Show>
  );
}

function Likely(props: { readonly probability: number }) {
  return (
    <span class="small soft">
      {likelihoodWord(props.probability)} ({percent(props.probability)})
    </span>
  );
}
