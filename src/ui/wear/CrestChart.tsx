import { createMemo, For, Show } from 'solid-js';
import type { CrestHeight } from '../../journey/wear/crest-heights';
import { crestState } from '../../journey/wear/crest-state';
import type { ClassLimits } from '../../standards/limits/thread-class';
import { number } from '../language/format';
import { t } from '../language/language';
import { SidesChart } from '../widgets/SidesChart';
import { type PlotSide, type SidesPlot, type SidesRange, sidesPlot } from '../widgets/sides-plot';

const layout = { bandHeight: 120, gap: 40, left: 56, right: 14, top: 26, bottom: 36 };

interface Radii {
  readonly fromMm: number;
  readonly toMm: number;
}

/** Each crest at its place along the axis, with its height; behind them the class of the thread it
 *  should have. */
export function CrestChart(props: {
  readonly crests: readonly CrestHeight[];
  readonly limits: ClassLimits | null;
}) {
  const classRadii = (): Radii | null =>
    props.limits && {
      fromMm: props.limits.major.minMm / 2,
      toMm: props.limits.major.maxMm / 2,
    };
  const plot = sidesPlot(
    layout,
    createMemo(() => rangeOf(props.crests, classRadii())),
  );
  const short = () => props.crests.filter(({ shortMm }) => shortMm !== null);
  const name = () => t().wear.chartName(number(props.crests.length, 0), number(short().length, 0));
  return (
    <figure class="wear-plot crest-chart">
      <SidesChart
        plot={plot}
        name={name()}
        radii={{ steps: [0.05, 0.1, 0.2, 0.5, 1, 2, 5], digits: 2 }}
        axis={{ steps: [1, 2, 5, 10, 20], name: t().wear.alongAxis }}
        under={(side) => (
          <Show when={classRadii()} keyed>
            {(radii) => <ClassBand plot={plot} side={side} radii={radii} />}
          </Show>
        )}
        over={(side) => (
          <text class="tick" x={plot.left} y={side === 'left' ? 15 : plot.height - 20}>
            {t().wear.sides[side]}
          </text>
        )}
      >
        <For each={props.crests}>
          {(crest) => <CrestPoint plot={plot} crest={crest} limits={props.limits} />}
        </For>
      </SidesChart>
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

function ClassBand(props: {
  readonly plot: SidesPlot;
  readonly side: PlotSide;
  readonly radii: Radii;
}) {
  const from = () => props.plot.y(props.side, props.radii.fromMm);
  const to = () => props.plot.y(props.side, props.radii.toMm);
  return (
    <rect
      class="class-band"
      x={props.plot.left}
      width={props.plot.right - props.plot.left}
      y={Math.min(from(), to())}
      height={Math.abs(from() - to())}
    />
  );
}

/** With 2 u either way, and within it what the crest does not share with the others. */
function CrestPoint(props: {
  readonly plot: SidesPlot;
  readonly crest: CrestHeight;
  readonly limits: ClassLimits | null;
}) {
  const { crest } = props;
  const at = () => props.plot.x(crest.atMm);
  const y = (mm: number) => props.plot.y(crest.side, mm);
  const high = (u: number) => y(crest.heightMm + 2 * u);
  const low = (u: number) => y(crest.heightMm - 2 * u);
  return (
    <g class="crest" data-state={crestState(crest, props.limits)}>
      <path class="whisker" d={`M${at() - 4} ${high(crest.u)}h8m-4 0V${low(crest.u)}m-4 0h8`} />
      <path class="whisker own" d={`M${at()} ${high(crest.uOwnMm)}V${low(crest.uOwnMm)}`} />
      <circle class="value" cx={at()} cy={y(crest.heightMm)} r={5} />
      <Show when={crestState(crest, props.limits) !== 'as-others'}>
        <text
          class="tick turn"
          x={at() + 8}
          y={y(crest.heightMm) + (crest.side === 'left' ? 16 : -6)}
        >
          {crest.turn}
        </text>
      </Show>
    </g>
  );
}

function rangeOf(crests: readonly CrestHeight[], limits: Radii | null): SidesRange {
  const ends = crests.flatMap(({ heightMm, u }) => [heightMm - 2 * u, heightMm + 2 * u]);
  const low = Math.min(...ends, ...(limits ? [limits.fromMm] : []));
  const high = Math.max(...ends, ...(limits ? [limits.toMm] : []));
  const pad = 0.06 * (high - low);
  const along = crests.map(({ atMm }) => atMm);
  return {
    r0: low - pad,
    r1: high + pad,
    x0: Math.min(...along) - 0.8,
    x1: Math.max(...along) + 0.8,
  };
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
