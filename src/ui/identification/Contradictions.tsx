import { For, Show } from 'solid-js';
import type { Reading } from '../../journey/6-candidates/reading';
import type { Contradiction } from '../../journey/7-next-reading/decision';
import { t } from '../language/language';
import { readingText } from './reading-text';

export function Contradictions(props: {
  readonly contradictions: readonly Contradiction[];
  readonly readings: readonly Reading[];
}) {
  const name = (one: Contradiction) => {
    if (one.source === 'photo') return t().identification.thePhoto;
    const reading = props.readings[one.index];
    return reading ? readingText(reading) : one.text;
  };
  return (
    <Show when={props.contradictions.length > 0}>
      <div class="alert doubt" role="alert">
        <p>{t().identification.conflict}</p>
        <ul>
          <For each={props.contradictions}>{(one) => <li>{name(one)}</li>}</For>
        </ul>
      </div>
    </Show>
  );
}
