import { ok, type Result, refuse } from '../../quantity/result';
import type { Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { PosedCard } from '../2-card-pose/pose-from-markers';
import { type AxisFrame, type Extent, middleOf } from '../4-thread-signal/axis-frame';
import { atHeight, mmPerPxAt, recentred } from '../4-thread-signal/axis-moves';
import {
  type OutlinePoint,
  type OutlineView,
  outlineEdges,
  type SearchBand,
  type Side,
} from '../4-thread-signal/outline-edges';
import { type RidgeFit, ridgeDepth, ridgePitch, ridgePresence } from '../4-thread-signal/ridges';
import { usualRim } from '../4-thread-signal/rim-edge';
import { hexRatio, type ThreadPlace } from '../4-thread-signal/thread-place';
import { unrollLight } from '../4-thread-signal/unrolled-light';
import type { Cone } from '../4-thread-signal/unrolled-surface';
import { chooseStart, fewestEdges } from './choose-start';
import { crestRim } from './crest-rim';
import { fitAsMade } from './fit-as-made';
import { fitThread, type ThreadFit } from './fit-thread';
import { bandAbout, bothSidesSpeak, continued } from './follow-fit';
import { closer, contrastOf, handOf } from './hand';
import { lampShadow } from './lamp-shadow';
import { ridgeEstimate } from './ridge-estimate';
import type { PeriodStart } from './start-period';
import { completeTurns, grownWhile, outlineAgrees } from './thread-extent';
import { anyForm, type ThreadForm } from './thread-form';
import type { ThreadSolution } from './thread-solution';
import { type Resting, widestHalfWidth } from './widest-part';

const rounds = 3;

type Refusal = 'no-thread' | 'too-few-turns';

/** What stays the same while one thread is solved. */
interface Task {
  readonly view: OutlineView;
  readonly blurPx: number;
  readonly place: ThreadPlace;
  /** Crest radius as far as ridges or texture reach. */
  readonly reachMm: number;
}

/** Where a thread is taken to lie, and what is seen of it there. */
interface Sight {
  readonly frame: AxisFrame;
  readonly zone: Extent;
  readonly points: readonly OutlinePoint[];
  readonly ridges: RidgeFit | null;
}

/** One fit a hand; null once a hand is out of the question. */
interface Hands {
  readonly right: ThreadFit | null;
  readonly left: ThreadFit | null;
}

/** What is known after a round. */
interface Solved extends Sight, Hands {
  /** The closer of the two. */
  readonly fit: ThreadFit;
  readonly resting: Resting;
  readonly hexHalfWidthMm: number | null;
}

export function solveThread(
  grey: GreyImage,
  card: PosedCard,
  place: ThreadPlace,
  field: Field,
): Result<ThreadSolution, Refusal> {
  const task = taskOf(grey, card, place, field);
  let solved = begun(task);
  for (let round = 0; solved && round < rounds; round++) solved = nextRound(task, solved, round);
  if (!solved) return refuse('no-thread', noThread);
  const { zone, fit } = solved;
  if ((zone.toS - zone.fromS) / fit.pitchMm < 3)
    return refuse('too-few-turns', 'Show at least four turns of the thread, unobstructed.');
  return ok(finished(task, solved));
}

function taskOf(grey: GreyImage, card: PosedCard, place: ThreadPlace, field: Field): Task {
  const { camera, response, blurPx } = card;
  const mmPerPx = mmPerPxAt(camera, place.frame, place.zone);
  const { reachLeftMm, reachRightMm } = place.zone;
  return {
    view: { grey, camera, response, mmPerPx, field },
    blurPx,
    place,
    reachMm: place.envelopeMm ?? Math.max(reachLeftMm, reachRightMm),
  };
}

/** Period and both hands from a wide look about the place; null where there is no thread. */
function begun(task: Task): Solved | null {
  const { view, place, reachMm } = task;
  const { frame, envelopeMm } = place;
  const zone: Extent = { fromS: place.zone.fromS, toS: place.zone.toS };
  const middleS = middleOf(zone);
  const { reachLeftMm, reachRightMm, periodMm } = place.zone;
  const lowest = envelopeMm ?? Math.min(reachLeftMm, reachRightMm);
  const points = edges(task, frame, zone, () => () => ({
    fromR: Math.max(1, lowest - (envelopeMm ? 0.85 : 1.2) * periodMm),
    toR: reachMm + (envelopeMm ? 0.4 : 0.6),
  }));
  const surface = { radiusMm: reachMm, halfTaper: 0, middleS };
  // The spectrum magnifies: ridges lie nearer to the camera than the axis.
  const start = chooseStart(
    [periodMm * 0.97, periodMm * 0.485]
      .filter((p) => p > 0.68)
      .map((p) => ridgesNear(view, { frame, zone }, surface, p, 0.07)),
    points,
    middleS,
  );
  if (!start) return null;
  const sight = { frame, zone, points, ridges: start.ridges };
  const right = solve(task, sight, { start: start.start, handed: 1 });
  const left = solve(task, sight, { start: start.start, handed: -1 });
  return {
    ...sight,
    right,
    left,
    fit: closer(right, left),
    resting: { on: 'unknown', heightMm: -frame.origin[2], uMm: 0.5 },
    hexHalfWidthMm: null,
  };
}

/** Axis, zone, ridges and hands once more, each from the fit before; null where too little is left. */
function nextRound(task: Task, before: Solved, round: number): Solved | null {
  const { fit } = before;
  const last = round === rounds - 1;
  // Beside black, metal fades inwards for other reasons too.
  const rim =
    last && task.view.field === 'light'
      ? crestRim(task.view, before.frame, before.points, fit)
      : undefined;
  const { frame, ...rests } = axisAgain(task, before);
  const near = bandAbout(
    fit,
    task.view.camera,
    before.frame,
    0.32 * fit.pitchMm + 2 * task.view.mmPerPx,
  );
  let { zone } = before;
  let points: readonly OutlinePoint[];
  if (last) points = edges(task, frame, zone, near, rim);
  else {
    const limits = limitsOf(task.place, fit.pitchMm);
    const beyond = edges(task, frame, limits, near);
    zone = grownZone(task.view, { frame, zone, limits }, fit, beyond);
    points = within(zone, beyond);
  }
  if (round > 0) {
    zone = completeTurns(points, fit, zone);
    points = within(zone, points);
  }
  if (points.length < fewestEdges) return null;
  const seen = { frame, zone: inner(zone, fit.pitchMm) };
  const ridges = ridgesNear(task.view, seen, surfaceOf(fit), fit.pitchMm, 0.015);
  const sight = { frame, zone, points, ridges };
  const hands = bothHands(task, sight, before);
  return { ...sight, ...rests, ...hands, fit: closer(hands.right, hands.left) };
}

/** The two sides put the axis in their middle; the widest part puts it at its height. */
function axisAgain(
  { view, place }: Task,
  { points, fit, zone, ...before }: Solved,
): Pick<Solved, 'frame' | 'resting' | 'hexHalfWidthMm'> {
  const { camera } = view;
  let { frame, resting, hexHalfWidthMm } = before;
  if (bothSidesSpeak(points, fit))
    frame = recentred(camera, frame, fit.middleS, fit.axisOffsetMm, fit.axisTurn);
  const hex = widestHalfWidth(view, frame, place);
  if (hex && hex.mm > 1.03 * fit.crestRadiusMm) {
    const heightMm = hexRatio * hex.mm;
    resting = { on: 'hex', heightMm, uMm: Math.hypot(hexRatio * hex.uMm, 0.004 * heightMm) };
    hexHalfWidthMm = hex.mm;
  }
  return { frame: atHeight(camera, frame, resting.heightMm, zone), resting, hexHalfWidthMm };
}

/** The zone as far as outline and ridges both go on. */
function grownZone(
  view: OutlineView,
  { frame, zone, limits }: Pick<Sight, 'frame' | 'zone'> & { readonly limits: Extent },
  fit: ThreadFit,
  beyond: readonly OutlinePoint[],
): Extent {
  const unrolled = unrollLight(view, frame, limits, deepened(surfaceOf(fit), fit.pitchMm), {
    mmPerPx: view.mmPerPx,
    periodMm: fit.pitchMm,
  });
  const presence = ridgePresence(unrolled, fit.pitchMm, zone);
  const seated = { ...fit, modelAt: centredModel(fit) };
  return grownWhile(
    (a, b) =>
      outlineAgrees(beyond, seated, a, b) &&
      presence.some((q) => q.s >= a - 1e-9 && q.s < b && q.presence > 0.25),
    zone,
    limits,
    fit.pitchMm,
  );
}

/** A hand that the ridges rule out is dropped. */
function bothHands(task: Task, sight: Sight, before: Solved): Hands {
  const start = continued(before.fit, middleOf(sight.zone));
  let { right, left } = before;
  const climbs = sight.ridges && handOf(sight.ridges.helix);
  if (climbs && right && left) [right, left] = climbs === 'right' ? [right, null] : [null, left];
  // A hand that fits clearly worse need not be asked again either.
  const contrast = contrastOf(right, left);
  if (right && contrast < 1.25) right = solve(task, sight, { start, handed: 1, warm: right });
  if (left && contrast > 0.8) left = solve(task, sight, { start, handed: -1, warm: left });
  return { right, left };
}

function finished(task: Task, { right, left, fit, ...solved }: Solved): ThreadSolution {
  const { frame, zone, ridges, resting, hexHalfWidthMm } = solved;
  const handed = fit === right ? 1 : -1;
  const middleS = middleOf(zone);
  const made = fitAsMade(solved.points, fit, (points, warm, form) =>
    solve(task, { ...solved, points }, { start: continued(warm, middleS), handed, warm }, form),
  );
  const contrast = contrastOf(right, left);
  return {
    frame,
    resting,
    hexHalfWidthMm,
    ...made,
    lampShadow: lampShadow(task.view, frame, made.points, made.fit),
    ridges,
    zone,
    middleS,
    mmPerPx: task.view.mmPerPx,
    known: null,
    hand: contrast < 0.9 ? 'right' : contrast > 1.11 ? 'left' : null,
  };
}

const within = ({ fromS, toS }: Extent, points: readonly OutlinePoint[]) =>
  points.filter((q) => q.s >= fromS && q.s <= toS);

const edges = (
  { view }: Task,
  frame: AxisFrame,
  zone: Extent,
  band: (side: Side) => SearchBand,
  rim = usualRim[view.field],
): OutlinePoint[] =>
  (['left', 'right'] as const).flatMap((side) =>
    outlineEdges(view, frame, { side, zone, band: band(side) }, rim),
  );

const ridgesNear = (
  view: OutlineView,
  { frame, zone }: Pick<Sight, 'frame' | 'zone'>,
  surface: Cone,
  pitchMm: number,
  span: number,
): RidgeFit | null =>
  ridgePitch(
    unrollLight(view, frame, zone, deepened(surface, pitchMm), {
      mmPerPx: view.mmPerPx,
      periodMm: pitchMm,
    }),
    pitchMm,
    span,
  );

/** The outline fitted as a thread of one hand, going on from another fit where there is one. */
function solve(
  { view, blurPx, place, reachMm }: Task,
  { frame, zone, points, ridges }: Sight,
  from: { readonly start: PeriodStart; readonly handed: 1 | -1; readonly warm?: ThreadFit },
  form: ThreadForm = anyForm,
): ThreadFit {
  const { start, handed, warm } = from;
  const { camera, mmPerPx } = view;
  const looked = { radiusMm: reachMm, scatterMm: warm?.scatterMm ?? 0 };
  return fitThread(
    points,
    middleOf(zone),
    start,
    {
      blurMm: blurPx * mmPerPx,
      form,
      handed,
      ridges: ridges && ridgeEstimate(ridges, view, { frame, zone }, looked),
      mmPerPx,
      // Perspective widens the band that is seen in the axis plane.
      rangeMm: frame.origin[2] - camera.centre[2],
      uOffsetMm: warm ? 0.25 : 0.6,
      uTurn: warm ? 0.01 : 0.02,
      radius: place.envelopeMm ? { value: place.envelopeMm, u: 0.25 } : null,
    },
    warm?.scatterMm,
  );
}

/** Ridges near the ends lie on chamfer and run-out, deeper than the rest, and so seem elsewhere. */
function inner(zone: Extent, pitchMm: number): Extent {
  const spare = Math.max(0, (zone.toS - zone.fromS) / pitchMm - 4.5) / 2;
  const trim = Math.min(0.75, spare) * pitchMm;
  return { fromS: zone.fromS + trim, toS: zone.toS - trim };
}

const noThread =
  'Lay the fitting in the card’s window with its thread in full view, and shoot from above.';

const surfaceOf = (fit: ThreadFit): Cone => ({
  radiusMm: fit.crestRadiusMm,
  halfTaper: fit.halfTaper,
  middleS: fit.middleS,
});

const deepened = (surface: Cone, pitchMm: number): Cone => ({
  ...surface,
  radiusMm: surface.radiusMm - ridgeDepth.value * pitchMm,
});

/** Threads may run from the free end to the hex. */
function limitsOf(place: ThreadPlace, pitchMm: number): Extent {
  const hex = place.widest.fromS;
  const middle = middleOf(place.zone);
  return { fromS: -pitchMm, toS: hex > middle + pitchMm ? hex : place.lengthMm };
}

/** The model about its own centre line, for outlines already placed on it. */
const centredModel =
  (fit: ThreadFit) =>
  (side: Side, s: number, slope: number): number => {
    const offset = fit.axisOffsetMm + fit.axisTurn * (s - fit.middleS);
    return fit.modelAt(side, s, slope) - (side === 'left' ? offset : -offset);
  };
