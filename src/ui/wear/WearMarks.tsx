import { For } from 'solid-js';
import type { CrestMark, Overlay, PhotoPoint } from '../../journey/overlay';
import type { CrestHeight } from '../../journey/wear/crest-heights';
import { type CrestState, crestState } from '../../journey/wear/crest-state';
import type { ClassLimits } from '../../standards/limits/thread-class';

export interface MarkedCrest {
  readonly crest: CrestHeight;
  readonly state: Exclude<CrestState, 'as-others'>;
  readonly at: PhotoPoint;
  /** Unit vector away from the axis, where there is room for a number. */
  readonly away: PhotoPoint;
}

/** Crests that stand out, at their places on the photo. The drawing and the heights were made from one fit, so
 *  the nearest drawn crest of the same side is the same one. */
export function markedCrests(
  crests: readonly CrestHeight[],
  overlay: Overlay | null,
  limits: ClassLimits | null,
): MarkedCrest[] {
  return crests.flatMap((crest) => {
    const state = crestState(crest, limits);
    if (state === 'as-others') return [];
    const apart = (mark: CrestMark) => Math.abs(mark.axialMm - crest.atMm);
    const mark = (overlay?.crests ?? [])
      .filter(({ side }) => side === crest.side)
      .reduce<CrestMark | null>((best, m) => (best && apart(best) <= apart(m) ? best : m), null);
    return mark ? [{ crest, state, at: mark.at, away: awayFrom(overlay?.axis, mark.at) }] : [];
  });
}

function awayFrom(axis: Overlay['axis'] | undefined, [x, y]: PhotoPoint): PhotoPoint {
  if (!axis) return [0, -1];
  const [[ax, ay], [bx, by]] = axis;
  const long = Math.hypot(bx - ax, by - ay) || 1;
  const [nx, ny] = [-(by - ay) / long, (bx - ax) / long];
  const side = (x - ax) * nx + (y - ay) * ny < 0 ? -1 : 1;
  return [side * nx, side * ny];
}

/** In photo px: a ring for a crest lower than the rest, a square for one below its class. */
export function WearMarks(props: {
  readonly marks: readonly MarkedCrest[];
  readonly scale: number;
}) {
  return (
    <g class="wear-marks">
      <For each={props.marks}>
        {({ state, at: [x, y], away: [dx, dy], crest }) => {
          const r = () => 9 * props.scale;
          const d = () =>
            state === 'short'
              ? `M${x - r()} ${y}a${r()} ${r()} 0 1 0 ${2 * r()} 0a${r()} ${r()} 0 1 0 ${-2 * r()} 0`
              : `M${x - r()} ${y - r()}h${2 * r()}v${2 * r()}h${-2 * r()}Z`;
          return (
            <g data-state={state}>
              <path class="casing" d={d()} />
              <path d={d()} />
              <text
                x={x + 19 * props.scale * dx}
                y={y + props.scale * (19 * dy + 4.5)}
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
