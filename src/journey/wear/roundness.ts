import type { Estimate } from '../../quantity/estimate';
import type { BudgetRow, ThreadMeasurement } from '../5-measurement/thread-measurement';

/** Errors that two photos of one part on one card surely share, whichever way the part is turned; all others may
 *  differ, and to count them as different errs on the wide side. */
const shared: readonly BudgetRow['source'][] = ['print-scale', 'thread-form'];

export interface Roundness {
  /** Largest less smallest diameter of the photos. */
  readonly apartMm: Estimate;
  readonly smallestMm: Estimate;
  readonly uneven: boolean;
}

/** Unevenness round the part, from photos between which it was turned by a quarter: wear on one side alone
 *  leaves every diameter alike, wear on two opposite sides does not. Null with fewer than two photos. */
export function roundness(
  shots: readonly Pick<ThreadMeasurement, 'majorDiameterMm' | 'budget'>[],
): Roundness | null {
  if (shots.length < 2) return null;
  const sorted = [...shots].sort((a, b) => a.majorDiameterMm.value - b.majorDiameterMm.value);
  const smallest = sorted[0]!;
  const largest = sorted.at(-1)!;
  const u = Math.hypot(ownOf(smallest), ownOf(largest));
  const value = largest.majorDiameterMm.value - smallest.majorDiameterMm.value;
  return {
    apartMm: { value, u },
    smallestMm: smallest.majorDiameterMm,
    uneven: value > 1.96 * u,
  };
}

function ownOf({
  majorDiameterMm: { u },
  budget,
}: Pick<ThreadMeasurement, 'majorDiameterMm' | 'budget'>): number {
  const common = budget
    .filter(({ source }) => shared.includes(source))
    .reduce((sum, row) => sum + row.majorDiameterMm ** 2, 0);
  return Math.sqrt(Math.max(u * u - common, 0));
}
