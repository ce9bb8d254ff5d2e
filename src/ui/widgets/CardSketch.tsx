import { For, Match, Show, Switch } from 'solid-js';
import { card, markers } from '../../scale-card/geometry';
import './card-sketch.css';

export type Shows =
  | 'right'
  | 'card'
  | 'no-card'
  | 'no-thread'
  | 'few-turns'
  | 'cut-off'
  | 'several'
  | 'far'
  | 'blurred'
  | 'mirrored';

/** The scale card with a fitting on it, card frame (mm), as a picture that explains. */
export function CardSketch(props: { readonly shows: Shows; readonly verdict?: 'right' | 'wrong' }) {
  const is = (...shows: Shows[]) => shows.includes(props.shows);
  return (
    <figure class="card-sketch" data-verdict={props.verdict}>
      <svg viewBox="-14 -14 212 164" aria-hidden="true">
        <g
          class={is('blurred') ? 'blurred' : ''}
          transform={
            is('far')
              ? 'translate(60 48) scale(0.34)'
              : is('mirrored')
                ? 'translate(184 0) scale(-1 1)'
                : undefined
          }
        >
          <Show when={!is('no-card')}>
            <rect class="paper" width={card.widthMm} height={card.heightMm} />
            <For each={markers}>
              {(marker) => (
                <rect
                  class="mark"
                  x={marker.xMm - card.markerSideMm / 2}
                  y={marker.yMm - card.markerSideMm / 2}
                  width={card.markerSideMm}
                  height={card.markerSideMm}
                />
              )}
            </For>
          </Show>
          <Switch>
            <Match when={is('card')}>{null}</Match>
            <Match when={is('no-thread')}>
              <Fitting x={92} y={68} covered />
            </Match>
            <Match when={is('few-turns')}>
              <Fitting x={92} y={68} turns={2} />
            </Match>
            <Match when={is('cut-off')}>
              <Fitting x={150} y={18} />
            </Match>
            <Match when={is('several')}>
              <Fitting x={70} y={50} />
              <Fitting x={110} y={92} />
            </Match>
            <Match when={true}>
              <Fitting x={92} y={68} />
            </Match>
          </Switch>
        </g>
      </svg>
    </figure>
  );
}

/** Free end to the right, about 60 mm long. */
function Fitting(props: {
  readonly x: number;
  readonly y: number;
  readonly turns?: number;
  readonly covered?: boolean;
}) {
  const thread = () => {
    const turns = props.turns ?? 6;
    let top = 'M6 -9';
    let bottom = '';
    for (let i = 0; i < turns; i++) {
      top += `L${8 + i * 4} -11.5L${10 + i * 4} -8.5`;
      bottom = `L${10 + i * 4} 8.5L${8 + i * 4} 11.5${bottom}`;
    }
    return `${top}V8.5${bottom}L6 9`;
  };
  return (
    <g class="fitting" transform={`translate(${props.x} ${props.y}) rotate(-24)`}>
      <path d="M-36 -10 H-8 V10 H-36 Z" />
      <path d="M-8 -17 H6 V17 H-8 Z M-8 -8 H6 M-8 8 H6" />
      <Show when={!props.covered} fallback={<path d="M6 -15 H36 V15 H6 Z" />}>
        <path d={thread()} />
      </Show>
    </g>
  );
}
