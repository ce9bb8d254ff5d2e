import { For, Show } from 'solid-js';
import type { Sheet } from '../work/open-sheet';
import { readingText } from './reading-text';

/** The readings of a sheet, for looking at. */
export function ReadingLines(props: { readonly sheet: Sheet }) {
  return (
    <Show when={props.sheet.readings.length > 0}>
      <ul class="plain-list">
        <For each={props.sheet.readings}>
          {(reading) => <li>{readingText(reading, props.sheet.conclusion.end)}</li>}
        </For>
      </ul>
    </Show>
  );
}
