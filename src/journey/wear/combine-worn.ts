import { combineShots } from '../5-measurement/combine-shots';
import type { ThreadMeasurement } from '../5-measurement/thread-measurement';

/** Two diameters of one worn part differ by less than this share of the pitch: more would be nearly all of the
 *  tooth on one side (its height is 0.61 p, ISO 68-1), so it is another part. */
const mostUneven = 0.6;
/** As photos of one part agree, in standard uncertainties of their difference. */
const disagreement = 4;

/** Photos of one used part, turned between them. Worn parts differ in diameter round them, which photos of a
 *  whole part must not: if the pitches agree, the least worn diameter stands for the thread, and roundness.ts
 *  says what differs. Null when they cannot be of one part. */
export function combineWorn(shots: readonly ThreadMeasurement[]): ThreadMeasurement | null {
  const combined = combineShots(shots);
  if (combined.ok) return combined.value;
  const [largest, ...others] = [...shots].sort(
    (a, b) => b.majorDiameterMm.value - a.majorDiameterMm.value,
  );
  if (!largest) return null;
  const one = others.every(
    ({ pitchMm, majorDiameterMm }) =>
      Math.abs(pitchMm.value - largest.pitchMm.value) <
        disagreement * Math.hypot(pitchMm.u, largest.pitchMm.u) &&
      largest.majorDiameterMm.value - majorDiameterMm.value < mostUneven * largest.pitchMm.value,
  );
  return one ? largest : null;
}
