import type { Estimate } from '../../quantity/estimate';
import { ok, type Result, refuse } from '../../quantity/result';
import type { Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { PosedCard } from '../2-card-pose/pose-from-markers';
import type { CrestLines } from '../4-limbs/crest-lines';
import type { RatedPeriod, SeatedThread } from '../4-limbs/seat-thread';
import { type AxisFrame, type Extent, middleOf } from '../4-thread-signal/axis-frame';
import { mmPerPxAt, recentred } from '../4-thread-signal/axis-moves';
import {
  type OutlinePoint,
  type OutlineView,
  outlineEdges,
  type SearchBand,
  type Side,
} from '../4-thread-signal/outline-edges';
import { usualRim } from '../4-thread-signal/rim-edge';
import { withOutline } from './chosen-period';
import { crestRim } from './crest-rim';
import { fitAsMade } from './fit-as-made';
import { fitThread, type ThreadFit } from './fit-thread';
import { bandAbout, bothSidesSpeak, continued, startAt } from './follow-fit';
import { learntHeight, surfaceU } from './learnt-spread';
import {
  agreedPitch,
  type PitchWitnesses,
  phasesAbout,
  pitchDoubt,
  surfaceAbout,
} from './pitch-witnesses';
import type { PeriodStart } from './start-period';
import { completeTurns } from './thread-extent';
import { anyForm, type ThreadForm } from './thread-form';
import type { ThreadSolution } from './thread-solution';

/** Of what the limbs say, beside their own u: they are told to a share of the pitch. */
const priors = { limb: 0.03, halfTaper: 0.002 };
/** Share of its height within which an axis lies that no hex holds. */
const unknownHeight = 0.2;
const rounds = 2;
const fewestTurns = 3;
/** Periods less likely by the surface than this against the best are not asked about. */
const leastOdds = 0.003;

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

/** What stays the same while one seated thread is solved. */
interface Task {
  readonly view: OutlineView;
  readonly blurPx: number;
  readonly seat: SeatedThread;
  readonly sides: Side | 'both';
  readonly freedom: Freedom;
}

/** What limbs and surface say before the outline is fitted. */
interface Told {
  readonly radius: Estimate;
  readonly halfTaper: Estimate;
  readonly period: RatedPeriod;
  readonly uPitchMm: number;
}

/** Where the thread is taken to lie, and what is seen of it there. */
interface Sight {
  readonly frame: AxisFrame;
  readonly zone: Extent;
  readonly points: readonly OutlinePoint[];
  readonly pitch: PitchWitnesses;
}

interface Fitted extends Sight {
  readonly fit: ThreadFit;
}

/** The outline's edges about a seated thread, fitted as one thread with what limbs and surface know as prior. */
export function solveSeated(seated: SeatedView): Solved {
  const { seat, field } = seated;
  const { crests, zone: zone0 } = seat;
  const task = taskOf(seated);
  const rivals = seat.periods.filter((q) => q.worth > leastOdds * seat.periods[0].worth);
  const points = firstEdges(task, rivals);
  const chosen = withOutline(points, middleOf(zone0), zone0, rivals);
  const told = toldOf(seat, chosen.period);
  const surface = { value: chosen.period.periodMm, u: told.uPitchMm };
  const pitch = { surface, phases: null };
  const sight: Sight = { frame: seat.frame, zone: zone0, points, pitch };
  const start = startAt(surface.value, chosen.crestS, crests.radiusMm, crests.halfTaper);
  let fitted: Fitted = { ...sight, fit: solve(task, told, sight, { start }) };
  for (let round = 0; round < rounds; round++) fitted = nextRound(task, told, fitted, round);
  const { frame, zone, fit } = fitted;
  const middleS = middleOf(zone);
  if ((zone.toS - zone.fromS) / fit.pitchMm < fewestTurns)
    return refuse('too-few-turns', 'Show at least four turns of the thread, unobstructed.');
  const made = fitAsMade(fitted.points, fit, (kept, warm, form) =>
    solve(task, told, { ...fitted, points: kept }, { start: continued(warm, middleS), warm }, form),
  );
  return ok({
    frame,
    ...restingOn(seat),
    ...made,
    zone,
    middleS,
    mmPerPx: task.view.mmPerPx,
    hand: handOf(chosen.period, crests),
    known: {
      surfaceMm: fitted.pitch.surface.value,
      radius: told.radius,
      others: chosen.others,
      rivals: chosen.rivals,
      uLimbMm: crests.uRadiusMm,
      uPhasesMm: pitchDoubt(fitted.pitch),
      limbsShown: seat.limbsShown,
      score: chosen.period.traits.score,
      dark: field === 'dark',
    },
  });
}

function taskOf({ grey, card, seat, field, sides }: SeatedView): Task {
  const { camera, response, blurPx } = card;
  const mmPerPx = mmPerPxAt(camera, seat.frame, seat.zone);
  const freedom = sides === 'both' ? held : followed;
  return { view: { grey, camera, response, mmPerPx, field }, blurPx, seat, sides, freedom };
}

/** Where the limbs have the crests, and as deep below them as teeth may reach. */
function firstEdges(task: Task, rivals: readonly RatedPeriod[]): OutlinePoint[] {
  const { seat, view } = task;
  const { crests, pitchMm } = seat;
  const middleS = middleOf(seat.zone);
  const deepest = 0.75 * Math.min(Math.max(...rivals.map((q) => q.periodMm)), 2 * pitchMm);
  return edges(task, seat, () => (s) => {
    const r = crests.radiusMm + crests.halfTaper * (s - middleS);
    return { fromR: r - deepest, toR: r + 0.1 * pitchMm + 2 * view.mmPerPx };
  });
}

function toldOf({ crests, pitchMm, zone }: SeatedThread, period: RatedPeriod): Told {
  const turns = (zone.toS - zone.fromS) / period.periodMm;
  return {
    radius: {
      value: crests.radiusMm,
      u: Math.hypot(crests.uRadiusMm, priors.limb * pitchMm),
    },
    halfTaper: {
      value: crests.halfTaper,
      u: Math.hypot(crests.uHalfTaper, priors.halfTaper),
    },
    period,
    uPitchMm: period.periodMm * surfaceU(turns),
  };
}

/** Axis, edges and the surface's pitch once more, each from the fit before. */
function nextRound(task: Task, told: Told, before: Fitted, round: number): Fitted {
  const { view } = task;
  const { fit } = before;
  // Beside black, metal fades inwards for other reasons too.
  const rim =
    round === rounds - 1 && view.field === 'light'
      ? crestRim(view, before.frame, before.points, fit)
      : undefined;
  const frame = bothSidesSpeak(before.points, fit)
    ? recentred(view.camera, before.frame, fit.middleS, fit.axisOffsetMm, fit.axisTurn)
    : before.frame;
  let { zone } = before;
  const band = bandAbout(fit, view.camera, before.frame, 0.25 * fit.pitchMm + 2 * view.mmPerPx);
  let points = edges(task, { frame, zone }, band, rim);
  if (round === 0) {
    zone = completeTurns(points, fit, zone);
    const { fromS, toS } = zone;
    points = points.filter((q) => q.s >= fromS && q.s <= toS);
  }
  // About an axis that is known better, the surface tells its period better.
  const place = { frame, zone, fit };
  const again = surfaceAbout(view, place);
  const surface = again ? { value: again, u: told.uPitchMm } : before.pitch.surface;
  const phases = round === rounds - 1 ? phasesAbout(view, place, told.period.hand) : null;
  const sight = { frame, zone, points, pitch: { surface, phases } };
  const start = continued(fit, middleOf(zone));
  return { ...sight, fit: solve(task, told, sight, { start, warm: fit }) };
}

const edges = (
  { view, sides }: Task,
  { frame, zone }: Pick<Sight, 'frame' | 'zone'>,
  band: (side: Side) => SearchBand,
  rim = usualRim[view.field],
): OutlinePoint[] =>
  (['left', 'right'] as const).flatMap((side) =>
    sides === 'both' || sides === side
      ? outlineEdges(view, frame, { side, zone, band: band(side) }, rim)
      : [],
  );

/** The outline fitted as a thread, going on from another fit where there is one. */
function solve(
  { view, blurPx, freedom }: Task,
  { radius, halfTaper, period }: Told,
  { frame, zone, points, pitch }: Sight,
  { start, warm }: { readonly start: PeriodStart; readonly warm?: ThreadFit },
  form: ThreadForm = anyForm,
): ThreadFit {
  const { camera, mmPerPx } = view;
  return fitThread(
    points,
    middleOf(zone),
    start,
    {
      blurMm: blurPx * mmPerPx,
      form,
      handed: period.hand === 'right' ? 1 : -1,
      surfacePitch: agreedPitch(pitch),
      mmPerPx,
      rangeMm: frame.origin[2] - camera.centre[2],
      uOffsetMm: freedom.offset[warm ? 1 : 0] * period.periodMm,
      uTurn: freedom.turn[warm ? 1 : 0],
      radius: { value: radius.value, u: freedom.radius * radius.u },
      halfTaper: { value: halfTaper.value, u: freedom.radius * halfTaper.u },
    },
    warm?.scatterMm,
  );
}

/** What the fitting rests on, where its hex is seen. */
function restingOn({ hex }: SeatedThread): Pick<ThreadSolution, 'resting' | 'hexHalfWidthMm'> {
  const sure = hex.share > 0.5;
  return {
    resting: {
      on: sure ? 'hex' : 'unknown',
      heightMm: hex.heightMm,
      uMm: sure ? hex.uHeightMm * learntHeight : unknownHeight * hex.heightMm,
    },
    hexHalfWidthMm: sure ? hex.halfWidthMm : null,
  };
}

/** The hand, when the other one is less than a twentieth as likely at the same period. */
function handOf(best: RatedPeriod, crests: CrestLines): 'right' | 'left' | null {
  const apart = (2 * best.periodMm) / (2 * Math.PI * crests.radiusMm);
  return apart > 2.5 * Math.hypot(crests.uTurn, 0.006) ? best.hand : null;
}
