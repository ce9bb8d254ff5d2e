import { For } from 'solid-js';
import type { PhotoPoint } from '../../journey/overlay';
import { t } from '../language/language';
import type { Hand } from './HelpPanel';
import type { History } from './history';
import './help-panel.css';

/** Two ends to drag on the photo, by pointer or by arrow keys (1 px, with Shift 10 px). */
export function HelpHandles(props: {
  readonly history: History<Hand>;
  readonly scale: number;
  readonly toPhoto: (event: PointerEvent) => PhotoPoint;
}) {
  const hand = () => props.history.now();
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
          let begun = false;
          const at = () => hand()[end];
          const drag = (event: PointerEvent) => {
            const target = event.currentTarget as Element;
            if (!target.hasPointerCapture(event.pointerId)) return;
            const next = { ...hand(), [end]: props.toPhoto(event) };
            if (begun) props.history.slide(next);
            else props.history.push(next);
            begun = true;
          };
          const keys = (event: KeyboardEvent) => {
            const step = event.shiftKey ? 10 : 1;
            const by = {
              ArrowLeft: [-1, 0],
              ArrowRight: [1, 0],
              ArrowUp: [0, -1],
              ArrowDown: [0, 1],
            }[event.key];
            if (!by) return;
            event.preventDefault();
            event.stopPropagation();
            props.history.push({
              ...hand(),
              [end]: [at()[0] + by[0] * step, at()[1] + by[1] * step],
            });
          };
          return (
            // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a point moved by arrow keys has no better role
            <g
              class="help-handle"
              data-handle={end}
              role="application"
              tabIndex={0}
              aria-label={label(end)}
              onPointerDown={(event) => {
                begun = false;
                event.stopPropagation();
                event.currentTarget.setPointerCapture(event.pointerId);
              }}
              onPointerMove={drag}
              onKeyDown={keys}
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
    </>
  );
}
