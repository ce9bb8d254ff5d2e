import type { Estimate } from '../../quantity/estimate';
import * as portable from '../../quantity/portable-math';
import type { Thread } from '../../standards/thread';
import { periodDoubt } from '../5-measurement/period-doubt';
import type { ThreadMeasurement, ThreadShows } from '../5-measurement/thread-measurement';

/** Chance of what the photo measured, given a thread. Pitch and diameter share one scale error, so
 *  their 2 × 2 covariance is used whole. Tails are those of a Student t with 4 degrees of freedom
 *  (bivariate): the stated uncertainty may be right and still an edge be mistaken, and a 4 u error
 *  must not settle a neighbour. */
export type PhotoLikelihood = (pitchMm: number, diameterMm: number) => number;

/** What a real thread adds to the photo's own uncertainty: pitch error of manufacture, relative,
 *  and out-of-roundness of the crests, mm (judgement). */
const partPitchRelative = 0.0004;
const partDiameterMm = 0.012;
/** A t with 4 degrees of freedom is wider than the Gaussian it replaces: its scale is set so that
 *  both hold 68 % within one u. */
const tScale = 0.88;

export interface PhotoShape {
  readonly likelihood: PhotoLikelihood;
  /** Squared distance of a thread from the measurement, in units of its covariance. */
  readonly distance2: PhotoLikelihood;
  readonly pitchMm: Estimate;
  readonly majorDiameterMm: Estimate;
  /** Standard uncertainties of the diameter's parts, mm. */
  readonly diameterUsMm: readonly number[];
  /** The measured pitch, and those that its other periods would make of it, mm. */
  readonly pitchesMm: readonly number[];
}

export type MeasuredThread = Pick<
  ThreadMeasurement,
  | 'pitchMm'
  | 'majorDiameterMm'
  | 'diameterParts'
  | 'taperParts'
  | 'correlation'
  | 'taper'
  | 'flankAngleDeg'
  | 'noseHalfAngleDeg'
  | 'middleFromEndMm'
> & {
  readonly end?: ThreadMeasurement['end'];
  readonly endShows?: ThreadMeasurement['endShows'] | undefined;
  readonly threadShows?: ThreadMeasurement['threadShows'] | undefined;
  readonly turns: number | null;
  readonly otherPeriods?: ThreadMeasurement['otherPeriods'] | undefined;
  readonly hand?: ThreadMeasurement['hand'];
  readonly starts?: ThreadMeasurement['starts'];
};

export function photoShape(m: MeasuredThread): PhotoShape {
  const others = m.otherPeriods ?? [];
  const doubt = periodDoubt(others) * m.pitchMm.value;
  // Older sheets may hold other periods beside a u that they did not enter.
  const own2 = m.pitchMm.u ** 2 - doubt ** 2;
  const uOwn = own2 > 0 ? Math.sqrt(own2) : m.pitchMm.u;
  const uPitch = Math.hypot(uOwn, partPitchRelative * m.pitchMm.value);
  const uDiameter = Math.hypot(m.majorDiameterMm.u, partDiameterMm);
  const covariance = m.correlation * m.pitchMm.u * m.majorDiameterMm.u;
  const { distance2 } = partOf(m, uPitch, uDiameter, covariance);
  const parts = m.diameterParts ?? [{ share: 1, u: m.majorDiameterMm.u }];
  const diameterUsMm = parts.map(({ u }) => Math.hypot(u, partDiameterMm));
  const densities = parts.map(({ share }, i) => ({
    share,
    ...partOf(m, uPitch, diameterUsMm[i]!, covariance),
  }));
  const own: PhotoLikelihood = (pitchMm, diameterMm) => {
    let sum = 0;
    for (const { share, density } of densities) sum += share * density(pitchMm, diameterMm);
    return sum;
  };
  const rest = 1 - others.reduce((sum, { share }) => sum + share, 0);
  return {
    distance2: (pitchMm, diameterMm) =>
      Math.min(
        distance2(pitchMm, diameterMm),
        ...others.map(({ ratio }) => distance2(pitchMm / ratio, diameterMm)),
      ),
    // A pitch that is another period measured has the stated one's relative uncertainty.
    likelihood: (pitchMm, diameterMm) =>
      others.reduce(
        (sum, { ratio, share }) => sum + (share / ratio) * own(pitchMm / ratio, diameterMm),
        rest * own(pitchMm, diameterMm),
      ),
    pitchMm: { value: m.pitchMm.value, u: uPitch },
    majorDiameterMm: { value: m.majorDiameterMm.value, u: uDiameter },
    diameterUsMm,
    pitchesMm: [1, ...others.map(({ ratio }) => ratio)].map((ratio) => ratio * m.pitchMm.value),
  };
}

