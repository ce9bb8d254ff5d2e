import { ReadingPicture } from '../identification/ReadingPicture';
import { CardSketch } from '../widgets/CardSketch';
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

export function ReadingStep() {
  return <ReadingPicture kind="pitch-gauge" />;
}
