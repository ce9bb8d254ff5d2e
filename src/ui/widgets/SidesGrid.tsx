import { For } from 'solid-js';
import { number } from '../language/format';
import { type PlotSide, type SidesPlot, ticks } from './sides-plot';

/** Lines and numbers at round radii of one side. */
export function RadiusGrid(props: {
  readonly plot: SidesPlot;
  readonly side: PlotSide;
  readonly steps: readonly number[];
  readonly digits: number;
}) {
  const { left, right, y, range } = props.plot;
  return (
    <For each={ticks(range().r0, range().r1, 4, props.steps)}>
      {(r) => (
        <>
          <path class="grid" d={`M${left} ${y(props.side, r)}H${right}`} />
          <text class="tick" x={left - 6} y={y(props.side, r) + 4} text-anchor="end">
            {number(r, props.digits)}
          </text>
        </>
      )}
    </For>
  );
}

/** The axis, with its name and with numbers at round places. */
export function AxisGrid(props: {
  readonly plot: SidesPlot;
  readonly steps: readonly number[];
  readonly name: string;
}) {
  const { width, left, right, axisY, x, range } = props.plot;
  return (
    <>
      <path class="axis" d={`M${left - 20} ${axisY}H${width}`} />
      <For each={ticks(range().x0, range().x1, 9, props.steps)}>
        {(mm) => (
          <>
            <path class="grid" d={`M${x(mm)} ${axisY - 4}v8`} />
            <text class="tick" x={x(mm)} y={axisY + 17} text-anchor="middle">
              {number(mm, mm % 1 ? 1 : 0)}
            </text>
          </>
        )}
      </For>
      <text class="tick" x={right} y={axisY - 7} text-anchor="end">
        {props.name}
      </text>
    </>
  );
}
