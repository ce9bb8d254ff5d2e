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

/** Pitch of a listed thread of 20 mm, mm, and how pitches grow with the diameter: a regression over all that
 *  `standards/threads.ts` lists from 8 to 62 mm, which lie about it with a spread of the logarithm of 0.37. */
const pitchAt20Mm = 1.53;
const pitchExponent = 0.48;

/** The same for a pitch beside a diameter that is known in millimetres. */
export function usualPitch(periodMm: number, radiusMm: number, uLn: number): number {
  const usualMm = pitchAt20Mm * portable.exp(pitchExponent * portable.log(radiusMm / 10));
  const z = portable.log(periodMm / usualMm) / uLn;
  return -0.5 * z * z;
}
