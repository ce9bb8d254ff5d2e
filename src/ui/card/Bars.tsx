import { createSignal } from 'solid-js';
import { lengthUnit } from '../identification/chosen-units';
import { LengthUnitChoice } from '../identification/UnitChoice';
import { ValueInput } from '../identification/ValueInput';
import { t } from '../language/language';
import { type TypedBars, typedBars } from './typed-bars';

/** What is typed for the two bars of a printed card. */
export function createBars() {
  const [long, setLong] = createSignal('');
  const [short, setShort] = createSignal('');
  const [wrong, setWrong] = createSignal<TypedBars['wrong']>({ long: null, short: null });
  return {
    long,
    setLong,
    short,
    setShort,
    wrong,
    /** Null where something is wrong, which is then said beside it. */
    read(): { readonly horizontalMm: number; readonly verticalMm: number } | null {
      const { wrong: problems, ...barsMm } = typedBars(long(), short(), lengthUnit());
      setWrong(problems);
      return problems.long || problems.short ? null : barsMm;
    },
    clear(): void {
      setLong('');
      setShort('');
    },
  };
}

/** Their two fields and the unit; within a form. */
export function Bars(props: { readonly of: ReturnType<typeof createBars> }) {
  return (
    <>
      <ValueInput
        label={t().card.long}
        text={props.of.long()}
        onText={props.of.setLong}
        placeholder={lengthUnit() === 'mm' ? '150' : '5.906'}
        wrong={props.of.wrong().long}
      />
      <ValueInput
        label={t().card.short}
        text={props.of.short()}
        onText={props.of.setShort}
        placeholder={lengthUnit() === 'mm' ? '100' : '3.937'}
        wrong={props.of.wrong().short}
      />
      <LengthUnitChoice />
    </>
  );
}
