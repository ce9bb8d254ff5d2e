import { Show } from 'solid-js';
import { claimedSeat } from '../../journey/6-candidates/end-seen';
import type { Reading } from '../../journey/6-candidates/reading';
import { t } from '../language/language';
import type { Sheet } from '../work/open-sheet';
import { seatText } from './reading-text';

const spoken: ReadonlySet<Reading['kind']> = new Set([
  'seat',
  'other-seat',
  'seat-gauge',
  'cone-size',
]);

/** The seat that the photo claims, as long as nobody has said anything of it. */
export function openClaim({ measurement, readings }: Sheet) {
  if (!measurement || readings.some(({ kind }) => spoken.has(kind))) return null;
  return claimedSeat(measurement);
}

/** 'The photo shows …': one tap bears it out, one denies it. Without `onReading`, for looking at. */
export function SeatClaim(props: {
  readonly sheet: Sheet;
  readonly onReading?: (reading: Reading) => void;
}) {
  return (
    <Show when={openClaim(props.sheet)} keyed>
      {(seat) => (
        <section
          class="panel stack tight seat-claim"
          aria-label={t().loop.seatClaim.title}
          tabIndex={-1}
        >
          <p>
            {t().loop.seatClaim.title}: <strong>{seatText(seat, 'male')}</strong>
          </p>
          <Show when={props.onReading} keyed>
            {(give) => (
              <div class="row">
                <button
                  type="button"
                  class="button"
                  onClick={() => give({ kind: 'seat', seat, text: seat })}
                >
                  {t().loop.seatClaim.yes}
                </button>
                <button
                  type="button"
                  class="button"
                  onClick={() => give({ kind: 'other-seat', seat, text: seat })}
                >
                  {t().loop.seatClaim.no}
                </button>
              </div>
            )}
          </Show>
        </section>
      )}
    </Show>
  );
}
