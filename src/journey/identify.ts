import { ok, type Result, refuse } from '../quantity/result';
import { card } from '../scale-card/geometry';
import type { GreyImage } from '../vision/grey-image';
import type { Vision } from '../vision/vision';
import type { Decoders, Photo } from './1-photo/photo';
import { readPhoto } from './1-photo/read-photo';
import { findReference } from './2-reference/find-reference';
import type { Reference } from './2-reference/reference';
import { type FoundFitting, fieldAround, findFitting } from './3-find/find-fitting';
import { likelierBore } from './4-bore/likelier-bore';
import { isAnotherBeside } from './4-bore/several-bores';
import { cutWithinWindow, searchThread, showsWindow, threadFound } from './4-limbs/find-thread';
import { seatedAgain } from './4-limbs/lens-by-thread';
import { otherEnd } from './4-limbs/other-end';
import type { SeatedThread } from './4-limbs/seat-thread';
import { isAnotherThread, severalFittings } from './4-limbs/several-fittings';
import { bothSidesSpeak } from './5-measurement/follow-fit';
import type { ThreadSolution } from './5-measurement/thread-solution';
import { uncheckedPrint } from './5-measurement/uncertainty';
import { conclude } from './7-next-reading/conclude';
import type { ShownFeature } from './end-features';
import type {
  Identification,
  Measured,
  MeasureOptions,
  Note,
  OnStage,
  RefusalReason,
  Refused,
} from './identification';
import { measureBore } from './measure-bore';
import { measureByRuler } from './measure-by-ruler';
import { type EndShot, measureEnd } from './measure-end';
import { axisOverlay, crestProfile, referenceOverlay, threadOverlay } from './overlay-of';
import { stopwatch } from './stopwatch';
import { crestHeights } from './wear/crest-heights';

export interface Tools {
  readonly vision: Vision;
  readonly decoders: Decoders;
}

/** All of an answer that comes before candidates. */
type Found = Omit<Measured, 'outcome' | 'conclusion' | 'timingsMs'>;
type Enter = ReturnType<typeof stopwatch>['enter'];

/** The journey of one photo: file → upright grey → camera over card or sheet → the fitting and its axis →
 *  its thread → pitch and diameter with uncertainty → candidates and what to read next. */
export async function identifyPhoto(
  signal: AbortSignal,
  bytes: Uint8Array,
  options: MeasureOptions,
  tools: Tools,
  onStage: OnStage,
): Promise<Identification> {
  const clock = stopwatch(signal, onStage);
  const seen: Seen = { overlay: null, field: null };
  clock.enter('photo');
  const photo = await readPhoto(signal, bytes, tools.decoders);
  const found = photo.ok
    ? measurePhoto(photo.value, options, tools.vision, clock.enter, seen)
    : photo;
  if (!found.ok) {
    const refusal = { reason: found.reason, advice: found.advice };
    return { outcome: 'refused', refusal, ...seen, timingsMs: clock.timings() };
  }
  clock.enter('candidates');
  const conclusion = conclude(found.value.measurement, options.readings);
  return { outcome: 'measured', ...found.value, conclusion, timingsMs: clock.timings() };
}

/** What a refusal shows, filled in as it is found. */
type Seen = { -readonly [K in 'overlay' | 'field']: Refused[K] };

function measurePhoto(
  photo: Photo,
  options: MeasureOptions,
  vision: Vision,
  enter: Enter,
  seen: Seen,
): Result<Found, RefusalReason> {
  if (!options.ruler) return measureOnReference(photo, options, vision, enter, seen);
  const byRuler = measureByRuler(photo, options.ruler, options, vision, enter);
  return byRuler.ok ? ok({ ...byRuler.value, crests: [], otherEnds: [] }) : byRuler;
}

/** On card or sheet: where the camera stood, the fitting, then what of a thread it shows. */
function measureOnReference(
  photo: Photo,
  options: MeasureOptions,
  vision: Vision,
  enter: Enter,
  seen: Seen,
): Result<Found, RefusalReason> {
  enter('card-pose');
  const scale = printScale(options);
  const found = findReference(photo, vision, scale, options.reference);
  if (!found.ok) return found;
  const reference = found.value;
  const { kind, outline } = reference;
  const overlay = referenceOverlay(photo, reference);
  seen.overlay = overlay;

  enter('silhouette', { kind, outline, widthPx: overlay.widthPx, heightPx: overlay.heightPx });
  const fitting = findFitting(photo.grey, reference, vision);
  const field = fitting.ok ? fitting.value.field : fieldAround(photo.grey, reference);
  if (kind === 'card') seen.field = field;
  // Whoever has drawn the axis has said which part it is.
  if (!fitting.ok && !options.corrections?.axis) return endsWithin(fitting, reference, photo.grey);

  enter('thread-signal');
  const shot: EndShot = { photo, reference, field, uPrint: kind === 'card' ? scale.u : 0 };
  return measureFitting(shot, fitting.ok ? fitting.value : null, options, enter);
}

