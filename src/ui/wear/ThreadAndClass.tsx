import { createSignal, createUniqueId, For, Show } from 'solid-js';
import { classesOf } from '../../standards/limits/class-limits';
import { namedThread } from '../../standards/limits/named-thread';
import type { Thread } from '../../standards/thread';
import { threads } from '../../standards/threads';
import { UnitChoice } from '../identification/UnitChoice';
import { t } from '../language/language';

export interface Suggested {
  readonly designation: string;
  readonly label: string;
}

/** The thread a part should have, typed or picked, and the class to judge it by. */
export function ThreadAndClass(props: {
  readonly thread: Thread | null;
  /** Null: the usual class of its standard. */
  readonly className: string | null;
  readonly suggested: readonly Suggested[];
  readonly onThread: (designation: string) => void;
  readonly onClass: (name: string) => void;
}) {
  const id = createUniqueId();
  const [wrong, setWrong] = createSignal(false);
  const classes = () => (props.thread ? classesOf(props.thread) : []);
  const take = (typed: string) => {
    const thread = typed.trim() === '' ? null : namedThread(typed);
    setWrong(typed.trim() !== '' && thread === null);
    if (thread) props.onThread(thread.designation);
  };
  return (
    <div class="wear-thread">
      <div class="field wear-thread-name">
        <label for={id} class="small soft">
          {t().wear.thread}
        </label>
        <input
          id={id}
          list={`${id}-all`}
          autocomplete="off"
          value={props.thread?.designation ?? ''}
          placeholder={t().wear.threadHint}
          aria-invalid={wrong()}
          aria-describedby={wrong() ? `${id}-wrong` : undefined}
          onChange={(event) => take(event.currentTarget.value)}
        />
        <datalist id={`${id}-all`}>
          <For each={threads}>{({ designation }) => <option value={designation} />}</For>
        </datalist>
        <Show when={wrong()}>
          <span id={`${id}-wrong`} class="small wrong" role="alert">
            {t().wear.threadUnknown}
          </span>
        </Show>
      </div>
      <Show when={classes().length > 0}>
        <div class="field">
          <span class="small soft" aria-hidden="true">
            {t().wear.class}
          </span>
          <UnitChoice
            title={t().wear.class}
            units={classes().map((name) => [name, name] as const)}
            chosen={props.className ?? classes()[0]!}
            onChoose={props.onClass}
          />
        </div>
      </Show>
      <Show when={props.suggested.length > 0}>
        <div class="row wear-suggested">
          <For each={props.suggested}>
            {({ designation, label }) => (
              <button
                type="button"
                class="button"
                aria-pressed={props.thread?.designation === designation}
                onClick={() => take(designation)}
              >
                {label}
              </button>
            )}
          </For>
        </div>
      </Show>
    </div>
  );
}
