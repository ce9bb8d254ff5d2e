import { createMemo, For } from 'solid-js';
import type { BudgetRow, ThreadMeasurement } from '../../journey/5-measurement/thread-measurement';
import { diameterName } from '../identification/diameter-name';
import { number } from '../language/format';
import { t } from '../language/language';
import './budget-picture.css';

/** Each source as a bar with end ticks, like the card's own print-check bars.
 *  Shares are one standard uncertainty relative to the value, in per cent. */
export function BudgetPicture(props: { readonly measurement: ThreadMeasurement }) {
  const sourceName = (source: BudgetRow['source']) =>
    props.measurement.end === 'female' && source === 'height'
      ? t().end.mouthHeight
      : t().inspection.source[source];
  const rows = createMemo(() => {
    const { budget, pitchMm, majorDiameterMm } = props.measurement;
    return budget
      .map((row) => ({
        source: row.source,
        pitch: (Math.abs(row.pitchMm) / pitchMm.value) * 100,
        major: (Math.abs(row.majorDiameterMm) / majorDiameterMm.value) * 100,
      }))
      .sort((a, b) => Math.max(b.pitch, b.major) - Math.max(a.pitch, a.major));
  });
  const total = () => {
    const { pitchMm, majorDiameterMm } = props.measurement;
    return {
      pitch: (pitchMm.u / pitchMm.value) * 100,
      major: (majorDiameterMm.u / majorDiameterMm.value) * 100,
    };
  };
  const most = () =>
    Math.max(total().pitch, total().major, ...rows().map((r) => Math.max(r.pitch, r.major)), 1e-6);
  return (
    <div class="stack tight">
      <h3>{t().inspection.budget}</h3>
      <p class="small soft">{t().inspection.budgetText}</p>
      <table class="budget">
        <thead>
          <tr>
            <td />
            <th scope="col">{t().inspection.pitch}</th>
            <th scope="col">{diameterName(props.measurement)}</th>
          </tr>
        </thead>
        <tbody>
          <For each={rows()}>
            {(row) => (
              <tr>
                <th scope="row">{sourceName(row.source)}</th>
                <Cell share={row.pitch} most={most()} />
                <Cell share={row.major} most={most()} />
              </tr>
            )}
          </For>
          <tr class="budget-total">
            <th scope="row">{t().inspection.budgetTotal}</th>
            <Cell share={total().pitch} most={most()} />
            <Cell share={total().major} most={most()} />
          </tr>
        </tbody>
      </table>
    </div>
  );
}

function Cell(props: { readonly share: number; readonly most: number }) {
  const length = () => (props.share / props.most) * 100;
  return (
    <td>
      <svg viewBox="0 0 104 12" preserveAspectRatio="none" aria-hidden="true">
        <path d={`M1 1v10M1 6H${1 + length()}M${1 + length()} 1v10`} />
      </svg>
      <span>{number(props.share, props.share < 0.1 ? 3 : 2)} %</span>
    </td>
  );
}
