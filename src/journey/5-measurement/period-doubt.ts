import type { OtherPeriod } from './thread-measurement';

/** Beyond a 95 % interval. */
const outside = 0.05;

/** What other periods add to the stated u of the pitch, relative, once they are too likely to lie outside a 95 %
 *  interval. Matching, which weighs them one by one, takes it out again. */
export function periodDoubt(others: readonly OtherPeriod[]): number {
  const all = others.reduce((sum, { share }) => sum + share, 0);
  if (all < outside) return 0;
  return Math.sqrt(others.reduce((sum, { ratio, share }) => sum + share * (ratio - 1) ** 2, 0));
}
