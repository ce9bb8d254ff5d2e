import { For, Show } from 'solid-js';
import { t } from '../language/language';
import { dismiss, notices } from './notices';

export function Notices() {
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
