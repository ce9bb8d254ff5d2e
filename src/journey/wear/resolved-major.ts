import type { Estimate } from '../../quantity/estimate';
import type { ThreadMeasurement } from '../5-measurement/thread-measurement';

/** Relative standard uncertainty, beyond the scale it shares with the pitch, from which a diameter
 *  counts as not resolved. */
const unresolved = 0.03;

/** With an outline that has faded, the matching core still weighs what little is known of the
 *  diameter; as a number of its own it would be a guess. */
export function resolvedDiameter({
  majorDiameterMm,
  correlation,
}: Pick<ThreadMeasurement, 'majorDiameterMm' | 'correlation'>): Estimate | null {
  const own = majorDiameterMm.u * Math.sqrt(1 - correlation ** 2);
  return own < unresolved * majorDiameterMm.value ? majorDiameterMm : null;
}

/** A female end shows its minor diameter alone. */
export const resolvedMajor = (measurement: ThreadMeasurement): Estimate | null =>
  measurement.end === 'female' ? null : resolvedDiameter(measurement);
