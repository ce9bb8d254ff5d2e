import { For } from 'solid-js';
import { t } from '../language/language';
import { elastomers } from './elastomers';
import { temperatureText } from './temperature-text';

/** Which elastomer suits which fluid. */
export function ElastomerTable() {
  return (
    <section class="stack tight">
      <h2>{t().result.elastomers}</h2>
      <table class="elastomers small">
        <thead>
          <tr>
            <th scope="col">{t().result.fluid}</th>
            <th scope="col">{t().result.suits}</th>
            <th scope="col">{t().result.avoid}</th>
          </tr>
        </thead>
        <tbody>
          <For each={elastomers}>
            {(row) => (
              <tr>
                <th scope="row">{t().trade.fluids[row.fluid]}</th>
                <td>{row.suits.join(', ')}</td>
                <td>{row.avoid.join(', ')}</td>
              </tr>
            )}
          </For>
          <tr>
            <th scope="row">{t().trade.temperature}</th>
            <td colSpan={2}>{temperatureText()}</td>
          </tr>
        </tbody>
      </table>
      <p class="small">{t().trade.epdm}</p>
      <p class="small soft">
        {t().trade.temperatureNote} {t().result.elastomersNote}
      </p>
    </section>
  );
}
