import { createSignal, createUniqueId, For, type JSX, Match, Show, Switch } from 'solid-js';
import {
  type Reading,
  type ReadingKind,
  type Seat,
  seats,
} from '../../journey/6-candidates/reading';
import { t } from '../language/language';
import { type LengthUnit, type PitchUnit, typedReading, type ValueKind } from './bench-input';
import { ReadingPicture } from './ReadingPicture';
import { type End, seatText } from './reading-text';
import { SectionDrawing } from './SectionDrawing';
import './ask-form.css';

/** How to take one reading, and a place to put it. */
export function AskForm(props: {
  readonly kind: ReadingKind;
  /** Seats that the open candidates have; shown first. */
  readonly likelySeats?: readonly string[];
  /** What each seat would speak for; stands on its tile. */
  readonly outcomes?: ReadonlyMap<string, string>;
  readonly end?: End;
  readonly onReading: (reading: Reading) => void;
}) {
  return (
    <div class="ask-form" data-kind={props.kind}>
      <div class="ask-how">
        <ReadingPicture kind={props.kind} />
        <p>{t().reading.kinds[props.kind].how}</p>
      </div>
      <Switch>
        <Match when={props.kind === 'pitch-gauge'}>
          <PitchForm onReading={props.onReading} />
        </Match>
        <Match when={lengthKind(props.kind)} keyed>
          {(kind) => <LengthForm kind={kind} onReading={props.onReading} />}
        </Match>
        <Match when={props.kind === 'seat'}>
          <SeatForm
            likely={props.likelySeats ?? []}
            outcomes={props.outcomes ?? new Map()}
            end={props.end ?? 'male'}
            onReading={props.onReading}
          />
        </Match>
        <Match when={props.kind === 'flank'}>
          <FlankForm onReading={props.onReading} />
        </Match>
        <Match when={props.kind === 'taper'}>
          <TaperForm onReading={props.onReading} />
        </Match>
      </Switch>
    </div>
  );
}

type LengthKind = Exclude<ValueKind, 'pitch-gauge'>;

const lengthKind = (kind: ReadingKind): LengthKind | null =>
  kind === 'seat' || kind === 'taper' || kind === 'flank' || kind === 'pitch-gauge' ? null : kind;

// The bench's unit stays chosen from one reading to the next.
const [pitchUnit, setPitchUnit] = createSignal<PitchUnit>('tpi');
const [lengthUnit, setLengthUnit] = createSignal<LengthUnit>('mm');

// By eye until a gauge is named: 37°, 45° and 30° look alike.
const [seatBy, setSeatBy] = createSignal<'eye' | 'gauge'>('eye');

export { lengthUnit, pitchUnit };

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

function PitchForm(props: { readonly onReading: (reading: Reading) => void }) {
  return (
    <ValueForm
      kind="pitch-gauge"
      onReading={props.onReading}
      unit={pitchUnit()}
      placeholder={
        pitchUnit() === 'tpi' ? t().reading.placeholder.tpi : t().reading.placeholder.mmPitch
      }
    >
      <PitchUnitChoice />
    </ValueForm>
  );
}

