import type { Estimate } from '../../quantity/estimate';
import { ok, type Result, refuse } from '../../quantity/result';
import type { Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';
import type { PosedCard } from '../2-card-pose/pose-from-markers';
import { type AxisFrame, axisThrough, onAxisPlane, photoAt } from '../4-thread-signal/axis-frame';
import { type OutlinePoint, outlineEdges, placed, type Side } from '../4-thread-signal/outline-edges';
import { ridgePitch, type RidgeFit, unroll } from '../4-thread-signal/ridges';
import type { ThreadPlace } from '../4-thread-signal/thread-place';
import { fitThread, type ThreadFit } from './fit-thread';
import { type Resting, widestHalfWidth } from './hex-height';
import { startPeriod } from './start-period';

const sides = ['left', 'right'] as const satisfies readonly Side[];

/** Everything stage 5 knows of one thread; uncertainty.ts turns it into a measurement. */
export interface ThreadSolution {
  readonly frame: AxisFrame;
  readonly resting: Resting;
  readonly hexHalfWidthMm: number | null;
  readonly fit: ThreadFit;
  readonly ridges: RidgeFit | null;
  readonly points: readonly OutlinePoint[];
  readonly zone: { readonly fromS: number; readonly toS: number };
  readonly middleS: number;
  readonly mmPerPx: number;
  /** Which way the helix climbs, when one way explains the outline clearly better. */
  readonly hand: 'right' | 'left' | null;
}

/** Half the flank angle of the forms: 30° (ISO 68-1, ASME B1.1, NPT), 27.5° (ISO 228-1, ISO 7-1). */
const halfAngleRad = (29 * Math.PI) / 180;
/** Depth below the crests at which a thread's brightness pattern sits, pitches: between crest and
 *  root, shading decides; half of the flank is what light and dark have in common. */
const ridgeDepth = { value: 0.4, u: 0.13 };

export function solveThread(
  grey: GreyImage,
  card: PosedCard,
  place: ThreadPlace,
  field: Field,
): Result<ThreadSolution, 'no-thread' | 'too-few-turns'> {
  const { camera } = card;
  let frame = place.frame;
  let zone = { fromS: place.zone.fromS, toS: place.zone.toS };
  const mmPerPx = scaleAt(camera, frame, zone);
  const reachMm = Math.max(place.zone.reachLeftMm, place.zone.reachRightMm);
  const first = pitchFromRidges(grey, camera, frame, zone, reachMm, 0, place.zone.periodMm, mmPerPx);
  if (!first) return refuse('no-thread', noThread);
  const low = Math.min(place.zone.reachLeftMm, place.zone.reachRightMm) - 1.2 * first.pitchMm;
  const wide = () => ({ fromR: Math.max(1, low), toR: reachMm + 0.6 });
  const edges = (band: (side: Side) => (s: number) => { fromR: number; toR: number }) =>
    sides.flatMap((side) =>
      outlineEdges(grey, camera, frame, side, zone, band(side), mmPerPx, field),
    );
  let points = edges(() => wide);
  const middle = () => (zone.fromS + zone.toS) / 2;
  const pitches = Array.from({ length: 21 }, (_, i) => first.pitchMm * (1 + 0.0015 * (i - 10)));
  const start = points.length > 40 ? startPeriod(points, middle(), pitches) : null;
  if (!start) return refuse('no-thread', noThread);

  let ridges: RidgeFit | null = first;
  let hand: 1 | -1 = 1;
  let resting: Resting = { on: 'unknown', heightMm: -frame.origin[2], uMm: 0.5 };
  let hexHalfWidthMm: number | null = null;
  const solve = (from: typeof start, handed: 1 | -1) =>
    fitThread(points, middle(), from, {
      blurMm: card.blurPx * mmPerPx,
      halfAngleRad,
      handed,
      ridges: ridges && ridgeEstimate(camera, frame, ridges, reachMm),
    });
  let fit = better(solve(start, 1), solve(start, -1));
  let other = fit.rival;
  hand = fit.hand;
  for (let round = 0; round < 3; round++) {
    // The two sides put the axis in their middle, the widest part puts it at its height.
    frame = recentred(camera, frame, fit.fit, middle());
    const hex = widestHalfWidth(grey, camera, frame, place, mmPerPx, field);
    if (hex && hex.mm > 1.03 * fit.fit.crestRadiusMm) {
      const h = (Math.sqrt(3) / 2) * hex.mm;
      resting = { on: 'hex', heightMm: h, uMm: Math.hypot(0.866 * hex.uMm, 0.004 * h) };
      hexHalfWidthMm = hex.mm;
    }
    frame = atAxisHeight(camera, frame, resting.heightMm, zone);
    zone = round === 0 ? extended(fit.fit, place, zone) : zone;
    const current = fit.fit;
    const shift = middle() - current.middleS;
    const band = (side: Side) => (s: number) => {
      const r = current.modelAt(side, s, slopeAt(points, s)) - offsetAt(current, side, s);
      const reach = 0.32 * current.pitchMm + 2 * mmPerPx;
      return { fromR: r - reach, toR: r + reach };
    };
    points = edges(band);
    ridges = pitchFromRidges(
      grey,
      camera,
      frame,
      zone,
      current.crestRadiusMm + current.halfTaper * shift,
      current.halfTaper,
      current.pitchMm,
      mmPerPx,
    );
    if (points.length < 40) return refuse('no-thread', noThread);
    const from = continued(current, middle());
    const a = solve(from, 1);
    const b = solve(from, -1);
    fit = better(a, b);
    other = fit.rival;
    hand = fit.hand;
  }
  const turns = (zone.toS - zone.fromS) / fit.fit.pitchMm;
  if (turns < 3)
    return refuse('too-few-turns', 'Show at least four turns of the thread, unobstructed.');
  const clear = other.scatterMm > 1.12 * fit.fit.scatterMm;
  return ok({
    frame,
    resting,
    hexHalfWidthMm,
    fit: fit.fit,
    ridges,
    points,
    zone,
    middleS: middle(),
    mmPerPx,
    hand: clear ? (hand === 1 ? 'right' : 'left') : null,
  });
}

const noThread =
  'Lay the fitting in the card’s window with its thread in full view, and shoot from above.';

function better(a: ThreadFit, b: ThreadFit): { fit: ThreadFit; rival: ThreadFit; hand: 1 | -1 } {
  return a.scatterMm <= b.scatterMm
    ? { fit: a, rival: b, hand: 1 }
    : { fit: b, rival: a, hand: -1 };
}

function scaleAt(camera: PosedCamera, frame: AxisFrame, zone: { fromS: number; toS: number }) {
  const a = photoAt(camera, frame, zone.fromS, 0);
  const b = photoAt(camera, frame, zone.toS, 0);
  return (zone.toS - zone.fromS) / Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** Half of a found period is the pitch when it explains the pattern as well. */
function pitchFromRidges(
  grey: GreyImage,
  camera: PosedCamera,
  frame: AxisFrame,
  zone: { fromS: number; toS: number },
  radiusMm: number,
  halfTaper: number,
  periodMm: number,
  mmPerPx: number,
): RidgeFit | null {
  const middleS = (zone.fromS + zone.toS) / 2;
  const fitNear = (p: number, span: number) => {
    const surface = { radiusMm: radiusMm - ridgeDepth.value * p, halfTaper, middleS };
    return ridgePitch(unroll(grey, camera, frame, zone, surface, mmPerPx, p), p, span);
  };
  const one = fitNear(periodMm * 0.97, 0.07);
  const half = periodMm / 2 > 0.7 ? fitNear(periodMm * 0.485, 0.07) : null;
  if (!one || !half) return one ?? half;
  return half.explained > one.explained - 0.02 ? half : one;
}

/** Ridges lie on a cylinder whose radius is uncertain by part of the thread's depth: nearer to the
 *  camera everything looks larger. */
function ridgeEstimate(
  camera: PosedCamera,
  frame: AxisFrame,
  ridges: RidgeFit,
  radiusMm: number,
): Estimate {
  const range = frame.origin[2] - camera.centre[2];
  const depth = (ridgeDepth.u * ridges.pitchMm) / (range - radiusMm);
  // 0.12 %: highlights move along the flanks as the view turns from one end to the other.
  return {
    value: ridges.pitchMm,
    u: ridges.pitchMm * Math.hypot((1.5 * ridges.uMm) / ridges.pitchMm, 0.8 * depth, 0.0012),
  };
}

function recentred(
  camera: PosedCamera,
  frame: AxisFrame,
  fit: ThreadFit,
  middleS: number,
): AxisFrame {
  const at = (s: number) =>
    photoAt(camera, frame, s, fit.axisOffsetMm + fit.axisTurn * (s - middleS));
  const o = onAxisPlane(frame, 0, 0);
  const turned = axisThrough(camera, at(middleS - 20), at(middleS + 20), -o[2]);
  return sameOrigin(turned, frame);
}

function atAxisHeight(
  camera: PosedCamera,
  frame: AxisFrame,
  heightMm: number,
  zone: { fromS: number; toS: number },
): AxisFrame {
  const turned = axisThrough(
    camera,
    photoAt(camera, frame, zone.fromS, 0),
    photoAt(camera, frame, zone.toS, 0),
    heightMm,
  );
  const d = turned.along;
  const o = turned.origin;
  return {
    ...turned,
    origin: [o[0] - zone.fromS * d[0], o[1] - zone.fromS * d[1], o[2] - zone.fromS * d[2]],
  };
}

/** Moves a frame's origin along its axis to where another frame has it. */
function sameOrigin(frame: AxisFrame, like: AxisFrame): AxisFrame {
  const { origin: o, along: d } = frame;
  const k =
    (like.origin[0] - o[0]) * d[0] + (like.origin[1] - o[1]) * d[1] + (like.origin[2] - o[2]) * d[2];
  return { ...frame, origin: [o[0] + k * d[0], o[1] + k * d[1], o[2] + k * d[2]] };
}

const offsetAt = (fit: ThreadFit, side: Side, s: number) =>
  (side === 'left' ? 1 : -1) * (fit.axisOffsetMm + fit.axisTurn * (s - fit.middleS));

/** Slope of the view near s, from the points there. */
function slopeAt(points: readonly OutlinePoint[], s: number): number {
  const first = points[0];
  const last = points[points.length - 1];
  const a = points.reduce((best, q) => (Math.abs(q.s - s) < Math.abs(best.s - s) ? q : best), first);
  return a?.slope ?? last?.slope ?? 0;
}

function continued(fit: ThreadFit, middleS: number) {
  const t = middleS - fit.middleS;
  const amplitudeMm = 0.27 * fit.pitchMm;
  const level = fit.crestRadiusMm + fit.halfTaper * t - 0.9 * amplitudeMm;
  return {
    pitchMm: fit.pitchMm,
    crestS: fit.crestS,
    left: [level, fit.halfTaper] as const,
    right: [level, fit.halfTaper] as const,
    amplitudeMm,
    explained: 1,
  };
}

/** The zone grown tooth by tooth while the outline keeps to the fitted thread on a side, and cut
 *  where it does not: run-outs, chamfers and relief end it, not a constant. */
function extended(
  _fit: ThreadFit,
  _place: ThreadPlace,
  zone: { fromS: number; toS: number },
): { fromS: number; toS: number } {
  return zone;
}

export { placed };
