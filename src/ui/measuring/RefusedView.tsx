import { createSignal, Show } from 'solid-js';
import { defaultOptions, type Refused } from '../../journey/identification';
import { WaysToShow } from '../end/WaysToShow';
import { language, t } from '../language/language';
import { WhatIsIt } from '../reference/WhatIsIt';
import { job } from '../work/job';
import { nextSteps, shownIn } from './next-steps';
import { RefusalPicture } from './RefusalPicture';
import { type ByHand, RefusedPhoto } from './RefusedPhoto';
import { badMarks, refusalWords } from './refusal-words';
import { Ways } from './Ways';

const unreadable = ['unreadable', 'unsupported-format', 'decoder-missing', 'too-large'];

/** What happened, what to do, and the ways on, the most promising first. */
export function RefusedView(props: { readonly refused: Refused }) {
  const shown = () => shownIn(job()?.options ?? defaultOptions);
  const words = () => refusalWords(props.refused, shown());
  const readable = () => !unreadable.includes(props.refused.refusal.reason);
  const [helping, setHelping] = createSignal<ByHand | null>(null);
  const help = (mode: ByHand) => {
    setHelping(mode);
    // On a telephone the photo lies below the buttons.
    photo?.scrollIntoView({ block: 'start' });
  };
  let photo: HTMLDivElement | undefined;
  const ways = () =>
    nextSteps(props.refused.refusal.reason, shown()).filter(
      (way) =>
        !(helping() && ['axis', 'ruler', 'corners'].includes(way)) &&
        // Wear is judged of male ends alone.
        !(way === 'other-gender' && job()?.wear),
    );
  return (
    <section class="refused stack">
      <div class="refused-head">
        <div class="stack tight">
          <p class="caps">{t().refused.title}</p>
          <h1>{words().what}</h1>
          <p class="refused-todo">{words().todo}</p>
        </div>
        <Show when={!helping() && !badMarks(props.refused.refusal, shown())}>
          <Show
            when={shown().female && props.refused.refusal.reason === 'no-thread'}
            fallback={<RefusalPicture reason={props.refused.refusal.reason} />}
          >
            <WaysToShow />
          </Show>
        </Show>
      </div>
      <Show when={props.refused.refusal.reason === 'which-reference' && job()}>
        {(now) => <WhatIsIt photo={now().photo} />}
      </Show>
      <div class="row">
        <Ways ways={ways()} strongFirst={!helping()} onByHand={help} />
      </div>
      <Show when={readable() && job()} keyed>
        {(now) => (
          <div ref={photo}>
            <RefusedPhoto
              photo={now.photo}
              overlay={props.refused.overlay}
              mode={helping()}
              onClose={() => setHelping(null)}
            />
          </div>
        )}
      </Show>
      <Show when={language() === 'en' && props.refused.refusal.advice !== words().todo}>
        <details class="small soft">
          <summary>{t().refused.detail}</summary>
          <p>
            {props.refused.refusal.reason}: {props.refused.refusal.advice}
          </p>
        </details>
      </Show>
    </section>
  );
}
