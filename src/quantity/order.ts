/** Order statistics. Of no values they are undefined or NaN. */

/** The middle one; of an even count the mean of the two in the middle. */
export function median(values: readonly number[]): number {
  const sorted = inOrder(values);
  const half = sorted.length >> 1;
  return sorted.length % 2 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}

/** As the median, but one of the values: of an even count the upper of the two in the middle. */
export const middleValue = (values: readonly number[]): number => quantile(inOrder(values), 0.5);

/** The value that this share of the others lie below. */
export const quantile = (sorted: ArrayLike<number>, share: number): number =>
  sorted[Math.floor(share * sorted.length)];

/** The least value that this share of all do not exceed. */
export const nearestRank = (sorted: ArrayLike<number>, share: number): number =>
  sorted[Math.ceil(share * sorted.length) - 1];

/** The value at this share of the way from the least to the greatest, linear between neighbours. */
export function betweenRanks(sorted: ArrayLike<number>, share: number): number {
  const at = share * (sorted.length - 1);
  const low = Math.floor(at);
  const high = Math.min(sorted.length - 1, low + 1);
  return sorted[low] + (at - low) * (sorted[high] - sorted[low]);
}

export const ascending = (values: readonly number[]) => [...inOrder(values)];

/** Sorted without a call for each comparison. */
const inOrder = (values: readonly number[]) => new Float64Array(values).sort();
