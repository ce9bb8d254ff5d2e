import { createSignal, createUniqueId, For, type JSX, Match, Show, Switch } from 'solid-js';
import { degreesOf } from '../../journey/6-candidates/parse-reading';
import {
  type AskableKind,
  endTypes,
  gaugedCones,
  marks,
  type Reading,
  type Seat,
  seats,
} from '../../journey/6-candidates/reading';
import { t } from '../language/language';
import {
  type LengthUnit,
  type PitchUnit,
  typedCone,
  typedReading,
  typedTurns,
  type ValueKind,
} from './bench-input';
import { ReadingPicture } from './ReadingPicture';
import { coneKey, type End, kindWords, seatText } from './reading-text';
import { SectionDrawing } from './SectionDrawing';
import './ask-form.css';

/** How to take one reading, and a place to put it. */
export function AskForm(props: {
  readonly kind: AskableKind;
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
        <ReadingPicture kind={props.kind} end={props.end ?? 'male'} />
        <p>{kindWords(props.kind, props.end).how}</p>
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
        <Match when={props.kind === 'turns-over'}>
          <TurnsForm onReading={props.onReading} />
        </Match>
        <Match when={props.kind === 'cone-size'}>
          <ConeForm onReading={props.onReading} />
        </Match>
        <Match when={choicesOf(props.kind, props.end ?? 'male')} keyed>
          {(choices) => <ChoiceForm choices={choices} onReading={props.onReading} />}
        </Match>
      </Switch>
      <button
        type="button"
        class="button plain"
        onClick={() => props.onReading({ kind: 'cannot-tell', of: props.kind, text: props.kind })}
      >
        {t().trade.cannotTell}
      </button>
    </div>
  );
}

type LengthKind = Exclude<ValueKind, 'pitch-gauge'>;

const lengthKinds: readonly LengthKind[] = [
  'caliper-od',
  'caliper-id',
  'rule-od',
  'tube-od',
  'flange-thickness',
  'bolt-spacing',
  'hex',
];
const lengthKind = (kind: AskableKind): LengthKind | null =>
  lengthKinds.find((one) => one === kind) ?? null;

// The bench's unit stays chosen from one reading to the next.
const [pitchUnit, setPitchUnit] = createSignal<PitchUnit>('tpi');
const [lengthUnit, setLengthUnit] = createSignal<LengthUnit>('mm');

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
  const tiles = (shown: readonly Seat[]) => (
    <ul class="seat-choices">
      <For each={shown}>
        {(seat) => (
          <li>
            <button
              type="button"
              class="seat-choice"
              data-seat={seat}
              onClick={() => props.onReading({ kind: 'seat', seat, text: seat })}
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
    <Show when={likely.length > 0} fallback={tiles(others)}>
      {tiles(likely)}
      <details class="other-seats">
        <summary>{t().loop.otherEnd}</summary>
        {tiles(others)}
      </details>
    </Show>
  );
}

interface Choice {
  readonly words: string;
  readonly reading: Reading;
}

/** Readings that are one of a few words; null for those that are typed or drawn. */
function choicesOf(kind: AskableKind, end: End): readonly Choice[] | null {
  const { reading, trade } = t();
  switch (kind) {
    case 'flank':
      return ([60, 55] as const).map((flankDeg) => ({
        words: reading.flank[flankDeg],
        reading: { kind, flankDeg, text: String(flankDeg) },
      }));
    case 'taper':
      return (['straight', 'tapered'] as const).map((taper) => ({
        words:
          end === 'female' ? reading[taper] : `${reading[taper]}: ${reading.taperPicture[taper]}`,
        reading: { kind, taper, text: taper },
      }));
    case 'crest-form':
      return (['rounded', 'flat'] as const).map((crest) => ({
        words: trade.crests[crest],
        reading: { kind, crest, text: crest },
      }));
    case 'hand':
      return (['right', 'left'] as const).map((hand) => ({
        words: trade.hands[hand],
        reading: { kind, hand, text: hand },
      }));
    case 'marking':
      return marks.map((mark) => ({
        words: trade.marks[mark],
        reading: { kind, mark, text: mark },
      }));
    case 'seat-gauge':
      return gaugedCones.map((cone) => ({
        words: trade.cones[coneKey(cone)],
        reading: { kind, cone, text: degreesOf(cone) },
      }));
    case 'end-type':
      return endTypes.map((type) => ({
        words: `${trade.endTypes[type]}: ${trade.endPictures[type]}`,
        reading: { kind, type, text: type },
      }));
    default:
      return null;
  }
}

function ChoiceForm(props: {
  readonly choices: readonly Choice[];
  readonly onReading: (reading: Reading) => void;
}) {
  return (
    <div class="row">
      <For each={props.choices}>
        {(choice) => (
          <button type="button" class="button" onClick={() => props.onReading(choice.reading)}>
            {choice.words}
          </button>
        )}
      </For>
    </div>
  );
}

/** So many turns in such a length, for benches without a pitch gauge. */
function TurnsForm(props: { readonly onReading: (reading: Reading) => void }) {
  const [turns, setTurns] = createSignal('10');
  const [over, setOver] = createSignal('');
  const [wrong, setWrong] = createSignal<string | null>(null);
  const submit = (event: Event) => {
    event.preventDefault();
    const reading = typedTurns(turns(), over(), lengthUnit());
    if (reading.ok) props.onReading(reading.value);
    else setWrong(wrongWords('caliper-od', reading.reason));
  };
  return (
    <form class="value-form" onSubmit={submit}>
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
          setWrong(null);
        }}
        placeholder={lengthPlaceholder()}
        wrong={wrong()}
      />
      <LengthUnitChoice />
      <button type="submit" class="button strong">
        {t().identification.add}
      </button>
    </form>
  );
}

/** The two ends of a cone and the length between them, for benches without a seat gauge. */
function ConeForm(props: { readonly onReading: (reading: Reading) => void }) {
  const [typed, setTyped] = createSignal({ wide: '', narrow: '', over: '' });
  const [wrong, setWrong] = createSignal<string | null>(null);
  const submit = (event: Event) => {
    event.preventDefault();
    const { wide, narrow, over } = typed();
    const reading = typedCone(wide, narrow, over, lengthUnit());
    if (reading.ok) props.onReading(reading.value);
    else setWrong(wrongWords('caliper-od', reading.reason));
  };
  return (
    <form class="value-form" onSubmit={submit}>
      <For each={['wide', 'narrow', 'over'] as const}>
        {(field) => (
          <ValueInput
            label={t().trade.cone[field]}
            text={typed()[field]}
            onText={(value) => {
              setTyped((now) => ({ ...now, [field]: value }));
              setWrong(null);
            }}
            placeholder={lengthPlaceholder()}
            wrong={field === 'over' ? wrong() : null}
          />
        )}
      </For>
      <LengthUnitChoice />
      <button type="submit" class="button strong">
        {t().identification.add}
      </button>
    </form>
  );
}
