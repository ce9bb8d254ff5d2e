import { For, Show } from 'solid-js';
import { t } from '../language/language';
import { ReferencePicture } from './ReferencePicture';
import { choices, chooseReference, paperChoice, referenceChoice } from './reference-choice';
import '../widgets/picture-tile.css';
import './reference.css';

/** What lies beside the fitting, as drawings, with what the chosen one can settle; over a live view the drawings
 *  alone. */
export function ReferenceChoice(props: { readonly brief?: boolean }) {
  const words = () => t().reference.choice[referenceChoice()];
  return (
    <fieldset class="reference-choice">
      <legend>{t().reference.atHand}</legend>
      <div class="reference-tiles">
        <For each={choices}>
          {(choice) => (
            <label class="reference-tile picture-tile" data-reference={choice}>
              <input
                type="radio"
                name="reference"
                checked={referenceChoice() === choice}
                onChange={() => chooseReference({ choice })}
              />
              <ReferencePicture of={choice} />
              <span class="small">{t().reference.choice[choice].name}</span>
            </label>
          )}
        </For>
      </div>
      <Show when={!props.brief}>
        <div class="reference-words small" aria-live="polite">
          <p>{words().how}</p>
          <p>
            <b>{t().reference.settles}</b> {words().settles}
          </p>
          <Show when={referenceChoice() === 'id1'}>
            <p class="soft">{t().reference.privacy}</p>
          </Show>
        </div>
      </Show>
      <Show when={referenceChoice() === 'sheet'}>
        <fieldset class="row reference-paper">
          <legend class="visually-hidden">{t().reference.paper}</legend>
          <For each={['a4', 'letter'] as const}>
            {(paper) => (
              <label class="choice small">
                <input
                  type="radio"
                  name="reference-paper"
                  checked={paperChoice() === paper}
                  onChange={() => chooseReference({ paper })}
                />
                {t().reference.kind[paper]}
              </label>
            )}
          </For>
        </fieldset>
      </Show>
    </fieldset>
  );
}
