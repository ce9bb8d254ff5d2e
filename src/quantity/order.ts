/** Order statistics. */

/** The middle one; of an even count the mean of the two in the middle. */
export function median(values: readonly number[]): number {
  const sorted = ascending(values);
  const half = sorted.length >> 1;
  return sorted.length % 2 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

/** As the median, but one of the values: of an even count the upper of the two in the middle. */
export const middleValue = (values: readonly number[]): number => quantile(ascending(values), 0.5);

/** The value that this share of the others lie below. */
export const quantile = (sorted: ArrayLike<number>, share: number): number =>
  sorted[Math.floor(share * sorted.length)];

const ascending = (values: readonly number[]) => [...values].sort((a, b) => a - b);
