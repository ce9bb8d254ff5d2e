import { refuse } from '../quantity/result';
import type { GreyImage } from '../vision/grey-image';
import type { Vision } from '../vision/vision';
import type { Decoders, Photo } from './1-photo/photo';
import { readPhoto } from './1-photo/read-photo';
import { findReference } from './2-reference/find-reference';
import type { Reference } from './2-reference/reference';
import { fieldAround, findFitting } from './3-find/find-fitting';
import { likelierBore } from './4-bore/likelier-bore';
import { cutWithinWindow, findThread, showsWindow } from './4-limbs/find-thread';
import { otherEnd } from './4-limbs/other-end';
import { bothSidesSpeak } from './5-measurement/follow-fit';
import type { ThreadSolution } from './5-measurement/thread-solution';
import { uncheckedPrint } from './5-measurement/uncertainty';
import { conclude } from './7-next-reading/conclude';
import type { Identification, MeasureOptions, Note, OnStage, Refused } from './identification';
import { measureBore } from './measure-bore';
import { measureByRuler } from './measure-by-ruler';
import { type EndShot, measureEnd } from './measure-end';
import type { Overlay } from './overlay';
import { axisOverlay, crestProfile, referenceOverlay, threadOverlay } from './overlay-of';
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
  let cardField: Refused['field'] = null;
  const refused = (refusal: Refused['refusal']): Refused => ({
    outcome: 'refused',
    refusal: { reason: refusal.reason, advice: refusal.advice },
    overlay,
    field: cardField,
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
      otherEnds: [],
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
  const { corrections } = options;
  const drawn = corrections?.axis ?? null;
  const fitting = findFitting(photo.value.grey, reference, tools.vision);
  const field = fitting.ok ? fitting.value.field : fieldAround(photo.value.grey, reference);
  if (reference.kind === 'card') cardField = field;
  // Whoever has drawn the axis has said which part it is.
  if (!fitting.ok && !drawn) return refused(endsWithin(fitting, reference, photo.value.grey));

  clock.enter('thread-signal');
  const seat = findThread(photo.value.grey, reference, fitting.ok ? fitting.value : null, drawn);
  const shot: EndShot = {
    photo: photo.value,
    reference,
    field,
    uPrint: reference.kind === 'card' ? scale.u : 0,
  };
  const bore =
    options.gender !== 'male' && fitting.ok && !drawn
      ? likelierBore(
          photo.value.grey,
          reference,
          fitting.value,
          tools.vision,
          options.gender === 'female' || !seat.ok ? null : seat.value.odds,
        )
      : null;
  if (bore) {
    clock.enter('measurement');
    const measured = measureBore(shot, bore);
    clock.enter('candidates');
    return {
      outcome: 'measured',
      ...measured,
      crests: [],
      conclusion: conclude(measured.measurement, options.readings),
      otherEnds: [],
      notes: notesOfScale(photo.value, reference, field, options),
      timingsMs: clock.timings(),
    };
  }
  if (options.gender === 'female') return refused(noBore);
  if (!seat.ok) return refused(seat);

  clock.enter('measurement');
  const end = measureEnd(shot, seat.value, corrections?.side ?? 'both');
  if (!end.ok) return refused(end);
  const { solution, measurement } = end.value;
  const other = fitting.ok
    ? otherEnd(photo.value.grey, reference, fitting.value, seat.value)
    : null;
  const beside = other && measureEnd(shot, other, 'both');

  clock.enter('candidates');
  const conclusion = conclude(measurement, options.readings);
  return {
    outcome: 'measured',
    reference: {
      kind: reference.kind,
      pxPerMm: 1 / solution.mmPerPx,
      axisHeightMm: solution.resting.heightMm,
      cameraHeightMm: -reference.camera.centre[2],
      tiltDeg: (reference.tiltRad * 180) / Math.PI,
      field,
    },
    measurement,
    overlay: threadOverlay(photo.value, reference, solution),
    profile: crestProfile(solution),
    crests: crestHeights(
      solution.points,
      solution.fit,
      solution.zone,
      measurement.majorDiameterMm.u,
    ),
    conclusion,
    otherEnds: beside?.ok
      ? [
          {
            measurement: beside.value.measurement,
            axis: axisOverlay(reference, beside.value.solution),
          },
        ]
      : [],
    notes: notesOn(photo.value, reference, solution, field, options),
    timingsMs: clock.timings(),
  };
}

/** Where the photo shows part of the window only, what is missing may lie in the rest. */
function endsWithin(
  refusal: Refused['refusal'],
  reference: Reference,
  grey: GreyImage,
): Refused['refusal'] {
  const cut =
    refusal.reason === 'no-thread' && reference.kind === 'card' && !showsWindow(reference, grey);
  return cut ? cutWithinWindow : refusal;
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

const noBore = refuse(
  'no-thread',
  'No female thread is seen: stand the part on the card, mouth up, and shoot at a slant, so that the far wall of the bore lies in view.',
);

function notesOn(
  photo: Photo,
  reference: Reference,
  { resting, points, fit }: ThreadSolution,
  field: 'light' | 'dark',
  options: MeasureOptions,
): Note[] {
  const notes = notesOfScale(photo, reference, field, options);
  if (resting.on === 'unknown') notes.push('resting-unknown');
  if (!bothSidesSpeak(points, fit)) notes.push('one-side-only');
  return notes;
}

/** What the reader should know of the scale, whatever was measured by it. */
function notesOfScale(
  photo: Photo,
  reference: Reference,
  field: 'light' | 'dark',
  options: MeasureOptions,
): Note[] {
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
