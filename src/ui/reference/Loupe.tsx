import { createMemo, onCleanup } from 'solid-js';
import type { PhotoPoint } from '../../journey/overlay';
import type { ShownPart } from '../inspection/view-box';
import { loupePlace } from './loupe-place';
import './reference.css';

export interface LoupePhoto {
  readonly photo: Blob;
  /** The upright photo's size that points are given in. */
  readonly width: number;
  readonly height: number;
}

const enlarged = 3;
const radius = 58;
/** From the mark, clear of the finger that holds it. */
const offset = 110;

/** The photo about a mark, enlarged, beside it; photo frame, drawn inside the viewer's svg. */
export function Loupe(props: {
  readonly of: LoupePhoto;
  readonly at: PhotoPoint;
  readonly view: ShownPart;
}) {
  const url = URL.createObjectURL(props.of.photo);
  onCleanup(() => URL.revokeObjectURL(url));
  const id = `loupe-${Math.round(performance.now() * 1000)}`;
  const s = () => props.view.scale();
  const place = createMemo(() =>
    loupePlace(props.at, props.view.box(), { radius: radius * s(), offset: offset * s() }),
  );
  const x = () => place()[0];
  const y = () => place()[1];
  return (
    <g class="loupe" pointer-events="none">
      <clipPath id={id}>
        <circle cx={x()} cy={y()} r={radius * s()} />
      </clipPath>
      <g clip-path={`url(#${id})`}>
        <image
          href={url}
          width={props.of.width}
          height={props.of.height}
          preserveAspectRatio="none"
          transform={`translate(${x()} ${y()}) scale(${enlarged}) translate(${-props.at[0]} ${-props.at[1]})`}
        />
      </g>
      <circle class="loupe-rim" cx={x()} cy={y()} r={radius * s()} />
      <path
        class="loupe-cross"
        d={`M${x() - 14 * s()} ${y()}h${28 * s()}M${x()} ${y() - 14 * s()}v${28 * s()}`}
      />
    </g>
  );
}
