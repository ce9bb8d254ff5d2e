import { For, Show } from 'solid-js';
import { t } from '../language/language';
import { EndPicture } from './EndPicture';
import { chooseEnd, endChoice, endChoices } from './end-choice';
import { WaysToShow } from './WaysToShow';
import '../widgets/picture-tile.css';
import './end.css';

/** Whether the thread is outside or inside, or whichever the photo shows, as drawings, and how an inside one is shown; over a live view the
 *  drawings of the ends alone. */
export function EndChoice(props: { readonly brief?: boolean }) {
  return (
    <fieldset class="end-choice">
      <legend>{t().readingsOnly.end}</legend>
      <div class="end-tiles">
        <For each={endChoices}>
          {(end) => (
            <label class="end-tile picture-tile" data-end={end}>
              <input
                type="radio"
                name="end"
                checked={endChoice() === end}
                onChange={() => chooseEnd(end)}
              />
              <EndPicture of={end} />
              <span class="small">{end === 'auto' ? t().end.either : t().readingsOnly[end]}</span>
            </label>
          )}
        </For>
      </div>
      <Show when={!props.brief && endChoice() === 'female'}>
        <WaysToShow />
      </Show>
    </fieldset>
  );
}
