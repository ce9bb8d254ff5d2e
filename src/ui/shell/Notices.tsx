import { For, onCleanup, Show } from 'solid-js';
import { t } from '../language/language';
import { dismiss, leaveRoom, notices } from './notices';

/** Lines at the foot of the screen. What lies under one takes the press, and the line makes room for it. */
export function Notices() {
  document.addEventListener('pointerdown', leaveRoom);
  onCleanup(() => document.removeEventListener('pointerdown', leaveRoom));
  return (
    <div class="notices" role="status" aria-live="polite">
      <For each={notices()}>
        {(notice) => (
          <div class="notice">
            <span>{notice.text}</span>
            <Show when={notice.action}>
              {(action) => (
                <button
                  type="button"
                  class="button"
                  onClick={() => {
                    dismiss(notice.id);
                    action().run();
                  }}
                >
                  {action().label}
                </button>
              )}
            </Show>
            <button type="button" class="button" onClick={() => dismiss(notice.id)}>
              {t().shell.close}
            </button>
          </div>
        )}
      </For>
    </div>
  );
}
