import { For, Show } from 'solid-js';
import { t } from '../language/language';
import { openSheet } from '../work/sheets';

/** Which photo of the open sheet is shown; nothing to choose where there is one. */
export function PhotoChoice(props: {
  readonly index: number;
  readonly onIndex: (index: number) => void;
}) {
  const shots = () => openSheet()!.sheet.shots;
  return (
    <Show when={shots().length > 1}>
      <div class="row">
        <For each={shots()}>
          {(_, index) => (
            <button
              type="button"
              class="button"
              aria-pressed={index() === props.index}
              onClick={() => props.onIndex(index())}
            >
              {t().inspection.title} {index() + 1}
            </button>
          )}
        </For>
      </div>
    </Show>
  );
}
