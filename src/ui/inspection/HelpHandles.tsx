import { createSignal, For, Show } from 'solid-js';
import type { PhotoPoint } from '../../journey/overlay';
import { t } from '../language/language';
import { Loupe, type LoupePhoto } from '../reference/Loupe';
import { makeMark } from '../reference/make-mark';
import type { Hand } from './HelpPanel';
import type { History } from './history';
import './help-panel.css';

/** Two ends to drag on the photo, by pointer or by arrow keys (1 px, with Shift 10 px). */
export function HelpHandles(props: {
  readonly history: History<Hand>;
  readonly scale: number;
  readonly toPhoto: (event: PointerEvent) => PhotoPoint;
  readonly of: LoupePhoto;
}) {
  const hand = () => props.history.now();
  const [held, setHeld] = createSignal<'a' | 'b' | null>(null);
  const label = (end: 'a' | 'b') =>
    hand().mode === 'axis'
      ? end === 'a'
        ? t().inspection.handleA
        : t().inspection.handleB
      : end === 'a'
        ? t().inspection.ruleA
        : t().inspection.ruleB;
  return (
    <>
      <path class="help-line" d={`M${hand().a[0]} ${hand().a[1]}L${hand().b[0]} ${hand().b[1]}`} />
      <For each={['a', 'b'] as const}>
        {(end) => {
          const at = () => hand()[end];
          const mark = makeMark({
            at,
            toPhoto: (event) => props.toPhoto(event),
            move: (to, begins) => {
              const next = { ...hand(), [end]: to };
              if (begins) props.history.push(next);
              else props.history.slide(next);
            },
            held: (now) => setHeld((before) => (now ? end : before === end ? null : before)),
          });
          return (
            // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a point moved by arrow keys has no better role
            <g
              class="help-handle"
              data-handle={end}
              role="application"
              tabIndex={0}
              aria-label={label(end)}
              {...mark}
            >
              <circle class="reach" cx={at()[0]} cy={at()[1]} r={26 * props.scale} />
              <circle class="ring" cx={at()[0]} cy={at()[1]} r={12 * props.scale} />
              <text x={at()[0]} y={at()[1]} font-size={String(13 * props.scale)}>
                {end.toUpperCase()}
              </text>
            </g>
          );
        }}
      </For>
      <Show when={held()}>
        {(end) => <Loupe of={props.of} at={hand()[end()]} scale={props.scale} />}
      </Show>
    </>
  );
}
