import { createUniqueId, Show } from 'solid-js';
import { t } from '../language/language';
import './value-form.css';

export function ValueInput(props: {
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly placeholder: string;
  readonly wrong: string | null;
  readonly label?: string;
}) {
  const id = createUniqueId();
  return (
    <div class="field value-input">
      <label for={id} class="small soft">
        {props.label ?? t().reading.value}
      </label>
      <input
        id={id}
        inputmode="text"
        autocomplete="off"
        enterkeyhint="done"
        value={props.text}
        placeholder={props.placeholder}
        aria-invalid={props.wrong !== null}
        aria-describedby={props.wrong ? `${id}-wrong` : undefined}
        onInput={(event) => props.onText(event.currentTarget.value)}
      />
      <Show when={props.wrong}>
        <span id={`${id}-wrong`} class="small wrong" role="alert">
          {props.wrong}
        </span>
      </Show>
    </div>
  );
}
