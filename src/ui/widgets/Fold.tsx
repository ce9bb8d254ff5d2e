import { createSignal, type JSX, Show } from 'solid-js';
import { narrow } from './narrow';
import './fold.css';

/** Part of a page that a phone shows on request, and a desk at once. Folded, it is not built. */
export function Fold(props: { readonly title: string; readonly children: JSX.Element }) {
  const [opened, setOpened] = createSignal(false);
  return (
    <Show when={narrow()} fallback={props.children}>
      <details
        class="fold"
        open={opened()}
        onToggle={(event) => setOpened(event.currentTarget.open)}
      >
        <summary>{props.title}</summary>
        <Show when={opened()}>
          <div class="fold-inside stack">{props.children}</div>
        </Show>
      </details>
    </Show>
  );
}