/** Distance and density of a thread from the measurement by one covariance. */
function partOf(
  { pitchMm: { value: pitch }, majorDiameterMm: { value: diameter } }: MeasuredThread,
  uPitch: number,
  uDiameter: number,
  shared: number,
): { readonly distance2: PhotoLikelihood; readonly density: PhotoLikelihood } {
  // What is shared was reckoned for the whole; a part is never told by its pitch alone.
  const most = 0.999 * uPitch * uDiameter;
  const covariance = Math.max(-most, Math.min(most, shared));
  const determinant = (uPitch * uDiameter) ** 2 - covariance ** 2;
  const a = uDiameter ** 2 / determinant;
  const b = -covariance / determinant;
  const c = uPitch ** 2 / determinant;
  const distance2: PhotoLikelihood = (pitchMm, diameterMm) => {
    const dp = pitch - pitchMm;
    const dd = diameter - diameterMm;
    return a * dp * dp + 2 * b * dp * dd + c * dd * dd;
  };
  const peak = 1 / (2 * Math.PI * Math.sqrt(determinant) * tScale ** 2);
  const spread = 1 / (4 * tScale ** 2);
  return {
    distance2,
    density: (pitchMm, diameterMm) => {
      const tail = 1 + distance2(pitchMm, diameterMm) * spread;
      return peak / (tail * tail * tail);
    },
  };
}

function normal(value: number, mean: number, u: number): number {
  const z = (value - mean) / u;
  return portable.exp(-0.5 * z * z) / (u * Math.sqrt(2 * Math.PI));
}

/** Of a measured taper, mm/mm on diameter. Uneven wear bends a straight thread a little. */
export function taperLikelihood(
  { taper: measured, taperParts: parts }: Pick<MeasuredThread, 'taper' | 'taperParts'>,
  taper: number,
): number {
  if (measured === null) return 1;
  const mistaken = 0.003;
  const anywhere = 1 / 0.3;
  const told = (parts ?? [{ share: 1, u: measured.u }]).reduce(
    (sum, { share, u }) => sum + share * normal(measured.value, taper, Math.hypot(u, 0.002)),
    0,
  );
  return (1 - mistaken) * told + mistaken * anywhere;
}

/** Of a measured included flank angle. */
export function flankLikelihood(measured: Estimate | null, flankDeg: number): number {
  if (measured === null) return 1;
  const mistaken = 0.02;
  const anywhere = 1 / 40;
  const u = Math.hypot(measured.u, 0.6);
  return (1 - mistaken) * normal(measured.value, flankDeg, u) + mistaken * anywhere;
}

/** Which of the profiles that a photo may show a thread has. */
export const profileOf = ({
  system,
  flankAngleDeg,
  taper,
}: Pick<Thread, 'system' | 'flankAngleDeg' | 'taper'>): keyof ThreadShows['profile'] =>
  flankAngleDeg === 55 ? '55' : system === 'NPT' && taper > 0 ? 'npt' : '60';

/** Chance of what the thread looks like, over that of a thread of which nothing is known. */
export function looksLikelihood(
  { threadShows }: Pick<MeasuredThread, 'threadShows'>,
  thread: Pick<Thread, 'system' | 'flankAngleDeg' | 'taper'>,
): number {
  if (!threadShows) return 1;
  const { profile, taper } = threadShows;
  return 3 * profile[profileOf(thread)] * 2 * taper[thread.taper > 0 ? 'tapered' : 'straight'];
}

/** Chance that a nose angle is measured at all, by whether the end has an outward cone. That none
 *  was measured says nothing: the nose may be out of sight, in shadow, or not looked for. */
export const coneSeen = { cone: 0.4, other: 0.05 } as const;

/** Density per degree of a half angle measured ahead of the thread, on a cone or (null) on none, which may show a
 *  chamfer, mostly near 30° or 45°. */
export function coneAngleChance(measured: Estimate, cone: number | null): number {
  const anywhere = 1 / 70;
  if (cone !== null) {
    const mistaken = 0.04;
    const u = Math.hypot(measured.u, 0.7);
    return (1 - mistaken) * normal(measured.value, cone, u) + mistaken * anywhere;
  }
  const chamfer = (deg: number) => normal(measured.value, deg, Math.hypot(measured.u, 4));
  return 0.4 * chamfer(45) + 0.3 * chamfer(30) + 0.3 * anywhere;
}

/** Every listed thread is right-hand with one start; the photo may mistake either. */
const mistakenWinding = 0.01;
const oddShareOfUnlisted = 0.05;

/** Of the measured hand and number of starts, for listed threads and for others. */
export function windingLikelihood({ hand, starts }: MeasuredThread, listed: boolean): number {
  const isOdd = hand === 'left' || (starts ?? 1) > 1;
  const odd = mistakenWinding + (listed ? 0 : oddShareOfUnlisted);
  return isOdd ? odd : 1 - odd;
}
