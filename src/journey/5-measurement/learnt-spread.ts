import * as portable from '../../quantity/portable-math';
import learnt from '../4-limbs/allowances.json';
import { coveringU, type LocalSpread, type Spread, scaled } from './local-spread';
import { covarianceOf, type FitParameter } from './outline-parameters';
import { periodDoubt } from './period-doubt';
import type { Known, ThreadSolution } from './thread-solution';

/** What a measured length leaves behind that says how sure it is. */
export interface Traces {
  readonly pitchMm: number;
  /** Standard uncertainty by the outline's fit. */
  readonly fitMm: number;
  /** What its witnesses leave to doubt: of a radius and its growth the u that the limbs state, of a pitch that of the
   *  crests' phases, and how far they lie from the surface. */
  readonly doubtMm: number;
  /** How far the outline's edges lie from the thread that was fitted, robust. */
  readonly scatterMm: number;
  /** How clear the surface's pattern is: logarithm of its score. */
  readonly score: number;
  /** How well the limb that shows less shows its crests: a mean logarithm (close-lines.ts). */
  readonly limbsShown: number;
  readonly dark: boolean;
  /** How much the radius grows along the thread, over what a taper of 1:16 grows: where along it a radius is told matters by
   *  as much. */
  readonly taper: number;
}

/** The logarithm of a length's spread in pitches grows by so much with each trace; lengths count by their
 *  logarithms, over a fiftieth of the pitch. `least` and `most`: within what photos have shown. On some photos
 *  another edge was measured: the logit of their share grows with how badly the outline's edges keep to the thread,
 *  on black and on paper, and with how little the worse of the limbs shows; `far` is the logarithm of how far off
 *  they are, in pitches. Of a few the limbs were taken for something else altogether: logit of their share, how that
 *  grows with the logit of those gone astray, and logarithm of how far off, in pitches. */
export interface SpreadWeights {
  readonly base: number;
  readonly fit: number;
  readonly doubt: number;
  readonly scatter: number;
  readonly score: number;
  readonly dark: number;
  readonly taper: number;
  readonly astray: number;
  readonly astrayScatter: number;
  readonly astrayLimbs: number;
  readonly astrayDark: number;
  readonly far: number;
  readonly lost: number;
  readonly lostAstray: number;
  readonly lostFar: number;
  readonly least: number;
  readonly most: number;
}

const usualShare = 0.02;
/** 1:16 on diameter. */
const usualHalfTaper = 1 / 32;
/** Limbs and phases are told by bins of a sixteenth of a pitch and more: what they state below this is no more than the
 *  last digits. */
const leastDoubtShare = 1e-3;

/** What a length's traces amount to. */
export function spreadOf(t: Traces, w: SpreadWeights): Spread {
  const over = (mm: number) => portable.log(mm / t.pitchMm / usualShare);
  const scatter = over(t.scatterMm);
  const spread = portable.exp(
    w.base +
      w.fit * over(t.fitMm) +
      w.doubt * over(t.doubtMm + leastDoubtShare * t.pitchMm) +
      w.scatter * scatter +
      w.score * t.score +
      w.taper * t.taper +
      (t.dark ? w.dark : 0),
  );
  const uMm = t.pitchMm * Math.max(w.least, Math.min(w.most, spread));
  const logit =
    w.astray +
    w.astrayScatter * scatter +
    w.astrayLimbs * t.limbsShown +
    (t.dark ? w.astrayDark : 0);
  const farMm = t.pitchMm * portable.exp(w.far);
  const lostMm = t.pitchMm * portable.exp(w.lostFar);
  return {
    u: uMm,
    astray: shareOf(logit),
    far: Math.hypot(uMm, farMm),
    lost: { share: shareOf(w.lost + w.lostAstray * logit), u: Math.hypot(uMm, lostMm) },
  };
}

const shareOf = (logit: number) => 1 / (1 + portable.exp(-logit));

/** Of pitch, crest radius and its growth from end to end, and what the height's u is multiplied by that the hex
 *  network states. Set by `npm run calibrate` on photos with truth. */
export const learntSpreads: Readonly<Record<'pitch' | 'radius' | 'growth', SpreadWeights>> =
  learnt.spreads;
export const learntHeight: number = learnt.spreads.height;

/** Of the surface's pitch, a share of it: `even` of any thread, and the pattern's drift against the ridges from end to
 *  end, turns. Set by `npm run calibrate`. */
export interface SurfaceSpread {
  readonly even: number;
  readonly drift: number;
}

export const surfaceU = (turns: number, { even, drift }: SurfaceSpread = learnt.surface): number =>
  Math.hypot(even, drift / turns);

/** What the traces of a seated thread amount to. `shadowMm`: what a shadow known to be there adds to the
 *  diameter. */
export function learntSpread(solution: ThreadSolution, shadowMm: number): LocalSpread {
  const { fit, zone, known } = solution;
  const { pitch, radius, growth } = tracesOf(solution, known);
  const diameter = scaled(spreadOf(radius, learntSpreads.radius), 2);
  const taper = scaled(spreadOf(growth, learntSpreads.growth), 2 / (zone.toS - zone.fromS));
  return {
    rows: [
      ...(shadowMm > 0
        ? [{ source: 'edge-bias' as const, pitchMm: 0, majorDiameterMm: shadowMm }]
        : []),
      {
        source: 'thread-form',
        pitchMm: Math.hypot(
          coveringU(spreadOf(pitch, learntSpreads.pitch)),
          periodDoubt(known.others) * fit.pitchMm,
        ),
        majorDiameterMm: Math.hypot(coveringU(diameter), 2 * solution.uFormMm),
      },
    ],
    parts: { diameter, taper },
    uTaper: coveringU(taper),
  };
}

/** Traces of pitch, crest radius, and how much the radius grows from end to end. */
export function tracesOf(
  { fit, zone }: Pick<ThreadSolution, 'fit' | 'zone'>,
  {
    uLimbMm,
    uPhasesMm,
    score,
    limbsShown,
    dark,
  }: Pick<Known, 'uLimbMm' | 'uPhasesMm' | 'score' | 'limbsShown' | 'dark'>,
): { readonly pitch: Traces; readonly radius: Traces; readonly growth: Traces } {
  const traces = (of: FitParameter, lengthMm = 1): Traces => ({
    pitchMm: fit.pitchMm,
    fitMm: Math.sqrt(covarianceOf(fit, of)) * lengthMm,
    doubtMm: of === 'pitch' ? uPhasesMm : uLimbMm,
    scatterMm: fit.scatterMm,
    score,
    limbsShown,
    dark,
    taper: Math.min(1, Math.abs(fit.halfTaper) / usualHalfTaper),
  });
  return {
    pitch: traces('pitch'),
    radius: traces('radius'),
    growth: traces('halfTaper', zone.toS - zone.fromS),
  };
}
