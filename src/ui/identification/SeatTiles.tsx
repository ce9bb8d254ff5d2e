import { For, Show } from 'solid-js';
import type { Reading } from '../../journey/6-candidates/reading';
import { type Seat, seats } from '../../journey/6-candidates/reading-choices';
import { t } from '../language/language';
import { type End, seatText } from './reading-text';
import { SectionDrawing } from './SectionDrawing';
import './seat-tiles.css';

/** Proportions of a common size, for telling seats apart by eye; not of the fitting at hand. */
const example = {
  majorMm: 22,
  pitchMm: 1.5,
  flankAngleDeg: 60,
  depthMm: 0.92,
  tubeOdMm: 16,
  minorInternalMm: 20.376,
} as const;

/** Seats as drawings to tap, the likely ones first. */
export function SeatTiles(props: {
  readonly likely: readonly string[];
  readonly outcomes: ReadonlyMap<string, string>;
  readonly end: NonNullable<End>;
  readonly onReading: (reading: Reading) => void;
}) {
  // Taken once: the drawings must not change places under a finger.
  const likely = seats.filter((seat) => props.likely.includes(seat));
  const others = seats.filter((seat) => !props.likely.includes(seat));
  const drawn = (seat: Seat) => ({
    ...example,
    end: props.end,
    // A female end shows these two as cones that point to its mouth.
    coneOutwards: seat === 'cone-24' || seat === 'cone-60',
    seat,
    tubeOdMm: seat === 'cone-inverted' ? 12 : example.tubeOdMm,
    taper: seat === 'none' ? 1 / 16 : 0,
    sealsOnThread: seat === 'none',
    oRing: seat === 'o-ring-at-hex' ? { insideMm: 19.3, sectionMm: 2.2 } : null,
  });
  const tiles = (shown: readonly Seat[]) => (
    <ul class="seat-choices">
      <For each={shown}>
        {(seat) => (
          <li>
            <button
              type="button"
              class="seat-choice"
              data-seat={seat}
              onClick={() => props.onReading({ kind: 'seat', seat, text: seat })}
            >
              <SectionDrawing dimensions={drawn(seat)} name="" decorative widthMm={30} />
              <span>
                {seatText(seat, props.end)}
                <Show when={props.outcomes.get(seat)}>
                  {(outcome) => <span class="soft"> {outcome()}</span>}
                </Show>
              </span>
            </button>
          </li>
        )}
      </For>
    </ul>
  );
  return (
    <Show when={likely.length > 0} fallback={tiles(others)}>
      {tiles(likely)}
      <details class="other-seats">
        <summary>{t().loop.otherEnd}</summary>
        {tiles(others)}
      </details>
    </Show>
  );
}
