import { createSignal, createUniqueId, For, Show } from 'solid-js';
import type { Reading } from '../../journey/6-candidates/reading';
import { typedReading, type ValueKind } from '../identification/bench-input';
import {
  lengthPlaceholder,
  lengthUnit,
  pitchPlaceholder,
  pitchUnit,
} from '../identification/chosen-units';
import { ReadingPicture } from '../identification/ReadingPicture';
import { kindWords, wrongWords } from '../identification/reading-text';
import { LengthUnitChoice, PitchUnitChoice } from '../identification/UnitChoice';
import { ValueInput } from '../identification/ValueInput';
import { t } from '../language/language';
import { createKeptSignal } from '../widgets/create-kept-signal';
import { conclude } from '../work/engine';
import { sheetFromReadings } from '../work/make-sheet';
import { adopt } from '../work/sheets';
import { toolsAtHand } from '../work/tools';
import './readings-screen.css';

type WidthTool = 'caliper' | 'rule';

/** Pitch and one diameter, without a photo. */
export function ReadingsScreen() {
  const [end, setEnd] = createKeptSignal('end', 'male');
  const [pitch, setPitch] = createKeptSignal('pitch', '');
  const [width, setWidth] = createKeptSignal('width', '');
  const [withTool, setWithTool] = createSignal<WidthTool>('caliper');
  const [wrong, setWrong] = createSignal<{ pitch: string | null; width: string | null }>({
    pitch: null,
    width: null,
  });
  const [busy, setBusy] = createSignal(false);
  const endOf = () => (end() === 'female' ? 'female' : 'male');
  const widthKind = (): ValueKind =>
    end() === 'female' ? 'caliper-id' : withTool() === 'rule' ? 'rule-od' : 'caliper-od';

  const widthName = () => (end() === 'male' ? t().readingsOnly.od : t().readingsOnly.id);

  const submit = async (event: Event) => {
    event.preventDefault();
    const found: Reading[] = [];
    const problems: { pitch: string | null; width: string | null } = { pitch: null, width: null };
    const take = (kind: ValueKind, typed: string, unit: 'tpi' | 'mm' | 'in') => {
      const reading = typedReading(kind, typed, unit);
      if (reading.ok) found.push(reading.value);
      return reading.ok ? null : wrongWords(kind, reading.reason);
    };
    problems.pitch = take('pitch-gauge', pitch(), pitchUnit());
    problems.width = take(widthKind(), width(), lengthUnit());
    setWrong(problems);
    if (problems.pitch || problems.width) return;
    setBusy(true);
    try {
      const conclusion = await conclude(null, found, toolsAtHand());
      await adopt(await sheetFromReadings(found, conclusion));
      setPitch('');
      setWidth('');
      // The next part is another part: its end is chosen anew.
      setEnd('male');
    } finally {
      setBusy(false);
    }
  };

  return (
    <div class="readings-screen">
      <div class="screen-head">
        <h1>{t().readingsOnly.title}</h1>
        <p class="soft">{t().readingsOnly.lead}</p>
      </div>
      <form class="stack" onSubmit={(event) => void submit(event)} novalidate>
        <EndOfPart end={end()} onEnd={setEnd} />
        <section class="readings-part">
          <ReadingPicture kind="pitch-gauge" end={endOf()} />
          <div class="stack tight">
            <h2>{t().readingsOnly.pitch}</h2>
            <p class="small soft">{kindWords('pitch-gauge', endOf()).how}</p>
            <div class="value-form">
              <ValueInput
                label={t().readingsOnly.pitch}
                text={pitch()}
                onText={setPitch}
                placeholder={pitchPlaceholder()}
                wrong={wrong().pitch}
              />
              <PitchUnitChoice />
            </div>
          </div>
        </section>
        <section class="readings-part">
          <ReadingPicture kind={end() === 'female' ? 'caliper-id' : widthKind()} />
          <div class="stack tight">
            <h2>{widthName()}</h2>
            <p class="small soft">{kindWords(widthKind(), endOf()).how}</p>
            <div class="value-form">
              <ValueInput
                label={widthName()}
                text={width()}
                onText={setWidth}
                placeholder={lengthPlaceholder()}
                wrong={wrong().width}
              />
              <LengthUnitChoice />
            </div>
            <Show when={end() === 'male'}>
              <ToolChoice tool={withTool()} onTool={setWithTool} />
            </Show>
          </div>
        </section>
        <div class="row">
          <button type="submit" class="button strong" disabled={busy()}>
            {t().readingsOnly.go}
          </button>
        </div>
      </form>
    </div>
  );
}

function EndOfPart(props: { readonly end: string; readonly onEnd: (end: string) => void }) {
  const group = createUniqueId();
  return (
    <fieldset class="end-choice">
      <legend>{t().readingsOnly.end}</legend>
      <div class="row">
        <For each={['male', 'female'] as const}>
          {(which) => (
            <label class="choice end-card">
              <input
                type="radio"
                name={group}
                checked={props.end === which}
                onChange={() => props.onEnd(which)}
              />
              <span>{t().readingsOnly[which]}</span>
            </label>
          )}
        </For>
      </div>
    </fieldset>
  );
}

function ToolChoice(props: {
  readonly tool: WidthTool;
  readonly onTool: (tool: WidthTool) => void;
}) {
  return (
    <label class="field readings-tool">
      <span class="small soft">{t().readingsOnly.with}</span>
      <select
        value={props.tool}
        onChange={(event) => props.onTool(event.currentTarget.value as WidthTool)}
      >
        <option value="caliper">{t().identification.tools.caliper}</option>
        <option value="rule">{t().identification.tools.rule}</option>
      </select>
    </label>
  );
}
