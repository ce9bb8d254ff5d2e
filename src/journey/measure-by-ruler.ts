import * as portable from '../quantity/portable-math';
import { ok, type Result, refuse } from '../quantity/result';
import type { GreyImage } from '../vision/grey-image';
import { rescaleCoordinate } from '../vision/pixel-scale';
import type { Vision } from '../vision/vision';
import { diagonal35Mm, type Photo } from './1-photo/photo';
import { photoBlur } from './2-card-pose/photo-blur';
import type { Reference } from './2-reference/reference';
import { axisHeightPrior } from './2-reference/rule-parallax';
import { ruleReference, rulerPx } from './2-reference/rule-reference';
import { photoView, type Suspect, suspects, viewIn } from './3-find/beside-rule';
import { ruleStrip } from './3-find/rule-strip';
import { photoAt } from './4-thread-signal/axis-frame';
import { type Found, isCutOff, threadAlong, threadsOn } from './4-thread-signal/beside-rule';
import { halfPitch } from './5-measurement/half-pitch';
import {
  type Distance,
  inMillimetres,
  type RulerShot,
  statedDistance,
  unknownDistance,
  withRuler,
} from './5-measurement/ruler-uncertainty';
import { solveThread } from './5-measurement/solve-thread';
import type { ThreadSolution } from './5-measurement/thread-solution';
import { withUncertainty } from './5-measurement/uncertainty';
import type { Measured, MeasureOptions, Note, RefusalReason, StageName } from './identification';
import type { CrestProfile, Overlay, PhotoPoint } from './overlay';
import { crestProfile, threadOverlay } from './overlay-of';

type Ruler = NonNullable<MeasureOptions['ruler']>;

/** All of an answer that comes before candidates. */
export type MeasuredByRuler = Pick<
  Measured,
  'reference' | 'measurement' | 'overlay' | 'profile' | 'notes'
>;

const fewestPx = 20;
/** A thread of 1 mm pitch needs about this, as with the card. */
const coarsestPxPerMm = 4;
const finestPxPerMm = 1000;
/** More pixels per millimetre than this say nothing new of a thread; the photo is reduced to it. */
const plentyPxPerMm = 28;
/** What takes the part of a millimetre: stages 3 and 4 know pitches from 0.7 to 3.4 of it, screws
 *  beside a rule have 0.4 to 6 mm. */
const unitsMm = [1, 0.5, 2];
const mostSolved = 5;
/** Edges this near belong to one thing. A thread that lies close to something else is seen alone only
 *  when the gap is small, and falls to pieces when its outline has faded: hence the second. */
const gapsMm = [2.5, 1];
/** What keeps to a thread: its outline (scatter about the fit, pitches) or its ridges (share of the
 *  brightness that repeats with the pitch). On the shared renders threads have 0.02 … 0.08 and 0.6 … 0.9,
 *  bright or tilted ones up to 0.3 with ridges as plain; lettering has no ridges. */
const threadScatter = 0.1;
const threadRidges = 0.5;
const plainRidges = 0.6;
const leastRidges = 0.15;
/** Fewer pixels to a pitch, and rows of anything pass for a thread. */
const fewestPxPerPitch = 6;
/** Half a pitch below 0.7 units is not examined: twice the pitch may have won. */
const doubtfulPitch = 1.4;

/** A thread on a photo without the card: two marked points a known distance apart give the scale in
 *  their plane, and nothing says where the camera was. */
