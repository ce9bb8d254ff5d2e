import { createSignal, For, Show } from 'solid-js';
import { typedLengthMm } from '../identification/bench-input';
import { lengthUnit } from '../identification/chosen-units';
import { LengthUnitChoice } from '../identification/UnitChoice';
import { t } from '../language/language';
import type { Help } from '../work/remeasure';
import { HistoryButtons } from './HistoryButtons';
import type { Hand } from './hand';
import type { History } from './history';
import './help-panel.css';

export function HelpPanel(props: {
  readonly history: History<Hand>;
  readonly busy: boolean;
  readonly onApply: (help: Help) => void;
  readonly onClear: () => void;
  readonly onClose: () => void;
}) {
  const hand = () => props.history.now();
  const [wrong, setWrong] = createSignal(false);
  const set = (part: Partial<Hand>) => props.history.push({ ...hand(), ...part });
  const apply = () => {
    const { mode, a, b, side, distance } = hand();
    if (mode === 'axis') {
      props.onApply({ ruler: null, corrections: { axis: [a, b], side } });
      return;
    }
    const mm = typedLengthMm(distance, lengthUnit());
    setWrong(mm === null);
    if (mm !== null) props.onApply({ ruler: { from: a, to: b, mm }, corrections: null });
  };
  return (
    <section class="panel stack tight help-panel" aria-label={t().inspection.help}>
      <ModeChoice mode={hand().mode} onMode={(mode) => set({ mode })} />
      <p class="small">
        {hand().mode === 'axis' ? t().inspection.helpText : t().inspection.ruleText}
      </p>
      <Show
        when={hand().mode === 'axis'}
        fallback={
          <RulerDistance
            distance={hand().distance}
            wrong={wrong()}
            onDistance={(distance) => set({ distance })}
          />
        }
      >
        <SideChoice side={hand().side} onSide={(side) => set({ side })} />
      </Show>
      <div class="row">
        <button type="button" class="button strong" disabled={props.busy} onClick={apply}>
          {t().inspection.apply}
        </button>
        <HistoryButtons of={props.history} />
        <button type="button" class="button" disabled={props.busy} onClick={props.onClear}>
          {t().inspection.clear}
        </button>
        <button type="button" class="button plain" onClick={props.onClose}>
          {t().inspection.doneHelp}
        </button>
      </div>
    </section>
  );
}

function ModeChoice(props: {
  readonly mode: Hand['mode'];
  readonly onMode: (mode: Hand['mode']) => void;
}) {
  return (
    <div class="row help-modes">
      <For each={['axis', 'ruler'] as const}>
        {(mode) => (
          <label class="choice">
            <input
              type="radio"
              name="help-mode"
              checked={props.mode === mode}
              onChange={() => props.onMode(mode)}
            />
            {mode === 'axis' ? t().inspection.help : t().inspection.rule}
          </label>
        )}
      </For>
    </div>
  );
}

function RulerDistance(props: {
  readonly distance: string;
  readonly wrong: boolean;
  readonly onDistance: (distance: string) => void;
}) {
  return (
    <div class="row">
      <label class="field">
        <span>
          {t().inspection.ruleDistance} ({lengthUnit() === 'mm' ? 'mm' : 'in'})
        </span>
        <input
          inputmode="decimal"
          value={props.distance}
          aria-invalid={props.wrong}
          onChange={(event) => props.onDistance(event.currentTarget.value)}
        />
        <Show when={props.wrong}>
          <span class="small" role="alert">
            {t().reading.invalid}
          </span>
        </Show>
      </label>
      <LengthUnitChoice />
    </div>
  );
}

function SideChoice(props: {
  readonly side: Hand['side'];
  readonly onSide: (side: Hand['side']) => void;
}) {
  return (
    <fieldset>
      <legend class="small soft">{t().inspection.helpSide}</legend>
      <div class="row">
        <For each={['both', 'left', 'right'] as const}>
          {(side) => (
            <label class="choice">
              <input
                type="radio"
                name="help-side"
                checked={props.side === side}
                onChange={() => props.onSide(side)}
              />
              {side === 'both' ? t().inspection.both : t().inspection.side[side]}
            </label>
          )}
        </For>
      </div>
    </fieldset>
  );
}
