import { createSignal, For, Show } from 'solid-js';
import type { PhotoPoint } from '../../journey/overlay';
import type { History } from '../inspection/history';
import type { ShownPart } from '../inspection/view-box';
import { Loupe, type LoupePhoto } from './Loupe';
import { makeMark } from './make-mark';
import '../inspection/help-panel.css';

/** From the ring inwards, with what is marked left open to view. */
function hairs([x, y]: PhotoPoint, scale: number): string {
  const [from, to] = [12 * scale, 4 * scale];
  return `M${x - from} ${y}H${x - to}M${x + to} ${y}H${x + from}M${x} ${y - from}V${y - to}M${x} ${y + to}V${y + from}`;
}

/** Marks to drag on the photo, by pointer or by arrow keys, with the photo enlarged about the one held.
 *  `T` is what they stand in, and what undo goes back in. */
export function HandMarks<T, K extends string | number>(props: {
  readonly history: History<T>;
  readonly keys: readonly K[];
  readonly at: (key: K) => PhotoPoint;
  readonly moved: (key: K, to: PhotoPoint) => T;
  readonly label: (key: K) => string;
  readonly attribute: 'data-handle' | 'data-corner';
  readonly of: LoupePhoto;
  readonly view: ShownPart;
}) {
  const [held, setHeld] = createSignal<K | null>(null);
  return (
    <>
      <For each={props.keys}>
        {(key) => {
          const at = () => props.at(key);
          const mark = makeMark({
            at,
            toPhoto: (event) => props.view.toPhoto(event),
            move: (to, begins) => {
              const next = props.moved(key, to);
              if (begins) props.history.push(next);
              else props.history.slide(next);
            },
            held: (now) => setHeld((before) => (now ? key : before === key ? null : before)),
          });
          return (
            // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a point moved by arrow keys has no better role
            <g
              class="help-handle"
              role="application"
              tabIndex={0}
              aria-label={props.label(key)}
              {...{ [props.attribute]: key }}
              {...mark}
            >
              <circle class="reach" cx={at()[0]} cy={at()[1]} r={26 * props.view.scale()} />
              <circle class="ring" cx={at()[0]} cy={at()[1]} r={12 * props.view.scale()} />
              <path class="hairs" d={hairs(at(), props.view.scale())} />
              <text
                x={at()[0] - 19 * props.view.scale()}
                y={at()[1] - 15 * props.view.scale()}
                font-size={String(15 * props.view.scale())}
              >
                {String(key).toUpperCase()}
              </text>
            </g>
          );
        }}
      </For>
      <Show when={held() !== null}>
        <Loupe of={props.of} at={props.at(held()!)} view={props.view} />
      </Show>
    </>
  );
}