export function measureByRuler(
  photo: Photo,
  ruler: Ruler,
  options: MeasureOptions,
  vision: Vision,
  enter: (stage: StageName) => void,
): Result<MeasuredByRuler, RefusalReason> {
  const marked = checked(photo.grey, ruler);
  if (!marked.ok) return marked;
  const pxPerMm = marked.value;

  enter('silhouette');
  const work = workPhoto(photo.grey, ruler, pxPerMm, vision);
  const { grey } = work;
  const blurPx = photoBlur(grey);
  const distance = distanceOf(photo, pxPerMm);
  const strip = ruleStrip(grey, work.from, work.to, work.pxPerMm);
  const flat = ruleReference(grey, work.pxPerMm, distance.mm, 1, blurPx);
  const view = photoView(grey, flat.camera, work.pxPerMm, vision);
  const axis = options.corrections?.axis ?? null;
  const seen = new Map<number, Suspect[]>();
  const things = (gapMm: number) => {
    const list = seen.get(gapMm) ?? suspects(view, grey, strip, vision, gapMm);
    seen.set(gapMm, list);
    return list;
  };
  const trials = (unitMm: number, gapMm: number): Trial[] => {
    const reference = ruleReference(grey, work.pxPerMm, distance.mm, unitMm, blurPx);
    const posed = { grey, camera: reference.camera };
    const threads = axis
      ? threadAlong(posed, [work.here(axis[0]), work.here(axis[1])], strip)
      : threadsOn(
          posed,
          viewIn(view, grey, reference.camera, unitMm),
          things(gapMm).filter(({ widthMm }) => suits(unitMm, widthMm)),
          strip,
          unitMm,
        );
    return threads.map((thread) => ({ ...thread, reference, unitMm }));
  };
  let best: Best = noThread;
  search: for (const gapMm of axis ? [0] : gapsMm) {
    // Millimetres first: the other units are for what does not fit them.
    for (const unitMm of unitsMm) {
      enter('thread-signal');
      const found = trials(unitMm, gapMm);
      enter('measurement');
      best = better(best, bestOf(grey, found));
      if (best.ok && isPlain(best.value)) break search;
    }
    if (best.ok) break;
  }
  if (!best.ok) return best;
  const { trial, solution } = best.value;
  const { reference, unitMm, field } = trial;
  // How high the axis lies is not known as with a card: it is taken out here, and estimated by withRuler.
  const { resting } = solution;
  const lighting = { field, flashFired: photo.flashFired };
  const level = { ...solution, resting: { ...resting, uMm: 0 } };
  const base = withUncertainty(reference, level, lighting, 0);
  const rangeMm = distance.mm / unitMm;
  const toFace = (unitMm * rangeMm) / (rangeMm - resting.heightMm);
  return ok({
    reference: {
      kind: 'rule',
      pxPerMm,
      axisHeightMm: null,
      cameraHeightMm: null,
      tiltDeg: null,
      field,
    },
    notes: notesOn(photo, field),
    measurement: withRuler(
      inMillimetres({ ...base, noseHalfAngleDeg: null, hand: handOf(solution, distance) }, toFace),
      shotOf(work, trial, solution, distance),
    ),
    overlay: overlayOn(photo, work, trial, solution, toFace),
    profile: profileInMm(crestProfile(solution), toFace),
  });
}

function notesOn({ f35Mm, flashFired }: Photo, field: Trial['field']): Note[] {
  const notes: Note[] = ['ruler-without-pose'];
  if (f35Mm === null) notes.push('no-focal-length');
  if (flashFired && field === 'light') notes.push('flash-fired');
  return notes;
}

interface Trial extends Found {
  readonly reference: Reference;
  readonly unitMm: number;
}

/** Pixels per mm, if the two marks can give a scale at all. */
function checked({ width, height }: GreyImage, ruler: Ruler): Result<number, RefusalReason> {
  const inside = ([x, y]: PhotoPoint) => x >= -0.5 && y >= -0.5 && x < width && y < height;
  if (!inside(ruler.from) || !inside(ruler.to))
    return refuse(
      'no-card',
      'Mark both points of the rule inside the photo, in its full-size pixels.',
    );
  const px = rulerPx(ruler);
  if (px < fewestPx)
    return refuse(
      'no-card',
      'Mark two graduations farther apart: best over the whole rule in view.',
    );
  const pxPerMm = px / ruler.mm;
  if (!(ruler.mm > 0) || pxPerMm > finestPxPerMm || pxPerMm * 2000 < Math.max(width, height))
    return refuse(
      'no-card',
      'The distance does not fit the photo: give the millimetres between the two marked graduations.',
    );
  if (pxPerMm < coarsestPxPerMm)
    return refuse(
      'too-coarse',
      'The thread has too few pixels: go nearer, or send the photo in full size.',
    );
  return ok(pxPerMm);
}

