import { createMemo, For } from 'solid-js';
import type { CrestMark, CrestProfile } from '../../journey/overlay';
import { ascending, nearestRank, quantile } from '../../quantity/order';
import { number } from '../language/format';
import { t } from '../language/language';
import { SidesChart } from '../widgets/SidesChart';
import { type PlotSide, type SidesPlot, type SidesRange, sidesPlot } from '../widgets/sides-plot';
import './profile-plot.css';

const layout = { bandHeight: 104, gap: 44, left: 52, right: 12, top: 22, bottom: 34 };

interface CrestChoice {
  readonly crests: readonly CrestMark[];
  readonly crest: number | null;
  readonly onCrest: (crest: number | null) => void;
}

/** The section as it was seen, with the fitted period. */
export function ProfilePlot(
  props: { readonly profile: CrestProfile; readonly turns: number } & CrestChoice,
) {
  const plot = sidesPlot(
    layout,
    createMemo(() => rangeOf(props.profile)),
  );
  return (
    <figure class="profile-plot">
      <SidesChart
        plot={plot}
        name={t().inspection.profileName(number(props.turns, 1))}
        radii={{ steps: [0.1, 0.2, 0.5, 1, 2, 5], digits: 1 }}
        axis={{ steps: [0.5, 1, 2, 5, 10, 20], name: t().inspection.alongAxis }}
        onLeave={() => props.onCrest(null)}
        over={(side) => (
          <>
            <text class="band" x={plot.left} y={side === 'left' ? 13 : plot.height - 21}>
              {t().inspection.side[side]}
            </text>
            <Trace
              class="fit"
              plot={plot}
              side={side}
              axialMm={props.profile.axialMm}
              radiiMm={fitted(props.profile, side)}
            />
            <Trace
              class="seen"
              plot={plot}
              side={side}
              axialMm={props.profile.axialMm}
              radiiMm={side === 'left' ? props.profile.leftMm : props.profile.rightMm}
            />
          </>
        )}
      >
        <For each={props.crests}>
          {(mark, index) => (
            <CrestPoint
              plot={plot}
              mark={mark}
              radiusMm={radiusAt(props.profile, mark)}
              chosen={props.crest === index()}
              onChoose={() => props.onCrest(index())}
            />
          )}
        </For>
      </SidesChart>
      <figcaption class="small soft row">
        <span class="key key-seen">{t().inspection.seen}</span>
        <span class="key key-fit">{t().inspection.fitted}</span>
        <span>{t().inspection.profileText}</span>
      </figcaption>
      <CrestStepper crests={props.crests} crest={props.crest} onCrest={props.onCrest} />
    </figure>
  );
}

/** A line through the radii, broken where there is none. */
function Trace(props: {
  readonly class: string;
  readonly plot: SidesPlot;
  readonly side: PlotSide;
  readonly axialMm: readonly number[];
  readonly radiiMm: readonly (number | null)[];
}) {
  const line = () => {
    const { x, y } = props.plot;
    let pen = 'M';
    let d = '';
    for (const [i, r] of props.radiiMm.entries()) {
      if (r === null || !Number.isFinite(r)) pen = 'M';
      else {
        d += `${pen}${x(props.axialMm[i]).toFixed(1)} ${y(props.side, r).toFixed(1)}`;
        pen = 'L';
      }
    }
    return d;
  };
  return <path class={props.class} d={line()} />;
}

function CrestPoint(props: {
  readonly plot: SidesPlot;
  readonly mark: CrestMark;
  readonly radiusMm: number;
  readonly chosen: boolean;
  readonly onChoose: () => void;
}) {
  const { x, y, bandTop, bandHeight } = props.plot;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the slider below is the way by keyboard
    <g
      class="crest"
      classList={{ chosen: props.chosen }}
      onPointerEnter={props.onChoose}
      onClick={props.onChoose}
    >
      <path
        class="reach"
        d={`M${x(props.mark.axialMm)} ${bandTop(props.mark.side)}v${bandHeight}`}
      />
      <circle
        cx={x(props.mark.axialMm)}
        cy={y(props.mark.side, props.radiusMm)}
        r={props.chosen ? 6 : 3.2}
      />
    </g>
  );
}

/** A stray edge must not flatten the rest: the plot is cut at the outermost per mille. */
function rangeOf({ axialMm, leftMm, rightMm, leftFitMm, rightFitMm }: CrestProfile): SidesRange {
  const seen = [...leftMm, ...rightMm, ...leftFitMm, ...rightFitMm].filter(
    (r): r is number => r !== null && Number.isFinite(r),
  );
  const sorted = ascending(seen);
  const low = quantile(sorted, 0.002) ?? 0;
  const high = nearestRank(sorted, 0.998) ?? 1;
  const pad = Math.max(0.02, (high - low) * 0.12);
  return { x0: axialMm[0] ?? 0, x1: axialMm.at(-1) ?? 1, r0: low - pad, r1: high + pad };
}

const fitted = (profile: CrestProfile, side: PlotSide) =>
  side === 'left' ? profile.leftFitMm : profile.rightFitMm;

/** The fitted radius that lies nearest along the axis. */
function radiusAt(profile: CrestProfile, { side, axialMm: mm }: CrestMark): number {
  const { axialMm } = profile;
  let best = 0;
  for (let i = 1; i < axialMm.length; i++)
    if (Math.abs(axialMm[i] - mm) < Math.abs(axialMm[best] - mm)) best = i;
  return fitted(profile, side)[best] ?? 0;
}

/** The same link between plot and photo by keyboard: one slider over the crests. */
function CrestStepper(props: CrestChoice) {
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
