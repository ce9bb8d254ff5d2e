import { seatToDraw } from '../../journey/6-candidates/end-seen';
import type { Reading } from '../../journey/6-candidates/reading';
import type { DrawnSeat, EndFeature } from '../../journey/overlay';
import { t } from '../language/language';
import type { Sheet, Shot } from '../work/open-sheet';

/** What a photo is drawn to show of the seats: its own end's as long as the sheet has it and nobody says otherwise, its
 *  other ends' as the photo has them. */
export function drawnFeatures(sheet: Sheet, shot: Shot): readonly EndFeature[] {
  const seen = sheet.measurement && seatToDraw(sheet.measurement);
  const stands = (seat: DrawnSeat) =>
    seat === seen && !sheet.readings.some((reading) => denies(reading, seat));
  return (shot.overlay?.ends ?? []).filter(({ end, seat }) => end > 0 || stands(seat));
}

/** Whether whoever gave this reading saw something else than the photo shows. */
function denies(reading: Reading, shown: DrawnSeat): boolean {
  switch (reading.kind) {
    case 'other-seat':
      return true;
    case 'seat':
      return reading.seat !== shown;
    case 'seat-gauge':
      return shown.startsWith('cone-') && reading.cone !== shown;
    default:
      return false;
  }
}

/** What stands beside its drawing. */
export function featureName(seat: DrawnSeat): string {
  const { cone, ring, shoulder } = t().loop.seatDrawn;
  if (seat === 'o-ring-at-hex') return ring;
  return seat === 'flat-washer-face' ? shoulder : cone(seat.slice('cone-'.length));
}
