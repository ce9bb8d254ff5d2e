import { createSignal, type JSX, onCleanup, Show } from 'solid-js';
import './fold.css';

/** As in shell.css. */
const narrow = matchMedia('(max-width: 719px)');

/** Part of a page that a phone shows on request, and a desk at once. Folded, it is not built. */
export function Fold(props: { readonly title: string; readonly children: JSX.Element }) {
  const [folds, setFolds] = createSignal(narrow.matches);
  const [opened, setOpened] = createSignal(false);
  const follow = () => setFolds(narrow.matches);
  narrow.addEventListener('change', follow);
  onCleanup(() => narrow.removeEventListener('change', follow));
  return (
    <Show when={folds()} fallback={props.children}>
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