interface WorkPhoto {
  readonly grey: GreyImage;
  readonly pxPerMm: number;
  readonly from: PhotoPoint;
  readonly to: PhotoPoint;
  readonly here: (point: PhotoPoint) => PhotoPoint;
  readonly back: (point: PhotoPoint) => PhotoPoint;
}

function workPhoto(grey: GreyImage, ruler: Ruler, pxPerMm: number, vision: Vision): WorkPhoto {
  const factor = Math.min(1, plentyPxPerMm / pxPerMm);
  const width = Math.round(grey.width * factor);
  const height = Math.round(grey.height * factor);
  const small = factor < 1 ? vision.resize(grey, width, height) : grey;
  const here = ([x, y]: PhotoPoint): PhotoPoint => [
    rescaleCoordinate(x, grey.width, width),
    rescaleCoordinate(y, grey.height, height),
  ];
  const back = ([x, y]: PhotoPoint): PhotoPoint => [
    rescaleCoordinate(x, width, grey.width),
    rescaleCoordinate(y, height, grey.height),
  ];
  const from = here(ruler.from);
  const to = here(ruler.to);
  const px = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return { grey: small, pxPerMm: px / ruler.mm, from, to, here, back };
}

/** Small threads are sought in half millimetres, large ones in double ones. */
const suits = (unitMm: number, widthMm: number) =>
  unitMm === 1 ? widthMm > 3.5 : unitMm < 1 ? widthMm < 16 : widthMm > 14;

interface Solved {
  readonly trial: Trial;
  readonly solution: ThreadSolution;
  readonly scatter: number;
  readonly ridges: number;
}

type Best = Result<Solved, RefusalReason>;

/** Of the likeliest, the one that keeps to a thread best; the first plain one ends the search. */
function bestOf(grey: GreyImage, found: readonly Trial[]): Best {
  const likeliest = [...found].sort((a, b) => b.strength - a.strength).slice(0, mostSolved);
  let best: Best = noThread;
  for (const trial of likeliest) {
    if (isCutOff({ grey, camera: trial.reference.camera }, trial.place)) {
      best = better(best, cutOff);
      continue;
    }
    const solution = solvedOnce(grey, trial);
    if (!solution.ok) {
      if (solution.reason === 'too-few-turns') best = better(best, solution);
      continue;
    }
    const { fit, ridges, mmPerPx } = solution.value;
    const solved: Solved = {
      trial,
      solution: solution.value,
      scatter: fit.scatterMm / fit.pitchMm,
      ridges: ridges?.explained ?? 0,
    };
    if (fit.crestRadiusMm < fit.pitchMm || fit.pitchMm < fewestPxPerPitch * mmPerPx) continue;
    if (!isThread(solved)) continue;
    best = better(best, ok(solved));
    if (isPlain(solved)) break;
  }
  return best;
}

function solvedOnce(grey: GreyImage, { reference, place, field }: Trial) {
  const first = solveThread(grey, reference, place, field);
  // Where crest and root both shine the ridges alone say half a pitch: an outline that fits is believed.
  if (!first.ok || first.value.fit.scatterMm < threadScatter * first.value.fit.pitchMm)
    return first;
  const half = halfPitch({ grey, camera: reference.camera }, first.value);
  if (!half) return first;
  const zone = { ...place.zone, periodMm: half };
  return solveThread(grey, reference, { ...place, zone }, field);
}

