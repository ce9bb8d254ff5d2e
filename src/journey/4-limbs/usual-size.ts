import * as portable from '../../quantity/portable-math';

/** Pitches of listed threads over their radius: 0.06 (M52x1.5) to 0.45 (4-40 UNC). */
const finest = 0.05;
const coarsest = 0.5;
/** Pitch over radius of listed threads, in the middle of its logarithm. */
const usualRatio = 0.16;

/** Periods that a thread of this radius can have, mm. */
export const periodRange = (radiusMm: number) => ({
  fromMm: finest * radiusMm,
  toMm: coarsest * radiusMm,
});

/** Logarithm of a normal density, up to a constant, of a pitch for its radius; `uLn` as wide as the radius is
 *  uncertain. */
export function usualSize(periodMm: number, radiusMm: number, uLn: number): number {
  const z = portable.log(periodMm / radiusMm / usualRatio) / uLn;
  return -0.5 * z * z;
}
