import { For, type JSX } from 'solid-js';
import { t } from '../language/language';
import '../widgets/aim-picture.css';
import './end.css';

const ways = ['standing', 'lying'] as const;
const pictures: Readonly<
  Record<(typeof ways)[number], { readonly of: () => JSX.Element; readonly box: string }>
> = {
  standing: { of: Standing, box: '28 0 216 172' },
  lying: { of: Lying, box: '28 44 216 128' },
};

/** The two ways in which a photo shows the far wall of a bore, from the side, drawn at 35°. */
export function WaysToShow() {
  return (
    <ul class="ways-to-show">
      <For each={ways}>
        {(way) => (
          <li>
            <svg class="aim-picture" viewBox={pictures[way].box} aria-hidden="true">
              {pictures[way].of()}
            </svg>
            <p class="small">{t().end.ways[way]}</p>
          </li>
        )}
      </For>
    </ul>
  );
}

/** Cut open: mouth up on the card, the camera 35° from straight above. */
function Standing() {
  const down = 'l3 3l-3 3'.repeat(5);
  const up = 'l-3 -3l3 -3'.repeat(5);
  return (
    <>
      <path class="ground" d="M34 166H236" />
      <path class="lying" d="M78 162H182V166H78Z" />
      <path class="lying" d={`M112 112H119${down}V148H141V142${up}H148V162H112Z`} />
      <path class="sight" d="M130 112V14M120 126.3L190.2 26" />
      <path class="arc" d="M130 52A60 60 0 0 1 164.4 62.9" />
      <Phone at="190.2 26" turned={35} />
      <text x="122" y="56" text-anchor="end">
        30–40°
      </text>
    </>
  );
}

/** Cut open: on a flat, mouth towards the camera, which is 35° above the table. */
function Lying() {
  const inwards = 'l-3 3l-3 -3'.repeat(5);
  const outwards = 'l3 -3l3 3'.repeat(5);
  return (
    <>
      <path class="ground" d="M34 166H236" />
      <path class="lying" d="M36 162H150V166H36Z" />
      <path class="lying" d="M42 137H70V151H42Z" />
      <path class="lying" d={`M120 126V133${inwards}H82V155H90${outwards}V162H70V126Z`} />
      <path class="sight" d="M120 144H226M105 154L206 83.8" />
      <path class="arc" d="M180 144A60 60 0 0 0 169.1 109.6" />
      <Phone at="206 83.8" turned={55} />
      <text x="185" y="133">
        30–40°
      </text>
    </>
  );
}

function Phone(props: { readonly at: string; readonly turned: number }) {
  return (
    <g transform={`translate(${props.at}) rotate(${props.turned})`}>
      <rect class="phone" x="-34" y="-4" width="68" height="8" rx="3" />
      <circle class="lens" cx="0" cy="5" r="3" />
    </g>
  );
}
