import { For, Show } from 'solid-js';
import { t } from '../language/language';
import type { ResultFacts } from './result-facts';

/** How the connection is put together. */
export function AssemblySteps(props: { readonly facts: ResultFacts }) {
  return (
    <section class="stack tight">
      <h2>{t().result.assembly}</h2>
      <For each={props.facts.assembly}>
        {(how) => (
          <>
            <Show when={how.heading}>
              <h3>{how.heading}</h3>
            </Show>
            <ol class="result-steps">
              <For each={how.steps}>{(step) => <li>{step}</li>}</For>
            </ol>
            <p class="small">{how.method}</p>
          </>
        )}
      </For>
      <ul class="plain-list small">
        <For each={props.facts.always}>{(rule) => <li>{rule}</li>}</For>
      </ul>
      <p class="small soft">{t().result.assemblyNote}</p>
    </section>
  );
}
