import { ReadingPicture } from '../identification/ReadingPicture';
import { CardSketch } from '../widgets/CardSketch';
import '../widgets/aim-picture.css';
import './start.css';

/** The card coming out of a printer. */
export function PrintPicture() {
  return (
    <div class="print-picture">
      <svg viewBox="0 0 184 30" aria-hidden="true">
        <path d="M18 2 H166 L176 16 V28 H8 V16 Z M8 16 H176 M24 22 H160" />
      </svg>
      <CardSketch shows="card" />
    </div>
  );
}

/** The telephone over the card, from the side: how far, and how little tilted. Drawn at 15°. */
export function AimPicture() {
  return (
    <svg class="aim-picture" viewBox="0 0 260 180" aria-hidden="true">
      <path class="ground" d="M20 166 H240" />
      <path
        class="lying"
        d="M78 162 H182 V166 H78 Z M112 150 H128 V162 H112 Z M128 152 l3 -2 l3 2 l3 -2 l3 2 l3 -2 l3 2 V162 H128 Z"
      />
      <path class="sight" d="M130 158 V22 M130 158 L170.4 13" />
      <path class="arc" d="M130 68 A90 90 0 0 1 154.2 71.3" />
      <g transform="translate(170.4 13) rotate(15)">
        <rect class="phone" x="-34" y="-4" width="68" height="8" rx="3" />
        <circle class="lens" cx="0" cy="5" r="3" />
      </g>
      <path class="measure" d="M52 22 V158 M47 22 H57 M47 158 H57" />
      <text x="44" y="94" text-anchor="end">
        30 cm
      </text>
      <text x="164" y="80">
        10–20°
      </text>
    </svg>
  );
}

export function ReadingStep() {
  return <ReadingPicture kind="pitch-gauge" />;
}
