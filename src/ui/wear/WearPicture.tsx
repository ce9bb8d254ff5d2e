import { Match, Switch } from 'solid-js';
import type { WearQuestion } from '../../journey/wear/wear-answers';
import { Male } from '../identification/EndDrawing';
import '../identification/reading-picture.css';

/** Where to look or gauge: own line drawings; the accent is what to look at, or the tool. Decorative: the words
 *  say the same. */
export function WearPicture(props: { readonly kind: WearQuestion | 'caliper' | 'ring' }) {
  return (
    <svg class="reading-picture wear-picture" viewBox="0 0 240 130" aria-hidden="true">
      <Male x={70} />
      <Switch>
        <Match when={props.kind === 'seal'}>
          <circle class="lens" cx="72" cy="72" r="34" />
          <path class="tool-line lens-grip" d="M48 97 L20 122" />
          <path class="tool-line" d="M66 60 l8 6 -5 5 9 7" />
        </Match>
        <Match when={props.kind === 'firstTurns'}>
          <circle class="lens" cx="100" cy="42" r="24" />
          <path class="tool-line lens-grip" d="M82 24 L66 8" />
          <path class="tool-line" d="M86 42 l4 -1 4 6 M100 40 q6 -2 5 5" />
        </Match>
        <Match when={props.kind === 'byHand'}>
          <path class="tool" d="M96 14 H172 V44 H96 Z M96 130 V100 H172 V130 Z" />
          <path class="arrow" d="M84 22 a60 60 0 0 0 -8 14 M84 22 l-8 2 M84 22 l1 8" />
          <path class="arrow" d="M184 22 a60 60 0 0 1 8 14 M192 36 l-7 -3 M192 36 l2 -8" />
        </Match>
        <Match when={props.kind === 'goRing'}>
          <path class="tool" d="M80 12 H186 V44 H80 Z M80 132 V100 H186 V132 Z" />
          <path class="arrow" d="M92 26 H172 M172 26 l-8 -5 M172 26 l-8 5" />
        </Match>
        <Match when={props.kind === 'notGoRing'}>
          <path class="tool" d="M20 12 H108 V44 H20 Z M20 132 V100 H108 V132 Z" />
          <path class="arrow" d="M34 26 H96 M96 26 l-8 -5 M96 26 l-8 5 M102 16 V36" />
        </Match>
        <Match when={props.kind === 'caliper'}>
          <path
            class="arrow"
            d="M92 30 V114 M92 38 l-4 -8 M92 38 l4 -8 M92 106 l-4 8 M92 106 l4 8 M137 22 V122 M137 38 l-4 -8 M137 38 l4 -8 M137 106 l-4 8 M137 106 l4 8 M182 30 V114 M182 38 l-4 -8 M182 38 l4 -8 M182 106 l-4 8 M182 106 l4 8"
          />
        </Match>
        <Match when={props.kind === 'ring'}>
          <path class="tool" d="M84 12 H150 V46 H84 Z M84 132 V98 H150 V132 Z" />
          <path class="sight" d="M84 4 V130 M70 52 V130" />
          <path class="arrow" d="M62 124 H70 M92 124 H84" />
        </Match>
      </Switch>
    </svg>
  );
}
