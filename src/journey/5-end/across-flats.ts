import type { Estimate } from '../../quantity/estimate';
import type { ThreadSolution } from '../5-measurement/thread-solution';

/** Across the flats of the hex that the part rests on, mm: twice the axis' height over the card. Null where
 *  no hex was seen, or the axis' height is not known from one. */
export function acrossFlats({ resting }: Pick<ThreadSolution, 'resting'>): Estimate | null {
  if (resting.on !== 'hex') return null;
  return { value: 2 * resting.heightMm, u: 2 * resting.uMm };
}
