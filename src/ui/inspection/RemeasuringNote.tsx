import { Show } from 'solid-js';
import { t } from '../language/language';
import { remeasuring } from '../work/remeasure';

/** How far measuring again has come, and why it changed nothing. */
export function RemeasuringNote(props: { readonly problem: string | null }) {
  return (
    <>
      <Show when={remeasuring()}>
        {(stage) => (
          <p role="status" class="small">
            {t().measuring.stages[stage()]} …
          </p>
        )}
      </Show>
      <Show when={props.problem}>
        <p class="alert" role="alert">
          {props.problem}
        </p>
      </Show>
    </>
  );
}
