import { createMemo, For } from 'solid-js';
import type { CrestMark, CrestProfile } from '../../journey/overlay';
import { number } from '../language/format';
import { t } from '../language/language';
import './profile-plot.css';

const width = 640;
const bandHeight = 104;
const gap = 44;
const left = 52;
const right = 12;
const top = 22;
const height = top + 2 * bandHeight + gap + 34;

type Side = 'left' | 'right';

/** The section as it was seen: left side above the axis, right side mirrored below it.
 *  The bore between is left out, as a drawing breaks a long part. */
export function ProfilePlot(props: {
  readonly profile: CrestProfile;
  readonly crests: readonly CrestMark[];
  readonly crest: number | null;
  readonly onCrest: (crest: number | null) => void;
  readonly turns: number;
}) {
  const range = createMemo(() => {
    const { axialMm, leftMm, rightMm, leftFitMm, rightFitMm } = props.profile;
    const radii = [...leftMm, ...rightMm, ...leftFitMm, ...rightFitMm].filter(
      (r): r is number => r !== null && Number.isFinite(r),
    );
    const sorted = radii.sort((a, b) => a - b);
    // A stray edge must not flatten the rest; the plot is cut at the outermost per mille.
    const low = sorted[Math.floor(sorted.length * 0.002)] ?? 0;
    const high = sorted[Math.ceil(sorted.length * 0.998) - 1] ?? 1;
    const pad = Math.max(0.02, (high - low) * 0.12);
    return {
      x0: axialMm[0] ?? 0,
      x1: axialMm.at(-1) ?? 1,
      r0: low - pad,
      r1: high + pad,
    };
  });
  const x = (mm: number) => {
    const { x0, x1 } = range();
    return left + ((mm - x0) / (x1 - x0 || 1)) * (width - left - right);
  };
  const y = (side: Side, mm: number) => {
    const { r0, r1 } = range();
    const share = Math.min(1, Math.max(0, (mm - r0) / (r1 - r0)));
    return side === 'left'
      ? top + bandHeight * (1 - share)
      : top + bandHeight + gap + bandHeight * share;
  };
  const trace = (side: Side, radii: readonly (number | null)[]) => {
    let pen = 'M';
    let d = '';
    for (const [i, r] of radii.entries()) {
      if (r === null || !Number.isFinite(r)) pen = 'M';
      else {
        d += `${pen}${x(props.profile.axialMm[i]).toFixed(1)} ${y(side, r).toFixed(1)}`;
        pen = 'L';
      }
    }
    return d;
  };
  const radiusAt = (side: Side, mm: number) => {
    const fitted = side === 'left' ? props.profile.leftFitMm : props.profile.rightFitMm;
    const { axialMm } = props.profile;
    let best = 0;
    for (let i = 1; i < axialMm.length; i++)
      if (Math.abs(axialMm[i] - mm) < Math.abs(axialMm[best] - mm)) best = i;
    return fitted[best] ?? 0;
  };
  const ticks = () => {
    const { x0, x1 } = range();
    const step = [0.5, 1, 2, 5, 10].find((s) => (x1 - x0) / s <= 9) ?? 20;
    const found: number[] = [];
    for (let v = Math.ceil(x0 / step) * step; v <= x1 + 1e-9; v += step) found.push(v);
    return found;
  };
  const radiusTicks = () => {
    const { r0, r1 } = range();
    const step = [0.1, 0.2, 0.5, 1, 2].find((s) => (r1 - r0) / s <= 4) ?? 5;
    const found: number[] = [];
    for (let v = Math.ceil(r0 / step) * step; v <= r1 + 1e-9; v += step) found.push(v);
    return found;
  };
  const axisY = top + bandHeight + gap / 2;

  return (
    <figure class="profile-plot">
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={t().inspection.profileName(number(props.turns, 1))}
        onPointerLeave={() => props.onCrest(null)}
      >
        <For each={['left', 'right'] as const}>
          {(side) => (
            <g>
              <For each={radiusTicks()}>
                {(r) => (
                  <>
                    <path class="grid" d={`M${left} ${y(side, r)}H${width - right}`} />
                    <text class="tick" x={left - 6} y={y(side, r) + 4} text-anchor="end">
                      {number(r, 1)}
                    </text>
                  </>
                )}
              </For>
              <text class="band" x={left} y={side === 'left' ? 13 : height - 21}>
                {t().inspection.side[side]}
              </text>
              <path
                class="fit"
                d={trace(
                  side,
                  side === 'left' ? props.profile.leftFitMm : props.profile.rightFitMm,
                )}
              />
              <path
                class="seen"
                d={trace(side, side === 'left' ? props.profile.leftMm : props.profile.rightMm)}
              />
            </g>
          )}
        </For>
        <path class="axis" d={`M${left - 20} ${axisY}H${width}`} />
        <For each={ticks()}>
          {(mm) => (
            <>
              <path class="grid" d={`M${x(mm)} ${axisY - 4}v8`} />
              <text class="tick" x={x(mm)} y={axisY + 17} text-anchor="middle">
                {number(mm, mm % 1 ? 1 : 0)}
              </text>
            </>
          )}
        </For>
        <text class="tick" x={width - right} y={axisY - 7} text-anchor="end">
          {t().inspection.alongAxis}
        </text>
        <For each={props.crests}>
          {(mark, index) => (
            // biome-ignore lint/a11y/noStaticElementInteractions: the slider below is the way by keyboard
            <g
              class="crest"
              classList={{ chosen: props.crest === index() }}
              onPointerEnter={() => props.onCrest(index())}
              onClick={() => props.onCrest(index())}
            >
              <path
                class="reach"
                d={`M${x(mark.axialMm)} ${mark.side === 'left' ? top : top + bandHeight + gap}v${bandHeight}`}
              />
              <circle
                cx={x(mark.axialMm)}
                cy={y(mark.side, radiusAt(mark.side, mark.axialMm))}
                r={props.crest === index() ? 6 : 3.2}
              />
            </g>
          )}
        </For>
      </svg>
      <figcaption class="small soft row">
        <span class="key key-seen">{t().inspection.seen}</span>
        <span class="key key-fit">{t().inspection.fitted}</span>
        <span>{t().inspection.profileText}</span>
      </figcaption>
      <CrestStepper crests={props.crests} crest={props.crest} onCrest={props.onCrest} />
    </figure>
  );
}

/** The same link between plot and photo by keyboard: one slider over the crests. */
function CrestStepper(props: {
  readonly crests: readonly CrestMark[];
  readonly crest: number | null;
  readonly onCrest: (crest: number | null) => void;
}) {
  const order = createMemo(() =>
    props.crests
      .map((_, index) => index)
      .sort((a, b) => props.crests[a].axialMm - props.crests[b].axialMm),
  );
  const say = (place: number) => {
    const mark = props.crests[order()[place]];
    if (!mark) return '';
    return t().inspection.crest(place + 1, t().inspection.side[mark.side], number(mark.axialMm, 2));
  };
  const place = () => (props.crest === null ? -1 : order().indexOf(props.crest));
  return (
    <label class="crest-stepper">
      <span class="small">{t().inspection.crestList}</span>
      <input
        type="range"
        min={0}
        max={Math.max(0, props.crests.length - 1)}
        step={1}
        value={Math.max(0, place())}
        aria-valuetext={say(Math.max(0, place()))}
        onInput={(event) => props.onCrest(order()[event.currentTarget.valueAsNumber] ?? null)}
      />
      <span class="small soft crest-said">{place() >= 0 ? say(place()) : ''}</span>
    </label>
  );
}
