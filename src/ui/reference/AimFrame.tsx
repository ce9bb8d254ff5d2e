import { Match, Switch } from 'solid-js';
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
          <rect x="-176" y="-130" width="352" height="260" />
        </Match>
        <Match when={referenceChoice() === 'id1'}>
          <rect x="-150" y="-95" width="190" height="119.8" rx="7" />
          <circle cx="70" cy="75" r="44" />
        </Match>
        <Match when={referenceChoice() === 'sheet'}>
          <rect
            x={(-sheet().w * 130) / sheet().h}
            y="-130"
            width={(sheet().w * 260) / sheet().h}
            height="260"
          />
          <circle cx="0" cy="0" r="40" />
        </Match>
        <Match when={true}>
          <path d="M-180 -40 H180 M-180 -80 H180" />
          <circle cx="0" cy="35" r="50" />
        </Match>
      </Switch>
    </svg>
  );
}
