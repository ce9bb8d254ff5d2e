import { createMemo, For, Show } from 'solid-js';
import type { WearAssessment } from '../../journey/wear/assess';
import { t } from '../language/language';
import { overlapShape, type Point } from './overlap-geometry';
import { overlapWords } from './wear-words';

const path = (points: readonly Point[]) =>
  `M${points.map(([x, r]) => `${x.toFixed(4)} ${(-r).toFixed(4)}`).join('L')}`;

/** How much of the crest still bears, in words and in half section. */
export function OverlapBlock(props: { readonly wear: WearAssessment }) {
  return (
    <Show when={props.wear.overlap} keyed>
      {(overlap) => (
        <section class="stack tight" aria-labelledby="wear-bears-title">
          <h2 id="wear-bears-title">{t().wear.bears}</h2>
          <p class="wear-overlap">{overlapWords(overlap)}</p>
          <OverlapDrawing wear={props.wear} crestDiameterMm={overlap.crestDiameterMm} />
          <p class="small soft">{t().wear.overlapNote}</p>
        </section>
      )}
    </Show>
  );
}

function OverlapDrawing(props: {
  readonly wear: WearAssessment;
  readonly crestDiameterMm: number;
}) {
  const shape = createMemo(() =>
    overlapShape(props.wear.thread, props.crestDiameterMm, props.wear.limits!.major.minMm),
  );
  const id = `bears-${Math.random().toString(36).slice(2)}`;
  const box = () => {
    const { lengthMm, fromR, toR } = shape();
    return `0 ${-toR} ${lengthMm} ${toR - fromR}`;
  };
  const hatch = (lean: 1 | -1) => {
    const { lengthMm, fromR, toR } = shape();
    const tall = toR - fromR;
    const lines: string[] = [];
    for (let x = -tall; x < lengthMm + tall; x += lengthMm / 40)
      lines.push(`M${x} ${lean > 0 ? -fromR : -toR}l${tall} ${-lean * tall}`);
    return lines.join('');
  };
  return (
    <figure class="overlap-drawing">
      <svg
        viewBox={box()}
        role="img"
        aria-label={t().wear.overlapName(props.wear.thread.designation)}
      >
        <clipPath id={`${id}-part`}>
          <path d={`${path(shape().part)}Z`} />
        </clipPath>
        <clipPath id={`${id}-mate`}>
          <path d={`${path(shape().mate)}Z`} />
        </clipPath>
        <path class="hatch" d={hatch(1)} clip-path={`url(#${id}-part)`} />
        <path class="hatch" d={hatch(-1)} clip-path={`url(#${id}-mate)`} />
        <path class="edge" d={path(shape().part.slice(1, -1))} />
        <path class="edge" d={path(shape().mate.slice(1, -1))} />
        <For each={shape().limit}>{(line) => <path class="limit" d={path(line)} />}</For>
        <For each={shape().bearing}>{(line) => <path class="bears" d={path(line)} />}</For>
      </svg>
      <figcaption class="small soft row">
        <span>↑ {t().wear.overlapKeys.internal}</span>
        <span>↓ {t().wear.overlapKeys.external}</span>
        <span class="key key-limit">{t().wear.overlapKeys.limit}</span>
      </figcaption>
    </figure>
  );
}
