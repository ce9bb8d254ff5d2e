import { For } from 'solid-js';
import { regions, trades } from '../../journey/6-candidates/priors';
import { t } from '../language/language';
import { priorChoice, type Region, setPriorChoice, type TradeKind } from '../work/prior-choice';
import { openSheet } from '../work/sheets';
import { toolsAtHand } from '../work/tools';
import { withReadings } from './conclusion-actions';

/** Region and trade, for those who know what the part is off. Unset, it counts for nothing. */
export function WhatItIsOff() {
  const choose = (next: Partial<ReturnType<typeof priorChoice>>) => {
    setPriorChoice({ ...priorChoice(), ...next });
    const readings = openSheet()?.sheet.readings;
    if (readings) void withReadings(readings, toolsAtHand());
  };
  return (
    <details>
      <summary class="small">{t().trade.off.title}</summary>
      <p class="small soft">{t().trade.off.lead}</p>
      <div class="row">
        <label class="field">
          <span class="small soft">{t().trade.off.region}</span>
          <select
            value={priorChoice().region}
            onChange={(event) => choose({ region: event.currentTarget.value as Region })}
          >
            <For each={regions}>
              {(one) => <option value={one}>{t().trade.off.regions[one]}</option>}
            </For>
          </select>
        </label>
        <label class="field">
          <span class="small soft">{t().trade.off.trade}</span>
          <select
            value={priorChoice().trade}
            onChange={(event) => choose({ trade: event.currentTarget.value as TradeKind })}
          >
            <For each={trades}>
              {(one) => <option value={one}>{t().trade.off.trades[one]}</option>}
            </For>
          </select>
        </label>
      </div>
    </details>
  );
}
