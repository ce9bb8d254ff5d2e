import { card } from '../../scale-card/geometry';

/** Where the coefficients of a bow are its rise, mm from the reference's middle. */
export const bowAtMm = 90;

/** How a sheet rises off its tangent plane at the middle: mm of xx, xy and yy at `bowAtMm`. A sheet
 *  bends in one direction at a time, but the general quadratic has no direction to lose when flat. */
export type Bow = readonly [xx: number, xy: number, yy: number];

export const flat: Bow = [0, 0, 0];

/** Height of the bowed reference over its tangent plane, mm, at a place in the card frame. */
export function bowHeightMm(bow: Bow, xMm: number, yMm: number): number {
  const a = (xMm - card.widthMm / 2) / bowAtMm;
  const b = (yMm - card.heightMm / 2) / bowAtMm;
  return bow[0] * a * a + bow[1] * a * b + bow[2] * b * b;
}

/** A cylinder of rise b along θ has xx + yy = b, xx − yy = b·cos 2θ and xy = b·sin 2θ: for any direction
 *  as likely as another these three are uncorrelated, the latter two with half of b's variance. */
export const bowPriorScale = [1, Math.SQRT1_2, Math.SQRT1_2] as const;

/** Rise along the direction that rises or falls most, with its uncertainty's square. */
export function largestBow(
  [xx, xy, yy]: Bow,
  covariance: (i: number, j: number) => number,
): { readonly riseMm: number; readonly uMm: number } {
  const half = Math.hypot(xx - yy, xy) / 2;
  const sign = xx + yy < 0 ? -1 : 1;
  const riseMm = (xx + yy) / 2 + sign * half;
  // The direction is found by the same numbers, and stands still to first order.
  const c = half > 0 ? (sign * (xx - yy)) / (2 * half) : 1;
  const s = half > 0 ? (sign * xy) / (2 * half) : 0;
  const g = [(1 + c) / 2, s / 2, (1 - c) / 2];
  let variance = 0;
  for (let i = 0; i < 3; i++)
    for (let j = 0; j < 3; j++) variance += g[i] * g[j] * covariance(i, j);
  return { riseMm, uMm: Math.sqrt(variance) };
}
