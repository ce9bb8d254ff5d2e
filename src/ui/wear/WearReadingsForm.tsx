import { createSignal, createUniqueId, For, Show } from 'solid-js';
import {
  type CaliperPlace,
  caliperPlaces,
  type WearQuestion,
  wearAnswers,
  wearQuestions,
} from '../../journey/wear/wear-answers';
import type { WearPart } from '../../journey/wear/wear-schema';
import { typedReading } from '../identification/bench-input';
import { lengthPlaceholder, lengthUnit } from '../identification/chosen-units';
import { wrongWords } from '../identification/reading-text';
import { LengthUnitChoice, UnitChoice } from '../identification/UnitChoice';
import { ValueInput } from '../identification/ValueInput';
import { t } from '../language/language';
import { WearPicture } from './WearPicture';
import { changeWearReadings } from './wear-actions';

/** What a person sees, feels and gauges, in the order the trade looks. Every answer counts at once. */
export function WearReadingsForm(props: {
  readonly readings: WearPart['readings'];
  readonly tapered: boolean;
  /** Whether a caliper across the crests says anything: only against a class. */
  readonly judged: boolean;
}) {
  const asked = () =>
    wearQuestions.filter((q) => !(props.tapered && (q === 'goRing' || q === 'notGoRing')));
  return (
    <div class="wear-form">
      <For each={asked()}>
        {(question) => <Question question={question} answer={props.readings[question]} />}
      </For>
      <Show when={props.tapered}>
        <RingForm turns={props.readings.ringTurns} />
      </Show>
      <Show when={props.judged}>
        <CaliperForm caliper={props.readings.caliper} />
      </Show>
    </div>
  );
}

function Look(props: { readonly kind: WearQuestion | 'caliper' | 'ring'; readonly how: string }) {
  return (
    <div class="wear-look">
      <WearPicture kind={props.kind} />
      <p class="small soft">{props.how}</p>
    </div>
  );
}

function Question<Q extends WearQuestion>(props: {
  readonly question: Q;
  readonly answer: string | null;
}) {
  const words = () =>
    t().wear.questions[props.question] as {
      readonly name: string;
      readonly how: string;
      readonly answers: Readonly<Record<string, string>>;
    };
  const group = createUniqueId();
  const choose = (answer: string | null) =>
    void changeWearReadings(() => ({ [props.question]: answer }));
  return (
    <fieldset class="wear-question" data-question={props.question}>
      <legend>{words().name}</legend>
      <Look kind={props.question} how={words().how} />
      <div class="row wear-answers">
        <For each={[...wearAnswers[props.question], null]}>
          {(answer) => (
            <label class="choice">
              <input
                type="radio"
                name={group}
                checked={props.answer === answer}
                onChange={() => choose(answer)}
              />
              {answer === null ? t().wear.notLookedAt : words().answers[answer]}
            </label>
          )}
        </For>
      </div>
    </fieldset>
  );
}

function CaliperForm(props: { readonly caliper: WearPart['readings']['caliper'] }) {
  const [wrong, setWrong] = createSignal<Partial<Record<CaliperPlace, string>>>({});
  const take = (place: CaliperPlace, typed: string) => {
    const put = (reading: WearPart['readings']['caliper'][CaliperPlace]) => {
      setWrong((now) => ({ ...now, [place]: undefined }));
      void changeWearReadings((now) => ({ caliper: { ...now.caliper, [place]: reading } }));
    };
    if (typed.trim() === '') return put(null);
    const reading = typedReading('caliper-od', typed, lengthUnit());
    if (!reading.ok)
      return setWrong((now) => ({ ...now, [place]: wrongWords('caliper-od', reading.reason) }));
    if (reading.value.kind === 'caliper-od')
      put({ mm: reading.value.mm, text: reading.value.text });
  };
  return (
    <fieldset class="wear-question">
      <legend>{t().wear.caliper}</legend>
      <Look kind="caliper" how={t().wear.caliperHow} />
      <div class="value-form">
        <For each={caliperPlaces}>
          {(place) => (
            <Typed
              label={t().wear.places[place]}
              kept={props.caliper[place]?.text ?? ''}
              placeholder={lengthPlaceholder()}
              wrong={wrong()[place] ?? null}
              onTyped={(typed) => take(place, typed)}
            />
          )}
        </For>
        <LengthUnitChoice />
      </div>
    </fieldset>
  );
}

/** A value that counts when the field is left, or with the enter key. */
function Typed(props: {
  readonly label: string;
  readonly kept: string;
  readonly placeholder: string;
  readonly wrong: string | null;
  readonly onTyped: (typed: string) => void;
}) {
  const [text, setText] = createSignal<string | null>(null);
  const done = () => {
    const typed = text();
    if (typed === null) return;
    props.onTyped(typed);
    // A value that cannot be read stays as it was typed.
    queueMicrotask(() => props.wrong === null && setText(null));
  };
  return (
    <form
      class="wear-typed"
      onSubmit={(event) => {
        event.preventDefault();
        done();
      }}
      onFocusOut={done}
    >
      <ValueInput
        label={props.label}
        text={text() ?? props.kept}
        onText={setText}
        placeholder={props.placeholder}
        wrong={props.wrong}
      />
    </form>
  );
}

function RingForm(props: { readonly turns: number | null }) {
  const [way, setWay] = createSignal<'past' | 'short'>((props.turns ?? 0) < 0 ? 'short' : 'past');
  const [wrong, setWrong] = createSignal<string | null>(null);
  const put = (ringTurns: number | null) => {
    setWrong(null);
    void changeWearReadings(() => ({ ringTurns }));
  };
  const signed = (turns: number) => (way() === 'short' ? -turns : turns);
  const take = (typed: string) => {
    if (typed.trim() === '') return put(null);
    const turns = Number(typed.trim().replace(',', '.'));
    if (!(turns >= 0 && turns <= 100)) setWrong(t().wear.ringWrong);
    else put(signed(turns));
  };
  return (
    <fieldset class="wear-question">
      <legend>{t().wear.ring}</legend>
      <Look kind="ring" how={t().wear.ringHow} />
      <div class="value-form">
        <Typed
          label={t().wear.ringTurns}
          kept={props.turns === null ? '' : String(Math.abs(props.turns))}
          placeholder="0"
          wrong={wrong()}
          onTyped={take}
        />
        <UnitChoice
          title={t().wear.ring}
          units={[
            ['past', t().wear.ringPast],
            ['short', t().wear.ringShort],
          ]}
          chosen={way()}
          onChoose={(to) => {
            setWay(to);
            if (props.turns !== null) put(signed(Math.abs(props.turns)));
          }}
        />
      </div>
    </fieldset>
  );
}
