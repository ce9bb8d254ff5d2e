import { createUniqueId, For } from 'solid-js';
import { t } from '../language/language';
import { lengthUnit, pitchUnit, setLengthUnit, setPitchUnit } from './chosen-units';
import './value-form.css';

export function UnitChoice<U extends string>(props: {
  readonly units: readonly (readonly [unit: U, name: string])[];
  readonly chosen: U;
  readonly onChoose: (unit: U) => void;
  /** What is chosen, for those who do not see it; a unit, unless said. */
  readonly title?: string;
}) {
  const group = createUniqueId();
  return (
    <fieldset class="unit-choice">
      <legend class="visually-hidden">{props.title ?? t().reading.unit}</legend>
      <For each={props.units}>
        {([unit, name]) => (
          <label>
            <input
              type="radio"
              class="visually-hidden"
              name={group}
              checked={props.chosen === unit}
              onChange={() => props.onChoose(unit)}
            />
            <span>{name}</span>
          </label>
        )}
      </For>
    </fieldset>
  );
}

export function PitchUnitChoice() {
  return (
    <UnitChoice
      units={[
        ['tpi', t().reading.units.tpi],
        ['mm', t().reading.units.mmPitch],
      ]}
      chosen={pitchUnit()}
      onChoose={setPitchUnit}
    />
  );
}

export function LengthUnitChoice() {
  return (
    <UnitChoice
      units={[
        ['mm', t().reading.units.mm],
        ['in', t().reading.units.in],
      ]}
      chosen={lengthUnit()}
      onChoose={setLengthUnit}
    />
  );
}