function LengthForm(props: {
  readonly kind: LengthKind;
  readonly onReading: (reading: Reading) => void;
}) {
  return (
    <ValueForm
      kind={props.kind}
      onReading={props.onReading}
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

export const lengthPlaceholder = () =>
  lengthUnit() === 'mm'
    ? t().reading.placeholder.mm
    : `${t().reading.placeholder.in} · ${t().reading.placeholder.fraction}`;

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

/** What is wrong with a typed value, in the reader's language. */
export function wrongWords(kind: ValueKind, reason: string): string {
  if (reason === 'impossible-value') return t().reading.outOfRange;
  return kind === 'pitch-gauge' ? t().reading.invalidTpi : t().reading.invalid;
}

function ValueForm(props: {
  readonly kind: ValueKind;
  readonly unit: LengthUnit | PitchUnit;
  readonly placeholder: string;
  readonly onReading: (reading: Reading) => void;
  readonly children: JSX.Element;
}) {
  const [text, setText] = createSignal('');
  const [wrong, setWrong] = createSignal<string | null>(null);
  const submit = (event: Event) => {
    event.preventDefault();
    const reading = typedReading(props.kind, text(), props.unit);
    if (reading.ok) props.onReading(reading.value);
    else setWrong(wrongWords(props.kind, reading.reason));
  };
  return (
    <form class="value-form" onSubmit={submit}>
      <ValueInput
        text={text()}
        onText={(value) => {
          setText(value);
          setWrong(null);
        }}
        placeholder={props.placeholder}
        wrong={wrong()}
      />
      {props.children}
      <button type="submit" class="button strong">
        {t().identification.add}
      </button>
    </form>
  );
}

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

/** Proportions of a common size, for telling seats apart by eye; not of the fitting at hand. */
const example = {
  majorMm: 22,
  pitchMm: 1.5,
  flankAngleDeg: 60,
  tubeOdMm: 16,
  minorInternalMm: 20.376,
} as const;

function SeatForm(props: {
  readonly likely: readonly string[];
  readonly outcomes: ReadonlyMap<string, string>;
  readonly end: End;
  readonly onReading: (reading: Reading) => void;
}) {
  // Taken once: the drawings must not change places under a finger.
  const likely = seats.filter((seat) => props.likely.includes(seat));
  const others = seats.filter((seat) => !props.likely.includes(seat));
  const drawn = (seat: Seat) => ({
    ...example,
    end: props.end ?? ('male' as const),
    // A female end shows these two as cones that point to its mouth.
    coneOutwards: seat === 'cone-24' || seat === 'cone-60',
    seat,
    taper: seat === 'none' ? 1 / 16 : 0,
    sealsOnThread: seat === 'none',
    oRing: seat === 'o-ring-at-hex' ? { insideMm: 19.3, sectionMm: 2.2 } : null,
  });
  const reading = (seat: Seat): Reading =>
    seatBy() === 'eye' && seat.startsWith('cone-')
      ? { kind: 'seat', seat, byEye: true, text: `${seat} by-eye` }
      : { kind: 'seat', seat, text: seat };
  const tiles = (shown: readonly Seat[]) => (
    <ul class="seat-choices">
      <For each={shown}>
        {(seat) => (
          <li>
            <button
              type="button"
              class="seat-choice"
              data-seat={seat}
              onClick={() => props.onReading(reading(seat))}
            >
              <SectionDrawing dimensions={drawn(seat)} name="" decorative widthMm={30} />
              <span>
                {seatText(seat, props.end)}
                <Show when={props.outcomes.get(seat)}>
                  {(outcome) => <span class="soft"> {outcome()}</span>}
                </Show>
              </span>
            </button>
          </li>
        )}
      </For>
    </ul>
  );
  return (
    <div class="stack tight">
      <Show when={likely.length > 0} fallback={tiles(others)}>
        {tiles(likely)}
        <details class="other-seats">
          <summary>{t().loop.otherEnd}</summary>
          {tiles(others)}
        </details>
      </Show>
      <UnitChoice
        title={t().reading.seatHow.title}
        units={[
          ['eye', t().reading.seatHow.eye],
          ['gauge', t().reading.seatHow.gauge],
        ]}
        chosen={seatBy()}
        onChoose={setSeatBy}
      />
    </div>
  );
}

function FlankForm(props: { readonly onReading: (reading: Reading) => void }) {
  return (
    <div class="row">
      <For each={[60, 55] as const}>
        {(flankDeg) => (
          <button
            type="button"
            class="button"
            onClick={() => props.onReading({ kind: 'flank', flankDeg, text: String(flankDeg) })}
          >
            {t().reading.flank[flankDeg]}
          </button>
        )}
      </For>
    </div>
  );
}

function TaperForm(props: { readonly onReading: (reading: Reading) => void }) {
  return (
    <div class="row">
      <For each={['straight', 'tapered'] as const}>
        {(taper) => (
          <button
            type="button"
            class="button"
            onClick={() => props.onReading({ kind: 'taper', taper, text: taper })}
          >
            {t().reading[taper]}: {t().reading.taperPicture[taper]}
          </button>
        )}
      </For>
    </div>
  );
}
