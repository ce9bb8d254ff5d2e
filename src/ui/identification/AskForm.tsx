import { For, Match, Show, Switch } from 'solid-js';
import type { Reading } from '../../journey/6-candidates/reading';
import type { AskableKind } from '../../journey/6-candidates/reading-choices';
import { t } from '../language/language';
import type { ValueKind } from './bench-input';
import { ReadingPicture } from './ReadingPicture';
import { readingChoices } from './reading-choices';
import { type End, kindWords } from './reading-text';
import { SeatTiles } from './SeatTiles';
import { ConeForm, LengthForm, PitchForm, TurnsForm } from './TypedReadings';
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
  const cannotTell = () => (
    <button
      type="button"
      class="button plain"
      onClick={() => props.onReading({ kind: 'cannot-tell', of: props.kind, text: props.kind })}
    >
      {t().trade.cannotTell}
    </button>
  );
  return (
    <div class="ask-form" data-kind={props.kind}>
      <div class="ask-how">
        <ReadingPicture kind={props.kind} end={props.end ?? 'male'} />
        <p>{kindWords(props.kind, props.end).how}</p>
      </div>
      <Switch>
        <Match when={props.kind === 'pitch-gauge'}>
          <PitchForm onReading={props.onReading} beside={cannotTell()} />
        </Match>
        <Match when={lengthKind(props.kind)} keyed>
          {(kind) => <LengthForm kind={kind} onReading={props.onReading} beside={cannotTell()} />}
        </Match>
        <Match when={props.kind === 'seat'}>
          <SeatTiles
            likely={props.likelySeats ?? []}
            outcomes={props.outcomes ?? new Map()}
            end={props.end ?? 'male'}
            onReading={props.onReading}
          />
        </Match>
        <Match when={props.kind === 'turns-over'}>
          <TurnsForm onReading={props.onReading} beside={cannotTell()} />
        </Match>
        <Match when={props.kind === 'cone-size'}>
          <ConeForm onReading={props.onReading} beside={cannotTell()} />
        </Match>
        <Match when={readingChoices(props.kind, props.end ?? 'male')} keyed>
          {(choices) => (
            <div class="row">
              <For each={choices}>
                {({ words, reading }) => (
                  <button type="button" class="button" onClick={() => props.onReading(reading)}>
                    {words}
                  </button>
                )}
              </For>
            </div>
          )}
        </Match>
      </Switch>
      <Show when={!typed(props.kind)}>{cannotTell()}</Show>
    </div>
  );
}

type LengthKind = Exclude<ValueKind, 'pitch-gauge'>;

const lengthKinds: readonly LengthKind[] = [
  'caliper-od',
  'caliper-id',
  'rule-od',
  'tube-od',
  'nose-od',
  'flange-thickness',
  'bolt-spacing',
  'hex',
];
const lengthKind = (kind: AskableKind): LengthKind | null =>
  lengthKinds.find((one) => one === kind) ?? null;

/** Taken in a form of fields; there, that nobody can tell stands beside the form's own button. */
const typed = (kind: AskableKind) =>
  kind === 'pitch-gauge' ||
  kind === 'turns-over' ||
  kind === 'cone-size' ||
  lengthKind(kind) !== null;