/** A rule's own lines have the plainest ridges of all, but no outline. */
const isThread = ({ trial, scatter, ridges }: Solved) =>
  (scatter < threadScatter && ridges > leastRidges) || (ridges > threadRidges && !trial.likeRule);

const isPlain = ({ trial, solution, scatter, ridges }: Solved) =>
  ridges > plainRidges &&
  scatter < threadScatter &&
  !trial.likeRule &&
  (trial.unitMm < 1 || solution.fit.pitchMm > doubtfulPitch);

const merit = ({ scatter, ridges }: Solved) => ridges - 2 * Math.min(scatter, threadScatter);

/** A thread beats a refusal, and a refusal that knows why beats one that does not. */
function better(a: Best, b: Best): Best {
  if (a.ok && b.ok) return merit(b.value) > merit(a.value) ? b : a;
  if (a.ok !== b.ok) return a.ok ? a : b;
  return !a.ok && a.reason === 'no-thread' ? b : a;
}

const noThread = refuse(
  'no-thread' as const,
  'No thread is seen beside the rule: lay it on a plain surface a little off the rule, in full view, or draw its axis.',
);
const cutOff = refuse(
  'cut-off' as const,
  'The thread runs out of the photo: show all of it, with the rule beside it.',
);

/** From the rule's face to the camera, if it looked straight down. A crop behind EXIF's back makes it
 *  seem nearer than it was. */
function distanceOf({ grey, f35Mm }: Photo, pxPerMm: number): Distance {
  if (f35Mm === null) return unknownDistance;
  const mm = ((f35Mm / diagonal35Mm) * Math.hypot(grey.width, grey.height)) / pxPerMm;
  return statedDistance(mm);
}

/** The two outlines are half a turn apart less 2·asin(R/distance): without the distance, either hand fits. */
const handOf = ({ hand }: ThreadSolution, distance: Distance) =>
  distance === unknownDistance ? null : hand;

function shotOf(
  work: WorkPhoto,
  trial: Trial,
  solution: ThreadSolution,
  distance: Distance,
): RulerShot {
  const { reference, unitMm } = trial;
  const { fit, frame, middleS } = solution;
  const middle = photoAt(reference.camera, frame, middleS, 0);
  const apart = Math.hypot(
    middle[0] - (work.from[0] + work.to[0]) / 2,
    middle[1] - (work.from[1] + work.to[1]) / 2,
  );
  const [dx, dy] = [work.to[0] - work.from[0], work.to[1] - work.from[1]];
  const along = (dx * frame.along[0] + dy * frame.along[1]) / Math.hypot(dx, dy);
  const widestMm = solution.hexHalfWidthMm === null ? null : solution.hexHalfWidthMm * unitMm;
  const radiusMm = fit.crestRadiusMm * unitMm;
  return {
    rulerPx: Math.hypot(dx, dy),
    markPx: 1,
    distance,
    radiusMm,
    axisMm: axisHeightPrior(2 * radiusMm, widestMm),
    furthestMm: Math.max(radiusMm, widestMm ?? 0),
    apartMm: apart / work.pxPerMm,
    angleRad: portable.acos(Math.min(1, Math.abs(along))),
  };
}

function overlayOn(
  photo: Photo,
  work: WorkPhoto,
  trial: Trial,
  solution: ThreadSolution,
  toMm: number,
): Overlay {
  const drawn = threadOverlay({ ...photo, grey: work.grey }, trial.reference, solution);
  const line = ([a, b]: readonly [PhotoPoint, PhotoPoint]) => [work.back(a), work.back(b)] as const;
  return {
    widthPx: photo.grey.width,
    heightPx: photo.grey.height,
    markers: [],
    reference: [],
    outline: drawn.outline.map((points) => points.map(work.back)),
    axis: drawn.axis && line(drawn.axis),
    contactLines: drawn.contactLines.map(line),
    crests: drawn.crests.map((crest) => ({
      ...crest,
      at: work.back(crest.at),
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
