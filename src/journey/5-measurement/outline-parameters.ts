/** What an outline is fitted with, in this order: pitch, where along the axis a crest lies on the left, crest radius in
 *  the middle and its growth along s, what the axis lacks to the left and in turn, crest flat and depth in pitches,
 *  logarithm of the blur over the one expected, half the flank angle. Millimetres and radians. */
export const fitParameters = [
  'pitch',
  'crestS',
  'radius',
  'halfTaper',
  'offset',
  'turn',
  'flat',
  'depth',
  'lnBlur',
  'halfAngle',
] as const;

export type FitParameter = (typeof fitParameters)[number];

/** Values of all of them. */
export type OutlineParameters = ArrayLike<number>;

/** The place of each among its values. */
export const index = Object.fromEntries(fitParameters.map((name, k) => [name, k])) as Readonly<
  Record<FitParameter, number>
>;

/** Of two parameters of a fit; of one with itself, its variance. */
export const covarianceOf = (
  { covariance }: { readonly covariance: ArrayLike<number> },
  a: FitParameter,
  b: FitParameter = a,
): number => covariance[index[a] * fitParameters.length + index[b]];
