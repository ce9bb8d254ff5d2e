import * as portable from '../../quantity/portable-math';
import learnt from '../4-limbs/allowances.json';
import { fitParameters } from './fit-thread';
import type { LocalSpread } from './local-spread';
import type { OtherPeriod } from './thread-measurement';
import type { Known, ThreadSolution } from './thread-solution';

/** What a measured length leaves behind that says how sure it is. */
export interface Traces {
  readonly pitchMm: number;
  /** Standard uncertainty by the outline's fit. */
  readonly fitMm: number;
  /** Standard uncertainty of the radius that the limbs state. */
  readonly limbMm: number;
  /** How clear the surface's pattern is: logarithm of its score. */
  readonly score: number;
  readonly dark: boolean;
}

/** The logarithm of a length's spread in pitches grows by so much with each trace; two lengths count by their
 *  logarithms, over a fiftieth of the pitch. `least` and `most`: within what photos have shown. */
export interface SpreadWeights {
  readonly base: number;
  readonly fit: number;
  readonly limb: number;
  readonly score: number;
  readonly dark: number;
  readonly least: number;
  readonly most: number;
}

const usualShare = 0.02;
/** Limbs are told by bins of a sixteenth of a pitch: what they state below this is no more than the last digits. */
const leastLimbShare = 1e-3;

/** Standard uncertainty of a length, mm. */
export function spreadMm(t: Traces, w: SpreadWeights): number {
  const over = (share: number) => portable.log(share / usualShare);
  const spread = portable.exp(
    w.base +
      w.fit * over(t.fitMm / t.pitchMm) +
      w.limb * over(t.limbMm / t.pitchMm + leastLimbShare) +
      w.score * t.score +
      (t.dark ? w.dark : 0),
  );
  return t.pitchMm * Math.max(w.least, Math.min(w.most, spread));
}

/** Of pitch, crest radius and its growth from end to end, and what the height's u is multiplied by that the hex
 *  network states. Set by `npm run calibrate` on photos with truth. */
export const learntSpreads: Readonly<Record<'pitch' | 'radius' | 'growth', SpreadWeights>> =
  learnt.spreads;
export const learntHeight: number = learnt.height;
/** How far, in its u, an outline moves the limbs' radius before it is taken for the edge of something else. */
export const learntFurthestApart: number = learnt.outline.furthestApart;

/** What the traces of a seated thread amount to. `shadowMm`: what a shadow known to be there adds to the
 *  diameter. */
export function learntSpread(
  solution: ThreadSolution,
  known: Known,
  shadowMm: number,
): LocalSpread {
  const { fit, zone } = solution;
  const { pitch, radius, growth } = tracesOf(solution, known);
  const radiusMm = spreadMm(radius, learntSpreads.radius);
  return {
    rows: [
      ...(shadowMm > 0
        ? [{ source: 'edge-bias' as const, pitchMm: 0, majorDiameterMm: shadowMm }]
        : []),
      {
        source: 'thread-form',
        pitchMm: Math.hypot(
          spreadMm(pitch, learntSpreads.pitch),
          doubtOf(known.others) * fit.pitchMm,
        ),
        majorDiameterMm: 2 * Math.hypot(radiusMm, solution.uFormMm),
      },
    ],
    uTaper: (2 * spreadMm(growth, learntSpreads.growth)) / (zone.toS - zone.fromS),
  };
}

/** Traces of pitch, crest radius, and how much the radius grows from end to end. */
export function tracesOf(
  { fit, zone }: Pick<ThreadSolution, 'fit' | 'zone'>,
  { uLimbMm, score, dark }: Pick<Known, 'uLimbMm' | 'score' | 'dark'>,
): { readonly pitch: Traces; readonly radius: Traces; readonly growth: Traces } {
  const traces = (k: number, lengthMm = 1): Traces => ({
    pitchMm: fit.pitchMm,
    fitMm: Math.sqrt(fit.covariance[k * fitParameters.length + k]) * lengthMm,
    limbMm: uLimbMm,
    score,
    dark,
  });
  return { pitch: traces(0), radius: traces(2), growth: traces(3, zone.toS - zone.fromS) };
}

/** Beyond a 95 % interval. */
const outside = 0.05;

/** Spread of the pitch, relative, by other periods, once they are too likely to lie outside a 95 %
 *  interval; less likely ones are left to the matching. */
function doubtOf(others: readonly OtherPeriod[]): number {
  const all = others.reduce((sum, { share }) => sum + share, 0);
  if (all < outside) return 0;
  return Math.sqrt(others.reduce((sum, { ratio, share }) => sum + share * (ratio - 1) ** 2, 0));
}
