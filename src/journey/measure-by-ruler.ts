import * as portable from '../quantity/portable-math';
import { ok, type Result, refuse } from '../quantity/result';
import type { Vision } from '../vision/vision';
import type { Photo } from './1-photo/photo';
import { axisHeightPrior } from './2-reference/rule-parallax';
import { type RulePhoto, rulePhoto } from './2-reference/rule-photo';
import { runsOut } from './4-limbs/find-thread';
import { seatedAgain } from './4-limbs/lens-by-thread';
import { type SeatBesideRule, seatBesideRule } from './4-limbs/seat-beside-rule';
import { photoAt } from './4-thread-signal/axis-frame';
import { bothSidesSpeak } from './5-measurement/follow-fit';
import { inMillimetres, type RulerShot, withRuler } from './5-measurement/ruler-uncertainty';
import { solveSeated } from './5-measurement/solve-seated';
import type { ThreadSolution } from './5-measurement/thread-solution';
import { withUncertainty } from './5-measurement/uncertainty';
import type {
  Measured,
  MeasureOptions,
  Note,
  RefusalReason,
  Ruler,
  StageName,
} from './identification';
import type { CrestProfile, Overlay, PhotoPoint } from './overlay';
import { crestProfile, threadOverlay } from './overlay-of';

/** All of an answer that comes before candidates. */
export type MeasuredByRuler = Pick<
  Measured,
  'reference' | 'measurement' | 'overlay' | 'profile' | 'notes'
>;

/** A thread on a photo without the card: two marked points a known distance apart give the scale in
 *  their plane, and nothing says where the camera was. */
export function measureByRuler(
  photo: Photo,
  ruler: Ruler,
  options: MeasureOptions,
  vision: Vision,
  enter: (stage: StageName) => void,
): Result<MeasuredByRuler, RefusalReason> {
  enter('silhouette');
  const scaled = rulePhoto(photo, ruler, vision);
  if (!scaled.ok) return scaled;
  const shot = scaled.value;
  enter('thread-signal');
  const { axis, side } = options.corrections ?? { axis: null, side: 'both' };
  const drawn = axis && ([shot.here(axis[0]), shot.here(axis[1])] as const);
  const found = seatBesideRule(shot, drawn, vision);
  if (!found || (!drawn && found.seat.odds < 0)) return noThread;
  if (runsOut(shot.grey, found.reference.camera, found.seat)) return cutOff;

  enter('measurement');
  const { reference, unitMm, field } = found;
  const { grey, distance } = shot;
  const { seat } = seatedAgain(grey, reference, found.seat);
  const solved = solveSeated({ grey, card: reference, seat, field, sides: side });
  if (!solved.ok) return solved;
  const solution = solved.value;
  // How high the axis lies is not known as with a card: it is taken out here, and estimated by withRuler.
  const { resting } = solution;
  const lighting = { field, flashFired: photo.flashFired };
  const level = { ...solution, resting: { ...resting, uMm: 0 } };
  const seen = { ...withUncertainty(reference, level, lighting, 0), noseHalfAngleDeg: null };
  const rangeMm = distance.mm / unitMm;
  const toFace = (unitMm * rangeMm) / (rangeMm - resting.heightMm);
  // The two outlines are half a turn apart less 2·asin(R/distance): without the distance, either hand fits.
  const hand = distance.stated ? solution.hand : null;
  return ok({
    reference: {
      kind: 'rule',
      pxPerMm: shot.pxPerMm * (photo.grey.width / grey.width),
      axisHeightMm: null,
      cameraHeightMm: null,
      tiltDeg: null,
      field,
    },
    notes: notesOn(photo, found, solution),
    measurement: withRuler(inMillimetres({ ...seen, hand }, toFace), shotOf(shot, found, solution)),
    overlay: overlayOn(photo, shot, found, solution, toFace),
    profile: profileInMm(crestProfile(solution), toFace),
  });
}

function notesOn(
  { f35Mm, flashFired }: Photo,
  { field }: SeatBesideRule,
  { points, fit }: ThreadSolution,
): Note[] {
  const notes: Note[] = ['ruler-without-pose'];
  if (f35Mm === null) notes.push('no-focal-length');
  if (flashFired && field === 'light') notes.push('flash-fired');
  if (!bothSidesSpeak(points, fit)) notes.push('one-side-only');
  return notes;
}

const noThread = refuse(
  'no-thread' as const,
  'No thread is seen beside the rule: lay it on a plain surface a little off the rule, in full view, or draw its axis.',
);
const cutOff = refuse(
  'cut-off' as const,
  'The thread runs out of the photo: show all of it, with the rule beside it.',
);

function shotOf(
  { from, to, distance, pxPerMm }: RulePhoto,
  { reference, unitMm }: SeatBesideRule,
  { fit, frame, middleS, hexHalfWidthMm }: ThreadSolution,
): RulerShot {
  const middle = photoAt(reference.camera, frame, middleS, 0);
  const apart = Math.hypot(middle[0] - (from[0] + to[0]) / 2, middle[1] - (from[1] + to[1]) / 2);
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const along = (dx * frame.along[0] + dy * frame.along[1]) / Math.hypot(dx, dy);
  const widestMm = hexHalfWidthMm === null ? null : hexHalfWidthMm * unitMm;
  const radiusMm = fit.crestRadiusMm * unitMm;
  return {
    rulerPx: Math.hypot(dx, dy),
    markPx: 1,
    distance,
    radiusMm,
    axisMm: axisHeightPrior(2 * radiusMm, widestMm),
    furthestMm: Math.max(radiusMm, widestMm ?? 0),
    apartMm: apart / pxPerMm,
    angleRad: portable.acos(Math.min(1, Math.abs(along))),
  };
}

function overlayOn(
  photo: Photo,
  { grey, back }: RulePhoto,
  { reference }: SeatBesideRule,
  solution: ThreadSolution,
  toMm: number,
): Overlay {
  const drawn = threadOverlay({ ...photo, grey }, reference, solution);
  const line = ([a, b]: readonly [PhotoPoint, PhotoPoint]) => [back(a), back(b)] as const;
  return {
    widthPx: photo.grey.width,
    heightPx: photo.grey.height,
    markers: [],
    reference: [],
    outline: drawn.outline.map((points) => points.map(back)),
    axis: drawn.axis && line(drawn.axis),
    contactLines: drawn.contactLines.map(line),
    crests: drawn.crests.map((crest) => ({
      ...crest,
      at: back(crest.at),
      axialMm: crest.axialMm * toMm,
    })),
  };
}

function profileInMm(seen: CrestProfile, unitMm: number): CrestProfile {
  const scaled = (list: readonly number[]) => list.map((v) => v * unitMm);
  const gappy = (list: readonly (number | null)[]) =>
    list.map((v) => (v === null ? null : v * unitMm));
  return {
    axialMm: scaled(seen.axialMm),
    leftMm: gappy(seen.leftMm),
    rightMm: gappy(seen.rightMm),
    leftFitMm: scaled(seen.leftFitMm),
    rightFitMm: scaled(seen.rightFitMm),
  };
}
