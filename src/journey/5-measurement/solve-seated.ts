import type { Estimate } from '../../quantity/estimate';
import * as portable from '../../quantity/portable-math';
import { ok, type Result, refuse } from '../../quantity/result';
import type { Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { PosedCard } from '../2-card-pose/pose-from-markers';
import type { CrestLines } from '../4-limbs/crest-lines';
import { logOdds, periodWeights } from '../4-limbs/period-odds';
import type { RatedPeriod, SeatedThread } from '../4-limbs/seat-thread';
import type { AxisFrame, Extent } from '../4-thread-signal/axis-frame';
import { mmPerPxAt, recentred } from '../4-thread-signal/axis-moves';
import {
  type OutlinePoint,
  type OutlineView,
  outlineEdges,
  type SearchBand,
  type Side,
} from '../4-thread-signal/outline-edges';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { usualRim } from '../4-thread-signal/rim-edge';
import { type SurfacePeriod, surfacePeriodNear } from '../4-thread-signal/surface-period';
import { ridgesUnrolled } from '../4-thread-signal/unrolled-surface';
import { crestRim } from './crest-rim';
import { fitAsMade } from './fit-as-made';
import { fitThread, type ThreadFit } from './fit-thread';
import { bandAbout, bothSidesSpeak, continued, startAt } from './follow-fit';
import { learntHeight } from './learnt-spread';
import { type PeriodStart, startPeriod } from './start-period';
import { completeTurns } from './thread-extent';
import { anyForm } from './thread-form';
import type { OtherPeriod } from './thread-measurement';
import type { Rival, ThreadSolution } from './thread-solution';

/** Of what surface and limbs say, beside their own u: the surface's pattern moves against the ridges from end to end,
 *  limbs are told to a share of the pitch. */
const priors = { surface: 0.001, surfaceDrift: 0.01, limb: 0.03, halfTaper: 0.002 };
/** Share of its height within which an axis lies that no hex holds. */
const unknownHeight = 0.2;
const rounds = 2;
/** Share of the pitch within which the surface is asked again. */
const nearby = 0.012;
const fewestTurns = 3;
/** Periods less likely by the surface than this against the best are not asked about. */
const leastOdds = 0.003;
/** Less likely ones are not carried on. */
const leastShare = 0.002;
/** Independent edges per turn: neighbouring cuts share their light and their scratches. */
const perTurn = 2;
/** Share of an outline that is none, highlights and shadows, which some period or other explains. */
const shownByChance = 0.6;
/** First harmonic of a 55 or 60 degree profile's outline, pitches; and how far it is met on photos. */
const usualAmplitude = 0.25;
const uLnAmplitude = 0.4;

/** A thread where it was seated, and what its outline is sought in. */
export interface SeatedView {
  readonly grey: GreyImage;
  readonly card: PosedCard;
  readonly seat: SeatedThread;
  readonly field: Field;
  /** Whose outline counts, where a person has said so. */
  readonly sides: Side | 'both';
}

type Solved = Result<ThreadSolution, 'too-few-turns'>;

/** How far the outline may move the axis, pitches and rad, at first and then, and the radius and its growth, in their
 *  u. */
interface Freedom {
  readonly offset: readonly [number, number];
  readonly turn: readonly [number, number];
  readonly radius: number;
}

/** The limbs hold axis and radius: the outline says where along the axis its crests are. Left to the outline, radii
 *  come out a hundredth of the pitch larger on paper and nowhere nearer. */
const held: Freedom = { offset: [0.006, 0.006], turn: [0.0005, 0.0005], radius: 0.05 };
/** Whoever says which side counts has seen its outline. */
const followed: Freedom = { offset: [0.25, 0.15], turn: [0.01, 0.006], radius: 1 };

/** The outline's edges about a seated thread, fitted as one thread with what limbs and surface know as prior. */
export function solveSeated({ grey, card, seat, field, sides }: SeatedView): Solved {
  const freedom = sides === 'both' ? held : followed;
  const { camera } = card;
  let { frame, zone } = seat;
  const mmPerPx = mmPerPxAt(camera, frame, zone);
  const view: OutlineView = { grey, camera, response: card.response, mmPerPx, field };
  const middle = () => (zone.fromS + zone.toS) / 2;
  let rim = usualRim[field];
  const edges = (band: (side: Side) => SearchBand) =>
    (['left', 'right'] as const).flatMap((side) =>
      sides === 'both' || sides === side
        ? outlineEdges(view, frame, { side, zone, band: band(side) }, rim)
        : [],
    );
  const { crests } = seat;
  const radius: Estimate = {
    value: crests.radiusMm,
    u: Math.hypot(crests.uRadiusMm, priors.limb * seat.pitchMm),
  };
  const halfTaper: Estimate = {
    value: crests.halfTaper,
    u: Math.hypot(crests.uHalfTaper, priors.halfTaper),
  };
  const middle0 = middle();
  const rivals = seat.periods.filter((q) => q.worth > leastOdds * seat.periods[0].worth);
  const deepest = 0.75 * Math.min(Math.max(...rivals.map((q) => q.periodMm)), 2 * seat.pitchMm);
  let points: readonly OutlinePoint[] = edges(() => (s) => {
    const r = crests.radiusMm + crests.halfTaper * (s - middle0);
    return { fromR: r - deepest, toR: r + 0.1 * seat.pitchMm + 2 * mmPerPx };
  });
  const chosen = withOutline(points, middle(), zone, rivals);
  const { crestS, period, others } = chosen;
  const pitchMm = period.periodMm;
  const turns = (zone.toS - zone.fromS) / pitchMm;
  const uPitch = pitchMm * Math.hypot(priors.surface, priors.surfaceDrift / turns);
  let pitch: Estimate = { value: pitchMm, u: uPitch };
  const handed = period.hand === 'right' ? 1 : -1;
  let form = anyForm;
  const solve = (from: Parameters<typeof fitThread>[2], warm?: ThreadFit) =>
    fitThread(
      points,
      middle(),
      from,
      {
        blurMm: card.blurPx * mmPerPx,
        form,
        handed,
        ridges: pitch,
        mmPerPx,
        rangeMm: frame.origin[2] - camera.centre[2],
        uOffsetMm: freedom.offset[warm ? 1 : 0] * pitchMm,
        uTurn: freedom.turn[warm ? 1 : 0],
        radius: { value: radius.value, u: freedom.radius * radius.u },
        halfTaper: { value: halfTaper.value, u: freedom.radius * halfTaper.u },
      },
      warm?.scatterMm,
    );
  let fit = solve(startAt(pitchMm, crestS, radius.value, crests.halfTaper));
  for (let round = 0; round < rounds; round++) {
    // Beside black, metal fades inwards for other reasons too.
    if (round === rounds - 1 && field === 'light') rim = crestRim(view, frame, points, fit);
    if (bothSidesSpeak(points, fit))
      frame = recentred(camera, frame, fit.middleS, fit.axisOffsetMm, fit.axisTurn);
    points = edges(bandAbout(fit, points, 0.25 * fit.pitchMm + 2 * mmPerPx));
    if (round === 0) {
      zone = completeTurns(points, fit, zone);
      points = points.filter((q) => q.s >= zone.fromS && q.s <= zone.toS);
    }
    // About an axis that is known better, the surface tells its period better.
    const again = surfaceAbout({ grey, camera }, frame, zone, fit);
    if (again) pitch = { value: again.periodMm, u: uPitch };
    fit = solve(continued(fit, middle()), fit);
  }
  const finished = fitAsMade(points, fit, (kept, warm, as) => {
    points = kept;
    form = as;
    return solve(continued(warm, middle()), warm);
  });
  if ((zone.toS - zone.fromS) / fit.pitchMm < fewestTurns)
    return refuse('too-few-turns', 'Show at least four turns of the thread, unobstructed.');
  const { hex } = seat;
  const sure = hex.share > 0.5;
  return ok({
    frame,
    resting: {
      on: sure ? 'hex' : 'unknown',
      heightMm: hex.heightMm,
      uMm: sure ? hex.uHeightMm * learntHeight : unknownHeight * hex.heightMm,
    },
    hexHalfWidthMm: sure ? hex.halfWidthMm : null,
    ...finished,
    // Limbs tell a shadow from metal, and their spread says how well.
    lampShadow: 0,
    ridges: null,
    zone,
    middleS: middle(),
    mmPerPx,
    hand: handOf(period, crests),
    known: {
      pitch,
      radius,
      others,
      rivals: chosen.rivals,
      uLimbMm: crests.uRadiusMm,
      radiusOdds: seat.radiusOdds,
      score: period.traits.score,
      dark: field === 'dark',
    },
  });
}

/** The surface's period near a fit's, unrolled about its axis. */
function surfaceAbout(
  photo: PosedPhoto,
  frame: AxisFrame,
  zone: Extent,
  fit: ThreadFit,
): SurfacePeriod | null {
  const { crestRadiusMm: radiusMm, halfTaper, middleS, pitchMm } = fit;
  const view = ridgesUnrolled(photo, frame, zone, { radiusMm, halfTaper, middleS }, pitchMm);
  return surfacePeriodNear(view, pitchMm, nearby);
}

/** Of periods that the surface leaves possible, the one that surface and outline together speak for: the
 *  two sides of a thread are half a pitch apart, those of twice or half the pitch are not. An outline too scarce for
 *  any period says nothing. */
function withOutline(
  points: readonly OutlinePoint[],
  middleS: number,
  zone: Extent,
  rivals: readonly RatedPeriod[],
): {
  /** Axial position of a crest on the left side, mm. */
  readonly crestS: number;
  readonly period: RatedPeriod;
  readonly others: readonly OtherPeriod[];
  readonly rivals: readonly Rival[];
} {
  const independent = perTurn * ((zone.toS - zone.fromS) / rivals[0].periodMm);
  const tried = rivals.map((period) => {
    const near = Array.from({ length: 9 }, (_, i) => period.periodMm * (1 + 0.0015 * (i - 4)));
    const begun = startPeriod(points, middleS, near);
    const spoken = begun ? spokenBy(begun, period.periodMm, independent) : 0;
    const odds = logOdds(period.traits) + periodWeights.outline * spoken;
    return { crestS: begun?.crestS ?? middleS, period, spoken, odds };
  });
  const [best] = tried.sort((a, b) => b.odds - a.odds);
  const weights = tried.map(({ odds }) => portable.exp(odds - best.odds));
  const all = weights.reduce((sum, w) => sum + w, 0);
  const others = tried.flatMap(({ period }, i) => {
    const share = weights[i] / all;
    const ratio = period.periodMm / best.period.periodMm;
    return i === 0 || share < leastShare ? [] : [{ ratio, share }];
  });
  return { ...best, others, rivals: tried };
}

/** What an outline says for a period, a logarithm: how much of it the period explains, as a tooth of that pitch. */
function spokenBy(begun: PeriodStart, periodMm: number, independent: number): number {
  const outline = (-independent / 2) * portable.log(Math.max(0.02, 1 - begun.explained));
  // What is no tooth of this pitch has another height, whatever it explains.
  const z = portable.log(Math.max(1e-3, begun.amplitudeMm / (usualAmplitude * periodMm)));
  const tooth = -0.5 * Math.min(9, (z / uLnAmplitude) ** 2);
  const junk = (-independent / 2) * portable.log(1 - shownByChance);
  return portable.log(portable.exp(outline + tooth) + portable.exp(junk));
}

/** The hand, when the other one is less than a twentieth as likely at the same period. */
function handOf(best: RatedPeriod, crests: CrestLines): 'right' | 'left' | null {
  const apart = (2 * best.periodMm) / (2 * Math.PI * crests.radiusMm);
  return apart > 2.5 * Math.hypot(crests.uTurn, 0.006) ? best.hand : null;
}
