import type { Measured } from '../journey/identification';
import { assessWear } from '../journey/wear/assess';
import { noWearReadings } from '../journey/wear/wear-readings';
import type { Expected } from './expected-thread';

/** The `wear` of `measure --expect`. Outside tests rely on these names: add, never rename. */
export function wearJson(
  { thread, className }: Expected,
  { measurement, crests }: Measured,
): object {
  const { limits, photo, overlap, gauge, finding } = assessWear({
    ...{ thread, className, measurement },
    shots: [{ measurement, crests }],
    readings: noWearReadings,
  });
  const verdict = photo!.verdict;
  return {
    thread: thread.designation,
    class: limits?.class ?? null,
    crest: {
      state: verdict.state,
      why: 'why' in verdict ? verdict.why : null,
      byMm: 'by' in verdict ? verdict.by.value : null,
      // One standard uncertainty, as everywhere.
      u: photo!.diameterMm?.u ?? null,
      lowerMm: limits?.major.minMm ?? null,
      upperMm: limits?.major.maxMm ?? null,
    },
    perCrest: crests.map(({ side, turn, atMm, heightMm, u, shortMm }) => ({
      ...{ side, turn, atMm, heightMm, u, shortMm },
    })),
    overlapMm: overlap?.leftMm ?? null,
    gauge,
    finding: { level: finding.level, reasons: finding.reasons.map(({ reason }) => reason) },
  };
}
