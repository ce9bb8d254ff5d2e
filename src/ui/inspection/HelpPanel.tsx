import { createSignal, For, Show } from 'solid-js';
import type { Corrections } from '../../journey/identification';
import type { PhotoPoint } from '../../journey/overlay';
import { typedLengthMm } from '../identification/bench-input';
import { lengthUnit } from '../identification/chosen-units';
import { LengthUnitChoice } from '../identification/UnitChoice';
import { t } from '../language/language';
import type { Help } from '../work/remeasure';
import type { History } from './history';
import './help-panel.css';

/** What a person shows by hand: two points, and what they mean. Photo frame, px. */
export interface Hand {
  readonly mode: 'axis' | 'ruler';
  readonly a: PhotoPoint;
  readonly b: PhotoPoint;
  readonly side: Corrections['side'];
  /** As typed; only in ruler mode. */
  readonly distance: string;
}

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
      <div class="row help-modes">
        <For each={['axis', 'ruler'] as const}>
          {(mode) => (
            <label class="choice">
              <input
                type="radio"
                name="help-mode"
                checked={hand().mode === mode}
                onChange={() => set({ mode })}
              />
              {mode === 'axis' ? t().inspection.help : t().inspection.rule}
            </label>
          )}
        </For>
      </div>
      <p class="small">
        {hand().mode === 'axis' ? t().inspection.helpText : t().inspection.ruleText}
      </p>
      <Show
        when={hand().mode === 'axis'}
        fallback={
          <div class="row">
            <label class="field">
              <span>
                {t().inspection.ruleDistance} ({lengthUnit() === 'mm' ? 'mm' : 'in'})
              </span>
              <input
                inputmode="decimal"
                value={hand().distance}
                aria-invalid={wrong()}
                onChange={(event) => set({ distance: event.currentTarget.value })}
              />
              <Show when={wrong()}>
                <span class="small" role="alert">
                  {t().reading.invalid}
                </span>
              </Show>
            </label>
            <LengthUnitChoice />
          </div>
        }
      >
        <fieldset>
          <legend class="small soft">{t().inspection.helpSide}</legend>
          <div class="row">
            <For each={['both', 'left', 'right'] as const}>
              {(side) => (
                <label class="choice">
                  <input
                    type="radio"
                    name="help-side"
                    checked={hand().side === side}
                    onChange={() => set({ side })}
                  />
                  {side === 'both' ? t().inspection.both : t().inspection.side[side]}
                </label>
              )}
            </For>
          </div>
        </fieldset>
      </Show>
      <div class="row">
        <button type="button" class="button strong" disabled={props.busy} onClick={apply}>
          {t().inspection.apply}
        </button>
        <button
          type="button"
          class="button"
          disabled={!props.history.canUndo()}
          onClick={props.history.undo}
        >
          {t().inspection.undo}
        </button>
        <button
          type="button"
          class="button"
          disabled={!props.history.canRedo()}
          onClick={props.history.redo}
        >
          {t().inspection.redo}
        </button>
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
