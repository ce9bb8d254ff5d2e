import type { Measured } from '../journey/identification';
import { judgeCrest } from '../journey/wear/judge';
import { overlapMm } from '../journey/wear/overlap';
import type { Estimate } from '../quantity/estimate';
import { taperGauge } from '../standards/limits/taper-gauge';
import type { Expected } from './expected-thread';

/** The `wear` of `measure --expect`. Outside tests rely on these names: add, never rename. */
export function wearJson(
  { thread, className }: Expected,
  { measurement, crests }: Measured,
  diameterMm: Estimate | null,
): object {
  const { limits, verdict } = judgeCrest(thread, className ?? undefined, {
    diameterMm,
    pitchMm: measurement.pitchMm,
  });
  return {
    thread: thread.designation,
    class: limits?.class ?? null,
    crest: {
      state: verdict.state,
      why: 'why' in verdict ? verdict.why : null,
      byMm: 'by' in verdict ? verdict.by.value : null,
      // One standard uncertainty, as everywhere.
      u: diameterMm?.u ?? null,
      lowerMm: limits?.major.minMm ?? null,
      upperMm: limits?.major.maxMm ?? null,
    },
    perCrest: crests.map(({ side, turn, atMm, heightMm, u, shortMm }) => ({
      ...{ side, turn, atMm, heightMm, u, shortMm },
    })),
    overlapMm: limits && diameterMm ? overlapMm(diameterMm.value, thread) : null,
    gauge: taperGauge(thread),
  };
}
