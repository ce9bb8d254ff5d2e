import { For, type JSX } from 'solid-js';
import { AxisGrid, RadiusGrid } from './SidesGrid';
import { type PlotSide, plotSides, type SidesPlot } from './sides-plot';

/** Both sides of a thread along its axis, over lines at round radii and places. */
export function SidesChart(props: {
  readonly plot: SidesPlot;
  /** What the picture is, for those who do not see it. */
  readonly name: string;
  readonly radii: { readonly steps: readonly number[]; readonly digits: number };
  readonly axis: { readonly steps: readonly number[]; readonly name: string };
  /** Of one side, under its lines and over them. */
  readonly under?: (side: PlotSide) => JSX.Element;
  readonly over: (side: PlotSide) => JSX.Element;
  readonly onLeave?: () => void;
  readonly children: JSX.Element;
}) {
  return (
    <svg
      viewBox={`0 0 ${props.plot.width} ${props.plot.height}`}
      role="img"
      aria-label={props.name}
      onPointerLeave={() => props.onLeave?.()}
    >
      <For each={plotSides}>
        {(side) => (
          <g>
            {props.under?.(side)}
            <RadiusGrid plot={props.plot} side={side} {...props.radii} />
            {props.over(side)}
          </g>
        )}
      </For>
      <AxisGrid plot={props.plot} {...props.axis} />
      {props.children}
    </svg>
  );
}
