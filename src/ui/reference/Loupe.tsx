import { onCleanup } from 'solid-js';
import type { PhotoPoint } from '../../journey/overlay';
import './reference.css';

export interface LoupePhoto {
  readonly photo: Blob;
  /** The upright photo's size that points are given in. */
  readonly width: number;
  readonly height: number;
}

const enlarged = 3;
const radius = 58;
/** Above the finger that holds the mark. */
const offset = 110;

/** The photo about a mark, enlarged, above it, or below where there is no room; photo frame, drawn inside the
 *  viewer's svg. */
export function Loupe(props: {
  readonly of: LoupePhoto;
  readonly at: PhotoPoint;
  /** Photo px per viewer px. */
  readonly scale: number;
}) {
  const url = URL.createObjectURL(props.of.photo);
  onCleanup(() => URL.revokeObjectURL(url));
  const id = `loupe-${Math.round(performance.now() * 1000)}`;
  const s = () => props.scale;
  const x = () => Math.min(props.of.width - radius * s(), Math.max(radius * s(), props.at[0]));
  const y = () =>
    props.at[1] - offset * s() > radius * s()
      ? props.at[1] - offset * s()
      : props.at[1] + offset * s();
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
