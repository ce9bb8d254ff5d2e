import { Match, Switch } from 'solid-js';
import type { EndChoice } from './end-choice';
import './end.css';

/** A hex with its thread beside it, or one with its thread in the bore, seen at a slant; or both. */
export function EndPicture(props: { readonly of: EndChoice }) {
  return (
    <svg
      class="end-picture"
      viewBox={props.of === 'auto' ? '0 0 132 48' : '0 0 72 48'}
      aria-hidden="true"
    >
      <Switch fallback={<Male />}>
        <Match when={props.of === 'female'}>
          <Female />
        </Match>
        <Match when={props.of === 'auto'}>
          <Male />
          <g transform="translate(66 0)">
            <Female />
          </g>
        </Match>
      </Switch>
    </svg>
  );
}

function Male() {
  const crests = 'l3 -3l3 3'.repeat(5);
  const back = 'l-3 3l-3 -3'.repeat(5);
  return (
    <>
      <path d="M4 15H14V33H4Z" />
      <path d="M14 6H32V42H14ZM14 16H32M14 32H32" />
      <path d={`M32 15${crests}L67 18V30L62 33${back}Z`} />
    </>
  );
}

/** Its far wall shows three turns, each an ellipse of the mouth lower than the one before. */
function Female() {
  return (
    <>
      <path d="M14 17L25 6.5H47L58 17V33L47 43.5H25L14 33Z" />
      <path class="line" d="M14 17L25 27.5H47L58 17M25 27.5V43.5M47 27.5V43.5" />
      <ellipse class="bore" cx="36" cy="17" rx="14" ry="7.7" />
      <path
        class="line"
        d="M22.3 18.5A14 7.7 0 0 1 49.7 18.5M23.1 20A14 7.7 0 0 1 48.9 20M24.6 21.5A14 7.7 0 0 1 47.4 21.5"
      />
    </>
  );
}
