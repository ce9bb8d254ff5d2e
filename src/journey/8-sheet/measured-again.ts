import type { EarlierMeasurement, Party, Sheet } from './sheet-schema';

/** As many as a sheet keeps (sheet-schema). */
const mostEarlier = 20;

/** Who works on a sheet here: the counter on one that came from elsewhere. */
const partyHere = (sheet: Pick<Sheet, 'received'>): Party =>
  sheet.received ? 'counter' : 'sender';

/** The sheet's fields after a new measurement. What was measured before stays, dated, once someone
 *  else has seen it: the counter on top of the sender, or the sender after sending. A party that
 *  measures again before anyone saw it only corrects itself. */
export function measuredAgain(
  sheet: Sheet,
  measurement: Sheet['measurement'],
  now: Date,
): Pick<Sheet, 'measurement' | 'measuredAt' | 'measuredBy' | 'earlier'> {
  const by = partyHere(sheet);
  const before = sheet.measurement;
  const seen = by !== sheet.measuredBy || (by === 'sender' && sheet.handedOver);
  const kept: EarlierMeasurement[] =
    before && seen
      ? [
          {
            at: sheet.measuredAt ?? sheet.createdAt,
            by: sheet.measuredBy,
            pitchMm: before.pitchMm,
            majorDiameterMm: before.majorDiameterMm,
          },
        ]
      : [];
  return {
    measurement,
    measuredAt: measurement ? now.toISOString() : null,
    measuredBy: by,
    earlier: [...sheet.earlier, ...kept].slice(-mostEarlier),
  };
}
