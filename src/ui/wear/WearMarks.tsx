import { For } from 'solid-js';
import type { CrestMark } from '../../journey/overlay';
import type { CrestHeight } from '../../journey/wear/crest-heights';
import { type CrestState, crestState } from '../../journey/wear/crest-state';
import type { ClassLimits } from '../../standards/limits/class-limits';

export interface MarkedCrest {
  readonly crest: CrestHeight;
  readonly state: Exclude<CrestState, 'as-others'>;
  readonly at: CrestMark['at'];
}

/** Crests that stand out, at their places on the photo. The drawing and the heights were made from one fit, so
 *  the nearest drawn crest of the same side is the same one. */
export function markedCrests(
  crests: readonly CrestHeight[],
  drawn: readonly CrestMark[],
  limits: ClassLimits | null,
): MarkedCrest[] {
  return crests.flatMap((crest) => {
    const state = crestState(crest, limits);
    if (state === 'as-others') return [];
    const away = (mark: CrestMark) => Math.abs(mark.axialMm - crest.atMm);
    const mark = drawn
      .filter(({ side }) => side === crest.side)
      .reduce<CrestMark | null>((best, m) => (best && away(best) <= away(m) ? best : m), null);
    return mark ? [{ crest, state, at: mark.at }] : [];
  });
}

/** In photo px: a ring for a crest lower than the rest, a square for one below its class. */
export function WearMarks(props: {
  readonly marks: readonly MarkedCrest[];
  readonly scale: number;
}) {
  return (
    <g class="wear-marks">
      <For each={props.marks}>
        {({ state, at: [x, y], crest }) => {
          const r = () => 9 * props.scale;
          const d = () =>
            state === 'short'
              ? `M${x - r()} ${y}a${r()} ${r()} 0 1 0 ${2 * r()} 0a${r()} ${r()} 0 1 0 ${-2 * r()} 0`
              : `M${x - r()} ${y - r()}h${2 * r()}v${2 * r()}h${-2 * r()}Z`;
          const outwards = crest.side === 'left' ? -1 : 1;
          return (
            <g data-state={state}>
              <path class="casing" d={d()} />
              <path d={d()} />
              <text
                x={x}
                y={y + outwards * 16 * props.scale + 4 * props.scale}
                font-size={String(13 * props.scale)}
                text-anchor="middle"
              >
                {crest.turn}
              </text>
            </g>
          );
        }}
      </For>
    </g>
  );
}
