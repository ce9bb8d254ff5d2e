import { Match, Switch } from 'solid-js';
import { card } from '../../scale-card/geometry';
import { CardMarks } from '../widgets/CardMarks';
import type { Choice } from './reference-choice';
import './reference.css';

/** A fitting with what it is measured against, in mm, to scale. */
export function ReferencePicture(props: { readonly of: Choice }) {
  return (
    <svg class="reference-picture" viewBox="-4 -4 192 144" aria-hidden="true">
      <Switch>
        <Match when={props.of === 'card'}>
          <rect class="face" width={card.widthMm} height={card.heightMm} />
          <CardMarks />
          <Fitting x={92} y={68} size={1} />
        </Match>
        <Match when={props.of === 'id1'}>
          <rect class="face" x="4" y="10" width="120" height="75.7" rx="4.5" />
          <rect class="detail" x="18" y="34" width="17" height="14" rx="2.5" />
          <path class="detail" d="M18 64 h26 m6 0 h26 m6 0 h26" />
          <Fitting x={112} y={112} size={1.4} />
        </Match>
        <Match when={props.of === 'sheet'}>
          <rect class="face" x="2" y="6" width="180" height="127.3" />
          <Fitting x={92} y={70} size={0.8} />
        </Match>
        <Match when={true}>
          <rect class="face" x="-2" y="14" width="188" height="34" />
          <path
            class="detail"
            d={Array.from(
              { length: 23 },
              (_, i) => `M${4 + 8 * i} 48 v${i % 5 === 0 ? -16 : -9}`,
            ).join('')}
          />
          <Fitting x={92} y={92} size={1.4} />
        </Match>
      </Switch>
    </svg>
  );
}

/** Hex, thread and free end, about 56 mm long. */
function Fitting(props: { readonly x: number; readonly y: number; readonly size: number }) {
  const turns = 6;
  const top = Array.from(
    { length: turns },
    (_, i) => `L${8 + i * 4} -11.5L${10 + i * 4} -8.5`,
  ).join('');
  const bottom = Array.from({ length: turns }, (_, k) => turns - 1 - k)
    .map((i) => `L${10 + i * 4} 8.5L${8 + i * 4} 11.5`)
    .join('');
  return (
    <g class="part" transform={`translate(${props.x} ${props.y}) rotate(-14) scale(${props.size})`}>
      <path d="M-24 -9 H-8 V9 H-24 Z" />
      <path d="M-8 -16 H6 V16 H-8 Z M-8 -7 H6 M-8 7 H6" />
      <path d={`M6 -9${top}V8.5${bottom}L6 9Z`} />
    </g>
  );
}
