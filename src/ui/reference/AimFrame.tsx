import { Match, Show, Switch } from 'solid-js';
import { card } from '../../scale-card/geometry';
import { endChoice } from '../end/end-choice';
import { paperChoice, referenceChoice } from './reference-choice';
import './reference.css';

/** Where to bring what was chosen, over the live view: a card at a distance that a phone focuses at and that
 *  keeps parallax small, with room for the fitting beside it; a sheet as large as it goes. */
export function AimFrame() {
  const sheet = () => (paperChoice() === 'a4' ? { w: 297, h: 210 } : { w: 279.4, h: 215.9 });
  return (
    <svg class="aim-frame" viewBox="-200 -150 400 300" aria-hidden="true">
      <Switch>
        <Match when={referenceChoice() === 'card'}>
          <rect x={-176} y={-130} width="352" height="260" />
          <rect
            class="faint"
            x={-176 + 352 * (card.window.xMm / card.widthMm)}
            y={-130 + 260 * (card.window.yMm / card.heightMm)}
            width={352 * (card.window.widthMm / card.widthMm)}
            height={260 * (card.window.heightMm / card.heightMm)}
          />
          {/* A female end has two ways to lie or stand in it. */}
          <Show when={endChoice() !== 'female'}>
            <FittingOutline x={0} y={0} size={2.2} />
          </Show>
        </Match>
        <Match when={referenceChoice() === 'id1'}>
          <rect x="-150" y="-95" width="190" height="119.8" rx="7" />
          <FittingOutline x={74} y={84} size={2.2} />
        </Match>
        <Match when={referenceChoice() === 'sheet'}>
          <rect
            x={(-sheet().w * 130) / sheet().h}
            y="-130"
            width={(sheet().w * 260) / sheet().h}
            height="260"
          />
          <FittingOutline x={0} y={0} size={1.3} />
        </Match>
        <Match when={true}>
          <path d="M-180 -40 H180 M-180 -80 H180" />
          <FittingOutline x={0} y={42} size={2.4} />
        </Match>
      </Switch>
    </svg>
  );
}

/** A hex with a thread on its right, across the view, about 46 units long at size 1. */
function FittingOutline(props: { readonly x: number; readonly y: number; readonly size: number }) {
  const crests = Array.from({ length: 5 }, () => 'l2 -2l2 2').join('');
  const back = Array.from({ length: 5 }, () => 'l-2 2l-2 -2').join('');
  return (
    <g transform={`translate(${props.x} ${props.y}) scale(${props.size})`}>
      <path d={`M-24 -8H-10V-14H2V-10${crests}V10${back}V14H-10V8H-24Z`} />
    </g>
  );
}
