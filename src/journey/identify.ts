import type { Vision } from '../vision/vision';
import type { Decoders, Photo } from './1-photo/photo';
import { readPhoto } from './1-photo/read-photo';
import { findReference } from './2-reference/find-reference';
import type { Reference } from './2-reference/reference';
import { findFitting } from './3-silhouette/find-fitting';
import { findThread } from './4-thread-signal/find-thread';
import { climbsLikeAThread } from './5-measurement/hand';
import { noseHalfAngle } from './5-measurement/nose-angle';
import { bothSidesSpeak, solveThread, type ThreadSolution } from './5-measurement/solve-thread';
import type { ThreadMeasurement } from './5-measurement/thread-measurement';
import { uncheckedPrint, withUncertainty } from './5-measurement/uncertainty';
import { conclude } from './7-next-reading/conclude';
import type { Identification, MeasureOptions, Note, OnStage, Refused } from './identification';
import { measureByRuler } from './measure-by-ruler';
import type { Overlay } from './overlay';
import { crestProfile, referenceOverlay, threadOverlay } from './overlay-of';
import { stopwatch } from './stopwatch';
import { crestHeights } from './wear/crest-heights';

export interface Tools {
  readonly vision: Vision;
  readonly decoders: Decoders;
}

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
  let overlay: Overlay | null = null;
  const refused = (refusal: Refused['refusal']): Refused => ({
    outcome: 'refused',
    refusal: { reason: refusal.reason, advice: refusal.advice },
    overlay,
    timingsMs: clock.timings(),
  });

  clock.enter('photo');
  const photo = await readPhoto(signal, bytes, tools.decoders);
  if (!photo.ok) return refused(photo);
  if (options.ruler) {
    const byRuler = measureByRuler(photo.value, options.ruler, options, tools.vision, clock.enter);
    if (!byRuler.ok) return refused(byRuler);
    clock.enter('candidates');
    const conclusion = conclude(byRuler.value.measurement, options.readings);
    return {
      outcome: 'measured',
      ...byRuler.value,
      crests: [],
      conclusion,
      timingsMs: clock.timings(),
    };
  }

  clock.enter('card-pose');
  const scale = printScale(options);
  const found = findReference(photo.value, tools.vision, scale, options.reference);
  if (!found.ok) return refused(found);
  const reference = found.value;
  overlay = referenceOverlay(photo.value, reference);

  const { widthPx, heightPx } = overlay;
  clock.enter('silhouette', {
    kind: reference.kind,
    outline: reference.outline,
    widthPx,
    heightPx,
  });
  const fitting = findFitting(photo.value.grey, reference, tools.vision);
  if (!fitting.ok) return refused(fitting);

  clock.enter('thread-signal');
  const place = findThread(photo.value.grey, reference, fitting.value);
  if (!place.ok) return refused(place);

  clock.enter('measurement');
  const solved = solveThread(photo.value.grey, reference, place.value, fitting.value.field);
  if (!solved.ok) return refused(solved);
  const climbs = climbsLikeAThread(solved.value);
  if (!climbs.ok) return refused(climbs);
  const lighting = { field: fitting.value.field, flashFired: photo.value.flashFired };
  const measurement: ThreadMeasurement = {
    ...withUncertainty(reference, solved.value, lighting, reference.kind === 'card' ? scale.u : 0),
    noseHalfAngleDeg: noseHalfAngle(
      {
        grey: photo.value.grey,
        camera: reference.camera,
        response: reference.response,
        mmPerPx: solved.value.mmPerPx,
        field: fitting.value.field,
      },
      solved.value,
    ),
  };

  clock.enter('candidates');
  const conclusion = conclude(measurement, options.readings);
  return {
    outcome: 'measured',
    reference: {
      kind: reference.kind,
      pxPerMm: 1 / solved.value.mmPerPx,
      axisHeightMm: solved.value.resting.heightMm,
      cameraHeightMm: -reference.camera.centre[2],
      tiltDeg: (reference.tiltRad * 180) / Math.PI,
      field: fitting.value.field,
    },
    measurement,
    overlay: threadOverlay(photo.value, reference, solved.value),
    profile: crestProfile(solved.value),
    crests: crestHeights(
      solved.value.points,
      solved.value.fit,
      solved.value.zone,
      measurement.majorDiameterMm.u,
    ),
    conclusion,
    notes: notesOn(photo.value, reference, solved.value, fitting.value.field, options),
    timingsMs: clock.timings(),
  };
}

/** Print scale along x and y with its relative uncertainty. */
function printScale({ bars }: MeasureOptions): { x: number; y: number; u: number } {
  if (!bars) return { x: 1, y: 1, u: uncheckedPrint };
  return {
    x: bars.horizontalMm / 150,
    y: bars.verticalMm / 100,
    // Both bars speak for the one scale: u/√(150² + 100²) at full size.
    u: Math.max(bars.uMm / Math.hypot(bars.horizontalMm, bars.verticalMm), 1e-4),
  };
}

function notesOn(
  photo: Photo,
  reference: Reference,
  { resting, points, fit }: ThreadSolution,
  field: 'light' | 'dark',
  options: MeasureOptions,
): Note[] {
  const notes: Note[] = [];
  const printed = reference.kind === 'card';
  if (!printed) notes.push('outline-alone');
  if (printed && !options.bars) notes.push('print-unchecked');
  if (photo.f35Mm === null || !reference.usedExif) notes.push('no-focal-length');
  if (reference.notFlat) notes.push('card-not-flat');
  if (resting.on === 'unknown') notes.push('resting-unknown');
  if (!bothSidesSpeak(points, fit)) notes.push('one-side-only');
  if (printed && reference.detected.length < 20) notes.push('few-markers');
  // A dark field swallows the shadow.
  if (photo.flashFired && field === 'light') notes.push('flash-fired');
  return notes;
}
