import { For, Show } from 'solid-js';
import type { WearAssessment } from '../../journey/wear/assess';
import type { Estimate } from '../../quantity/estimate';
import { number, plusMinus } from '../language/format';
import { t } from '../language/language';
import { neededWords, photoWords, verdictWords } from './wear-words';

/** Diameters over the crests against their class: what each is worth first, then what it says. */
export function CrestBlock(props: {
  readonly wear: WearAssessment;
  readonly flankAngleDeg: Estimate | null;
}) {
  const limits = () => props.wear.limits;
  const seen = () => props.wear.photo?.diameterMm ?? null;
  const flankWords = () =>
    props.flankAngleDeg
      ? t().wear.flank(plusMinus(props.flankAngleDeg, '°'), `${props.wear.thread.flankAngleDeg} °`)
      : t().wear.flankOpen;
  const decided = () => {
    const { crest, gauge, plane, photo } = props.wear;
    return crest ?? plane ?? (gauge ? photo?.verdict : null) ?? null;
  };
  return (
    <section class="stack tight" aria-labelledby="wear-crests-title">
      <h2 id="wear-crests-title">{t().wear.crests}</h2>
      <Show when={props.wear.gauge}>
        <p>{t().wear.taperNote}</p>
      </Show>
      <Show when={!props.wear.gauge && !limits()}>
        <p>{t().wear.noClass}</p>
      </Show>
      <Show when={limits()} keyed>
        {(of) => (
          <>
            <div
              class="wear-beforehand"
              classList={{ alert: props.wear.photo?.couldPass === false }}
            >
              <strong>{t().wear.beforehand}</strong>
              <p>{seen() ? photoWords(seen()!, of) : neededWords(of)}</p>
              <Show when={props.wear.photo?.couldPass === false}>
                <p>{t().wear.wouldDecide}</p>
              </Show>
            </div>
            <CrestScale wear={props.wear} />
          </>
        )}
      </Show>
      <Show when={!props.wear.gauge && decided()} keyed>
        {(verdict) => (
          <p class="wear-verdict" data-state={verdict.state}>
            {verdictWords(verdict)}
          </p>
        )}
      </Show>
      <Show
        when={
          decided()?.state === 'not-decidable' &&
          !props.wear.anotherPitch &&
          props.wear.photo?.couldPass !== false
        }
      >
        <p>{t().wear.wouldDecide}</p>
      </Show>
      <Show when={limits()} keyed>
        {({ pitchDiameter }) => (
          <p class="small soft">
            {t().wear.pitchDiameterOf(
              number(pitchDiameter.minMm, 3),
              number(pitchDiameter.maxMm, 3),
            )}
          </p>
        )}
      </Show>
      <Show when={props.wear.photo}>
        <p class="small soft">{flankWords()}</p>
      </Show>
      <p class="small soft">{t().wear.rule}</p>
    </section>
  );
}

const width = 640;
const left = 150;
const right = 64;
const rowHeight = 30;
const top = 30;

/** The class as a band, and every diameter that was measured with its interval. */
function CrestScale(props: { readonly wear: WearAssessment }) {
  const limits = () => props.wear.limits!;
  const rows = (): { name: string; mm: Estimate }[] => [
    ...(props.wear.photo?.diameterMm
      ? [{ name: t().wear.by.photo, mm: props.wear.photo.diameterMm }]
      : []),
    ...(props.wear.caliper?.places ?? []).map(({ place, diameterMm }) => ({
      name: t().wear.places[place],
      mm: diameterMm,
    })),
  ];
  const range = () => {
    const { minMm, maxMm } = limits().major;
    const ends = rows().flatMap(({ mm }) => [mm.value - 2 * mm.u, mm.value + 2 * mm.u]);
    const from = Math.min(minMm, ...ends);
    const to = Math.max(maxMm, ...ends);
    const pad = 0.06 * (to - from);
    return { from: from - pad, to: to + pad };
  };
  const x = (mm: number) => {
    const { from, to } = range();
    return left + ((mm - from) / (to - from)) * (width - left - right);
  };
  const height = () => top + rowHeight * Math.max(1, rows().length) + 8;
  const name = () =>
    t().wear.scale(
      limits().class,
      number(limits().major.minMm, 3),
      number(limits().major.maxMm, 3),
    );
  const said = () => [name(), ...rows().map((row) => `${row.name} ${plusMinus(row.mm, 'mm')}`)];
  return (
    <figure class="wear-plot">
      <figcaption class="small">{name()}</figcaption>
      <svg viewBox={`0 0 ${width} ${height()}`} role="img" aria-label={said().join('; ')}>
        <rect
          class="class-band"
          x={x(limits().major.minMm)}
          y={top - 4}
          width={x(limits().major.maxMm) - x(limits().major.minMm)}
          height={height() - top}
        />
        <For each={['minMm', 'maxMm'] as const}>
          {(key) => (
            <text
              class="tick"
              x={x(limits().major[key])}
              y={top - 11}
              text-anchor={key === 'minMm' ? 'end' : 'start'}
            >
              {number(limits().major[key], 2)}
            </text>
          )}
        </For>
        <For each={rows()}>
          {(row, index) => {
            const y = () => top + rowHeight * (index() + 0.5);
            return (
              <g>
                <text class="tick" x={left - 10} y={y() + 5} text-anchor="end">
                  {row.name}
                </text>
                <path
                  class="whisker"
                  d={`M${x(row.mm.value - 2 * row.mm.u)} ${y() - 6}v12m0-6H${x(row.mm.value + 2 * row.mm.u)}m0-6v12`}
                />
                <circle class="value" cx={x(row.mm.value)} cy={y()} r={5} />
              </g>
            );
          }}
        </For>
      </svg>
    </figure>
  );
}
