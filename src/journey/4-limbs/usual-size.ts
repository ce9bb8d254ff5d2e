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

/** Pitch of a thread of 20 mm, mm, how pitches grow with the diameter, and their spread (of the logarithm) about
 *  that: a regression over the 116 threads of 8 to 62 mm that the connections of `standards/connections` use. */
const pitchAt20Mm = 1.51;
const pitchExponent = 0.41;
const uLnPitch = 0.14;
/** Any other thread that `standards/threads.ts` lists: its share at a counter (common practice: rare), and spread. */
const others = { share: 0.1, uLnPitch: 0.45 };

/** The same for a pitch beside a diameter in millimetres, whose logarithm is known to `uLnRadius`. */
export function usualPitch(periodMm: number, radiusMm: number, uLnRadius: number): number {
  const usualMm = pitchAt20Mm * portable.exp(pitchExponent * portable.log(radiusMm / 10));
  const off = portable.log(periodMm / usualMm);
  const density = (share: number, u: number) => (share / u) * portable.exp(-0.5 * (off / u) ** 2);
  const u = Math.hypot(uLnPitch, pitchExponent * uLnRadius);
  return portable.log(
    u * (density(1 - others.share, u) + density(others.share, Math.hypot(others.uLnPitch, u))),
  );
}
