import { createMemo, For, Show } from 'solid-js';
import type { CrestHeight } from '../../journey/wear/crest-heights';
import { crestState } from '../../journey/wear/crest-state';
import type { ClassLimits } from '../../standards/limits/thread-class';
import { number } from '../language/format';
import { t } from '../language/language';

const width = 640;
const bandHeight = 120;
const gap = 40;
const left = 56;
const right = 14;
const top = 26;
const height = top + 2 * bandHeight + gap + 36;

type Side = CrestHeight['side'];

/** Each crest at its place along the axis, left side above, right side mirrored below, as in the profile;
 *  behind them the class of the thread it should have. */
export function CrestChart(props: {
  readonly crests: readonly CrestHeight[];
  readonly limits: ClassLimits | null;
}) {
  const band = () =>
    props.limits && {
      from: props.limits.major.minMm / 2,
      to: props.limits.major.maxMm / 2,
    };
  const range = createMemo(() => {
    const ends = props.crests.flatMap(({ heightMm, u }) => [heightMm - 2 * u, heightMm + 2 * u]);
    const limits = band();
    const low = Math.min(...ends, ...(limits ? [limits.from] : []));
    const high = Math.max(...ends, ...(limits ? [limits.to] : []));
    const pad = 0.06 * (high - low);
    const along = props.crests.map(({ atMm }) => atMm);
    return {
      r0: low - pad,
      r1: high + pad,
      x0: Math.min(...along) - 0.8,
      x1: Math.max(...along) + 0.8,
    };
  });
  const x = (mm: number) => {
    const { x0, x1 } = range();
    return left + ((mm - x0) / (x1 - x0)) * (width - left - right);
  };
  const y = (side: Side, mm: number) => {
    const { r0, r1 } = range();
    const share = (mm - r0) / (r1 - r0);
    return side === 'left'
      ? top + bandHeight * (1 - share)
      : top + bandHeight + gap + bandHeight * share;
  };
  const ticks = (from: number, to: number, most: number, steps: readonly number[]) => {
    const step = steps.find((s) => (to - from) / s <= most) ?? steps.at(-1)!;
    const found: number[] = [];
    // Without the negative zero that rounding up leaves.
    for (let v = Math.ceil(from / step) * step + 0; v <= to + 1e-9; v += step) found.push(v);
    return found;
  };
  const radiusTicks = () => ticks(range().r0, range().r1, 4, [0.05, 0.1, 0.2, 0.5, 1, 2, 5]);
  const axisTicks = () => ticks(range().x0, range().x1, 9, [1, 2, 5, 10, 20]);
  const axisY = top + bandHeight + gap / 2;
  const short = () => props.crests.filter(({ shortMm }) => shortMm !== null);
  const name = () => t().wear.chartName(number(props.crests.length, 0), number(short().length, 0));
  return (
    <figure class="wear-plot crest-chart">
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={name()}>
        <For each={['left', 'right'] as const}>
          {(side) => (
            <g>
              <Show when={band()} keyed>
                {({ from, to }) => (
                  <rect
                    class="class-band"
                    x={left}
                    width={width - left - right}
                    y={Math.min(y(side, from), y(side, to))}
                    height={Math.abs(y(side, from) - y(side, to))}
                  />
                )}
              </Show>
              <For each={radiusTicks()}>
                {(r) => (
                  <>
                    <path class="grid" d={`M${left} ${y(side, r)}H${width - right}`} />
                    <text class="tick" x={left - 6} y={y(side, r) + 4} text-anchor="end">
                      {number(r, 2)}
                    </text>
                  </>
                )}
              </For>
              <text class="tick" x={left} y={side === 'left' ? 15 : height - 20}>
                {t().wear.sides[side]}
              </text>
            </g>
          )}
        </For>
        <path class="axis" d={`M${left - 20} ${axisY}H${width}`} />
        <For each={axisTicks()}>
          {(mm) => (
            <>
              <path class="grid" d={`M${x(mm)} ${axisY - 4}v8`} />
              <text class="tick" x={x(mm)} y={axisY + 17} text-anchor="middle">
                {number(mm, 0)}
              </text>
            </>
          )}
        </For>
        <text class="tick" x={width - right} y={axisY - 7} text-anchor="end">
          {t().wear.alongAxis}
        </text>
        <For each={props.crests}>
          {(crest) => {
            const at = () => x(crest.atMm);
            const high = (u: number) => y(crest.side, crest.heightMm + 2 * u);
            const low = (u: number) => y(crest.side, crest.heightMm - 2 * u);
            return (
              <g class="crest" data-state={crestState(crest, props.limits)}>
                <path
                  class="whisker"
                  d={`M${at() - 4} ${high(crest.u)}h8m-4 0V${low(crest.u)}m-4 0h8`}
                />
                <path
                  class="whisker own"
                  d={`M${at()} ${high(crest.uOwnMm)}V${low(crest.uOwnMm)}`}
                />
                <circle class="value" cx={at()} cy={y(crest.side, crest.heightMm)} r={5} />
                <Show when={crestState(crest, props.limits) !== 'as-others'}>
                  <text
                    class="tick turn"
                    x={at() + 8}
                    y={y(crest.side, crest.heightMm) + (crest.side === 'left' ? 16 : -6)}
                  >
                    {crest.turn}
                  </text>
                </Show>
              </g>
            );
          }}
        </For>
      </svg>
      <figcaption class="small soft">
        {t().wear.chartText} {t().wear.chartFrom}
      </figcaption>
      <details class="small">
        <summary>{t().wear.list}</summary>
        <CrestTable crests={props.crests} />
      </details>
    </figure>
  );
}

function CrestTable(props: { readonly crests: readonly CrestHeight[] }) {
  return (
    <table class="crest-table">
      <thead>
        <tr>
          <th scope="col">{t().wear.turn}</th>
          <th scope="col">{t().wear.side}</th>
          <th scope="col">{t().wear.at} (mm)</th>
          <th scope="col">{t().wear.height} (mm)</th>
          <th scope="col">{t().wear.short} (mm)</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.crests}>
          {({ turn, side, atMm, heightMm, u, shortMm }) => (
            <tr>
              <td>{turn}</td>
              <td>{t().wear.sides[side]}</td>
              <td>{number(atMm, 1)}</td>
              <td>
                {number(heightMm, 3)} ± {number(2 * u, 3)}
              </td>
              <td>{shortMm === null ? '–' : number(shortMm, 2)}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
