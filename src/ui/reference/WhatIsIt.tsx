import { For } from 'solid-js';
import { t } from '../language/language';
import { measureNew } from '../work/job';

/** The person's word for a card or sheet whose outline does not say surely what it is. */
export function WhatIsIt(props: { readonly photo: Blob }) {
  return (
    <fieldset>
      <legend class="caps">{t().reference.whatIsIt}</legend>
      <div class="row">
        <For each={['id1', 'a4', 'letter'] as const}>
          {(kind) => (
            <button
              type="button"
              class="button"
              onClick={() => void measureNew(props.photo, { reference: { kind, corners: null } })}
            >
              {t().reference.kind[kind]}
            </button>
          )}
        </For>
      </div>
    </fieldset>
  );
}