/** A male thread, or a bore where that is asked for or likelier. */
function measureFitting(
  shot: EndShot,
  fitting: FoundFitting | null,
  options: MeasureOptions,
  enter: Enter,
): Result<Found, RefusalReason> {
  const { grey } = shot.photo;
  const drawn = options.corrections?.axis ?? null;
  const search = searchThread(grey, shot.reference, fitting, drawn);
  if (options.gender !== 'male' && fitting && !drawn) {
    const male = options.gender === 'auto' ? search : null;
    const bore = likelierBore(grey, shot.reference, fitting, male);
    if (bore) {
      if (isAnotherBeside(grey, shot.reference, fitting, bore)) return severalFittings;
      enter('measurement');
      const notes = notesOfScale(shot, options);
      return ok({ ...measureBore(shot, bore), crests: [], otherEnds: [], notes });
    }
  }
  if (options.gender === 'female') return noBore;
  const seat = threadFound(search(), grey, shot.reference, drawn);
  // Whoever has drawn an axis has said which of them is meant.
  const beside = fitting && fitting.pieces.length > 0 && !drawn ? fitting : null;
  if (!seat.ok) return beside ? severalFittings : seat;
  if (beside && isAnotherThread(grey, shot.reference, beside, seat.value)) return severalFittings;
  enter('measurement');
  return measureThread(shot, seat.value, fitting, options);
}

/** The seated thread, and the part's other end where it has one. */
function measureThread(
  shot: EndShot,
  seat: SeatedThread,
  fitting: FoundFitting | null,
  options: MeasureOptions,
): Result<Found, RefusalReason> {
  const { photo } = shot;
  const through = seatedAgain(photo.grey, shot.reference, seat);
  return measureSeated({ ...shot, reference: through.reference }, through.seat, fitting, options);
}

function measureSeated(
  shot: EndShot,
  seat: SeatedThread,
  fitting: FoundFitting | null,
  options: MeasureOptions,
): Result<Found, RefusalReason> {
  const { photo, reference, field } = shot;
  const end = measureEnd(shot, seat, options.corrections?.side ?? 'both');
  if (!end.ok) return end;
  const { solution, measurement, features } = end.value;
  const { points, fit, zone } = solution;
  const other = fitting && otherEnd(photo.grey, reference, fitting, seat);
  const beside = other && measureEnd(shot, other, 'both');
  return ok({
    reference: {
      kind: reference.kind,
      pxPerMm: 1 / solution.mmPerPx,
      axisHeightMm: solution.resting.heightMm,
      cameraHeightMm: -reference.camera.centre[2],
      tiltDeg: (reference.tiltRad * 180) / Math.PI,
      field,
    },
    measurement,
    overlay: {
      ...threadOverlay(photo, reference, solution),
      ends: featuresOf([features, beside?.ok ? beside.value.features : []]),
    },
    profile: crestProfile(solution),
    crests: crestHeights(points, fit, zone, measurement.majorDiameterMm.u),
    otherEnds: beside?.ok
      ? [
          {
            measurement: beside.value.measurement,
            axis: axisOverlay(reference, beside.value.solution),
          },
        ]
      : [],
    notes: notesOn(shot, solution, options),
  });
}

/** By the ends that they belong to. */
const featuresOf = (ends: readonly (readonly ShownFeature[])[]) =>
  ends.flatMap((features, end) => features.map((feature) => ({ end, ...feature })));

type Refusal = Extract<Result<Found, RefusalReason>, { ok: false }>;

/** Where the photo shows part of the window only, what is missing may lie in the rest. */
function endsWithin(refusal: Refusal, reference: Reference, grey: GreyImage): Refusal {
  const cut =
    refusal.reason === 'no-thread' && reference.kind === 'card' && !showsWindow(reference, grey);
  return cut ? cutWithinWindow : refusal;
}

/** Print scale along x and y with its relative uncertainty. */
function printScale({ bars }: MeasureOptions): { x: number; y: number; u: number } {
  if (!bars) return { x: 1, y: 1, u: uncheckedPrint };
  return {
    x: bars.horizontalMm / card.bars.horizontal.lengthMm,
    y: bars.verticalMm / card.bars.vertical.lengthMm,
    // Both bars measure the one scale: u over the root of their squares' sum.
    u: Math.max(bars.uMm / Math.hypot(bars.horizontalMm, bars.verticalMm), 1e-4),
  };
}

const noBore = refuse(
  'no-thread',
  'No female thread is seen: stand the part on the card, mouth up, and shoot at a slant, so that the far wall of the bore lies in view.',
);

function notesOn(
  shot: EndShot,
  { resting, points, fit }: ThreadSolution,
  options: MeasureOptions,
): Note[] {
  const notes = notesOfScale(shot, options);
  if (resting.on === 'unknown') notes.push('resting-unknown');
  if (!bothSidesSpeak(points, fit)) notes.push('one-side-only');
  return notes;
}

/** What the reader should know of the scale, whatever was measured by it. */
function notesOfScale({ photo, reference, field }: EndShot, options: MeasureOptions): Note[] {
  const notes: Note[] = [];
  const printed = reference.kind === 'card';
  if (!printed) notes.push('outline-alone');
  if (printed && !options.bars) notes.push('print-unchecked');
  if (photo.f35Mm === null || !reference.usedExif) notes.push('no-focal-length');
  if (reference.notFlat) notes.push('card-not-flat');
  if (printed && reference.detected.length < 20) notes.push('few-markers');
  // A dark field swallows the shadow.
  if (photo.flashFired && field === 'light') notes.push('flash-fired');
  return notes;
}
