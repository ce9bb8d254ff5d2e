import { type Accessor, createSignal, For, type JSX, Show } from 'solid-js';
import type { Reading } from '../../journey/6-candidates/reading';
import { t } from '../language/language';
import { typedCone, typedReading, typedTurns, type ValueKind } from './bench-input';
import { lengthPlaceholder, lengthUnit, pitchPlaceholder, pitchUnit } from './chosen-units';
import { wrongWords } from './reading-text';
import { LengthUnitChoice, PitchUnitChoice } from './UnitChoice';
import { ValueInput } from './ValueInput';

interface Taker {
  readonly onReading: (reading: Reading) => void;
  /** After the form's own button, in its line. */
  readonly beside?: JSX.Element;
}

/** Fields that make one reading, or say what is wrong with them until one is changed. */
function ReadingForm(
  props: Taker & {
    readonly kind: ValueKind;
    readonly read: () => ReturnType<typeof typedReading>;
    readonly fields: (wrong: Accessor<string | null>, changed: () => void) => JSX.Element;
    /** Units, and buttons of the one kind. */
    readonly children: JSX.Element;
  },
) {
  const [wrong, setWrong] = createSignal<string | null>(null);
  const submit = (event: Event) => {
    event.preventDefault();
    const reading = props.read();
    if (reading.ok) props.onReading(reading.value);
    else setWrong(wrongWords(props.kind, reading.reason));
  };
  return (
    <form class="value-form" onSubmit={submit}>
      {props.fields(wrong, () => setWrong(null))}
      {props.children}
      <button type="submit" class="button strong">
        {t().identification.add}
      </button>
      {props.beside}
    </form>
  );
}

function ValueForm(
  props: Taker & {
    readonly kind: ValueKind;
    readonly unit: 'mm' | 'in' | 'tpi';
    readonly placeholder: string;
    readonly children: JSX.Element;
  },
) {
  const [text, setText] = createSignal('');
  return (
    <ReadingForm
      kind={props.kind}
      onReading={props.onReading}
      beside={props.beside}
      read={() => typedReading(props.kind, text(), props.unit)}
      fields={(wrong, changed) => (
        <ValueInput
          text={text()}
          onText={(value) => {
            setText(value);
            changed();
          }}
          placeholder={props.placeholder}
          wrong={wrong()}
        />
      )}
    >
      {props.children}
    </ReadingForm>
  );
}

export function PitchForm(props: Taker) {
  return (
    <ValueForm
      kind="pitch-gauge"
      onReading={props.onReading}
      beside={props.beside}
      unit={pitchUnit()}
      placeholder={pitchPlaceholder()}
    >
      <PitchUnitChoice />
    </ValueForm>
  );
}

export function LengthForm(props: Taker & { readonly kind: ValueKind }) {
  return (
    <ValueForm
      kind={props.kind}
      onReading={props.onReading}
      beside={props.beside}
      unit={lengthUnit()}
      placeholder={lengthPlaceholder()}
    >
      <LengthUnitChoice />
      <Show when={props.kind === 'tube-od'}>
        <button
          type="button"
          class="button"
          onClick={() => props.onReading({ kind: 'tube-od', mm: null, text: 'none' })}
        >
          {t().reading.noTube}
        </button>
      </Show>
    </ValueForm>
  );
}

/** So many turns in such a length, for benches without a pitch gauge. */
export function TurnsForm(props: Taker) {
  const [turns, setTurns] = createSignal('10');
  const [over, setOver] = createSignal('');
  return (
    <ReadingForm
      kind="caliper-od"
      onReading={props.onReading}
      beside={props.beside}
      read={() => typedTurns(turns(), over(), lengthUnit())}
      fields={(wrong, changed) => (
        <>
          <ValueInput
            label={t().trade.turns.count}
            text={turns()}
            onText={setTurns}
            placeholder="10"
            wrong={null}
          />
          <ValueInput
            label={t().trade.turns.over}
            text={over()}
            onText={(value) => {
              setOver(value);
              changed();
            }}
            placeholder={lengthPlaceholder()}
            wrong={wrong()}
          />
        </>
      )}
    >
      <LengthUnitChoice />
    </ReadingForm>
  );
}

/** The two ends of a cone and the length between them, for benches without a seat gauge. */
export function ConeForm(props: Taker) {
  const [typed, setTyped] = createSignal({ wide: '', narrow: '', over: '' });
  return (
    <ReadingForm
      kind="caliper-od"
      onReading={props.onReading}
      beside={props.beside}
      read={() => typedCone(typed().wide, typed().narrow, typed().over, lengthUnit())}
      fields={(wrong, changed) => (
        <For each={['wide', 'narrow', 'over'] as const}>
          {(field) => (
            <ValueInput
              label={t().trade.cone[field]}
              text={typed()[field]}
              onText={(value) => {
                setTyped((now) => ({ ...now, [field]: value }));
                changed();
              }}
              placeholder={lengthPlaceholder()}
              wrong={field === 'over' ? wrong() : null}
            />
          )}
        </For>
      )}
    >
      <LengthUnitChoice />
    </ReadingForm>
  );
}
