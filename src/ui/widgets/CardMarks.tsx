import { For } from 'solid-js';
import { card, markers } from '../../scale-card/geometry';

/** The ring of squares of the scale card, in a drawing whose unit is its millimetre. */
export function CardMarks() {
  return (
    <For each={markers}>
      {({ xMm, yMm }) => (
        <rect
          class="mark"
          x={xMm - card.markerSideMm / 2}
          y={yMm - card.markerSideMm / 2}
          width={card.markerSideMm}
          height={card.markerSideMm}
        />
      )}
    </For>
  );
}
