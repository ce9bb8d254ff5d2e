import { createMemo, For, Index, Show } from 'solid-js';
import type { SectionDimensions, SectionPoint } from './section';
import { sectionShape } from './section-geometry';
import './section-drawing.css';

/** NaN lifts the pen. */
function path(points: readonly SectionPoint[], sign = -1): string {
  let d = '';
  let pen = 'M';
  for (const [x, r] of points) {
    if (Number.isNaN(x)) pen = 'M';
    else {
      d += `${pen}${x.toFixed(3)} ${(sign * r).toFixed(3)}`;
      pen = 'L';
    }
  }
  return d;
}

/** Upper half cut, lower half from outside, free end to the left. All drawings of one list
 *  share `widthMm`, so their sizes compare. */
export function SectionDrawing(props: {
  readonly dimensions: SectionDimensions;
  readonly name: string;
  readonly widthMm?: number;
  /** The words beside it say the same. */
  readonly decorative?: boolean;
}) {
  const shape = createMemo(() => sectionShape(props.dimensions));
  const width = () => Math.max(props.widthMm ?? 0, shape().lengthMm * 1.08);
  const hatch = createMemo(() => {
    const { lengthMm, outerMm } = shape();
    const step = width() / 42;
    const lines: string[] = [];
    for (let x = -outerMm; x < lengthMm + outerMm; x += step)
      lines.push(`M${x} 0l${outerMm} ${-outerMm}`);
    return lines.join('');
  });
  const counterHatch = () => hatch().replaceAll(/l([\d.]+) /g, 'l-$1 ');
  const clip = `cut-${Math.random().toString(36).slice(2)}`;
  const ridges = createMemo(() => {
    const { pitchMm, majorMm } = props.dimensions;
    const { threadFromMm, threadToMm, minorMm } = shape();
    const lines: { d: string; root: boolean }[] = [];
    for (let x = threadFromMm + 0.4375 * pitchMm; x < threadToMm - 0.1 * pitchMm; x += pitchMm) {
      lines.push({ d: `M${x} ${majorMm / 2}L${x - pitchMm / 4} 0`, root: false });
      if (x + pitchMm / 2 < threadToMm)
        lines.push({ d: `M${x + pitchMm / 2} ${minorMm / 2}L${x + pitchMm / 4} 0`, root: true });
    }
    return lines;
  });
  /** The edge between two flats of the hex, in the outside view. */
  const hexEdge = () => {
    const { lengthMm, outerMm, threadToMm, insert, outside } = shape();
    if (props.dimensions.end === 'male')
      return `M${lengthMm} ${outerMm * 0.5}H${threadToMm + props.dimensions.pitchMm}`;
    return `M0 ${outerMm * 0.5}H${insert.length > 0 ? outside[2][0] : lengthMm}`;
  };
  const box = () => {
    const { outerMm } = shape();
    const pad = width() * 0.02;
    return `${-pad * 2} ${-outerMm - pad} ${width() + pad * 2} ${2 * (outerMm + pad)}`;
  };
  return (
    <svg
      class="section-drawing"
      viewBox={box()}
      role={props.decorative ? undefined : 'img'}
      aria-label={props.decorative ? undefined : props.name}
      aria-hidden={props.decorative ? 'true' : undefined}
    >
      <clipPath id={clip}>
        <path d={`${path(shape().cut)}Z`} />
      </clipPath>
      <path class="hatch" d={hatch()} clip-path={`url(#${clip})`} />
      <path class="edge" d={`${path(shape().cut)}Z`} />
      <Show when={shape().insert.length > 0}>
        <clipPath id={`${clip}-insert`}>
          <path d={`${path(shape().insert)}Z`} />
        </clipPath>
        <path class="hatch" d={counterHatch()} clip-path={`url(#${clip}-insert)`} />
        <path class="edge" d={`${path(shape().insert)}Z`} />
      </Show>
      <path class="edge" d={path(shape().outside, 1)} />
      <Index each={ridges()}>
        {(ridge) => <path class={ridge().root ? 'thin' : 'edge thin-edge'} d={ridge().d} />}
      </Index>
      <path class="thin" d={hexEdge()} />
      <path
        class="thin"
        d={`M0 0V${-shape().mouthMm / 2}M${shape().lengthMm} 0V${-shape().boreMm / 2}`}
      />
      <path class="axis" d={`M${-width() * 0.03} 0H${shape().lengthMm * 1.05}`} />
      <path class="seal" d={path(shape().seal)} />
      <For each={shape().rings}>
        {(ring) => <circle class="ring" cx={ring.x} cy={-ring.r} r={ring.radius} />}
      </For>
    </svg>
  );
}
