import { readPhoto } from '../../journey/1-photo/read-photo';
import { findReference } from '../../journey/2-reference/find-reference';
import { findFitting } from '../../journey/3-find/find-fitting';
import { findThread } from '../../journey/4-limbs/find-thread';
import type { PeriodTraits } from '../../journey/4-limbs/period-odds';
import { onAxisPlane } from '../../journey/4-thread-signal/axis-frame';
import { type Traces, tracesOf } from '../../journey/5-measurement/learnt-spread';
import { solveSeated } from '../../journey/5-measurement/solve-seated';
import { uncheckedPrint, withUncertainty } from '../../journey/5-measurement/uncertainty';
import { defaultOptions } from '../../journey/identification';
import type { Tools } from '../../journey/identify';
import type { Case } from '../accuracy/cases';
import type { Truth } from '../accuracy/truth';

/** What is off on one photo, in mm, with what the measurement left behind to tell. `sharedMm` is what
 *  camera, height, card and print are worth together. */
export interface Residual {
  readonly name: string;
  /** Periods that were weighed, one of them the true one. */
  readonly rivals: readonly Candidate[];
  /** Null where another period than the true one was chosen: no spread accounts for that. */
  readonly lengths: Lengths | null;
}

export interface Candidate {
  readonly right: boolean;
  readonly traits: PeriodTraits;
  readonly spoken: number;
}

export interface Lengths {
  readonly pitch: Off;
  readonly radius: Off;
  readonly height: {
    readonly errorMm: number;
    readonly knownMm: number;
    readonly heightMm: number;
  };
}

export interface Off {
  readonly errorMm: number;
  readonly sharedMm: number;
  readonly traces: Traces;
}

const sharedSources = ['focal-length', 'height', 'card-bow', 'tilt', 'print-scale'];

/** Null when nothing was measured. */
export async function residualOf({ truth, bytes }: Case, tools: Tools): Promise<Residual | null> {
  const photo = await readPhoto(new AbortController().signal, bytes, tools.decoders);
  if (!photo.ok) return null;
  const scale = { x: 1, y: 1, u: uncheckedPrint };
  const { grey } = photo.value;
  const found = findReference(photo.value, tools.vision, scale, defaultOptions.reference);
  if (!found.ok) return null;
  const reference = found.value;
  const fitting = findFitting(grey, reference, tools.vision);
  if (!fitting.ok) return null;
  const seat = findThread(grey, reference, fitting.value, null);
  if (!seat.ok) return null;
  const solved = solveSeated(grey, reference, seat.value, fitting.value.field);
  if (!solved.ok) return null;
  const { fit, frame, known } = solved.value;
  if (!known) return null;
  const rivals = known.rivals.map(({ period, spoken }) => ({
    right: Math.abs(period.periodMm / truth.pitch_mm - 1) < 0.015,
    traits: period.traits,
    spoken,
  }));
  if (Math.abs(fit.pitchMm / truth.pitch_mm - 1) > 0.2)
    return { name: truth.name, rivals, lengths: null };
  const lighting = { field: fitting.value.field, flashFired: photo.value.flashFired };
  const { budget } = withUncertainty(reference, solved.value, lighting, scale.u);
  const shared = budget.filter(({ source }) => sharedSources.includes(source));
  const traces = tracesOf(solved.value, known);
  const { hex } = seat.value;
  return {
    name: truth.name,
    rivals,
    lengths: {
      pitch: {
        errorMm: fit.pitchMm - truth.pitch_mm,
        sharedMm: Math.hypot(...shared.map((row) => row.pitchMm)),
        traces: traces.pitch,
      },
      radius: {
        errorMm: fit.crestRadiusMm - trueRadiusMm(truth, onAxisPlane(frame, fit.middleS, 0)),
        sharedMm: Math.hypot(...shared.map((row) => row.majorDiameterMm)) / 2,
        traces: traces.radius,
      },
      height: {
        errorMm: hex.heightMm - truth.axis_p0[2],
        knownMm: hex.uHeightMm,
        heightMm: hex.heightMm,
      },
    },
  };
}

/** Crest radius beside a point of the card frame: x right, y down from a corner of a sheet whose middle is
 *  at (92, 68), where the truth has its origin. */
function trueRadiusMm(truth: Truth, [x, y]: readonly [number, number, number]): number {
  const [p0, p1] = [truth.axis_p0, truth.axis_p1];
  const along = [p1[0] - p0[0], p1[1] - p0[1]];
  const length2 = along[0] ** 2 + along[1] ** 2;
  const share = ((x - 92 - p0[0]) * along[0] + (68 - y - p0[1]) * along[1]) / length2;
  const { crest_major_at_start_mm: from, crest_major_at_end_mm: to } = truth;
  return (from + share * (to - from)) / 2;
}
