import { readPhoto } from '../../journey/1-photo/read-photo';
import { findReference } from '../../journey/2-reference/find-reference';
import type { Reference } from '../../journey/2-reference/reference';
import type { FoundFitting } from '../../journey/3-find/find-fitting';
import { findFitting } from '../../journey/3-find/find-fitting';
import { findThread } from '../../journey/4-limbs/find-thread';
import { findThreads } from '../../journey/4-limbs/find-threads';
import { bendSeen, seatedAgain } from '../../journey/4-limbs/lens-by-thread';
import type { PeriodTraits } from '../../journey/4-limbs/period-odds';
import { type SeatedThread, seatThread } from '../../journey/4-limbs/seat-thread';
import { onAxisPlane } from '../../journey/4-thread-signal/axis-frame';
import { tracesOf } from '../../journey/5-measurement/learnt-spread';
import { solveSeated } from '../../journey/5-measurement/solve-seated';
import type { ThreadSolution } from '../../journey/5-measurement/thread-solution';
import { withUncertainty } from '../../journey/5-measurement/uncertainty';
import { defaultOptions } from '../../journey/identification';
import type { Tools } from '../../journey/identify';
import type { GreyImage } from '../../vision/grey-image';
import type { Case } from '../accuracy/cases';
import { trueCrestMm } from '../accuracy/true-crest';
import type { Truth } from '../accuracy/truth';
import type { Bend } from './fit-bend';
import type { SeatSeen } from './fit-seats';
import type { Off } from './fit-spread';
import type { SurfaceOff } from './fit-surface';

/** What is off on one photo, in mm, with what the measurement left behind to tell. */
export interface Residual {
  readonly name: string;
  /** Places that were tried, right ones and wrong ones. */
  readonly seats: readonly SeatSeen[];
  /** Periods that were weighed, one of them the true one; none where nothing was measured. */
  readonly rivals: readonly Candidate[];
  /** Of its thread through a camera whose focal length was stated; null where none was. */
  readonly bend: Bend | null;
  /** Of the surface's pitch; null where another period was chosen. */
  readonly surface: SurfaceOff | null;
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
  /** Of the radius from end to end. */
  readonly growth: Off;
  readonly height: { readonly errorMm: number; readonly uMm: number };
}

const sharedSources = ['focal-length', 'height', 'card-bow', 'tilt', 'print-scale'];

/** Null when nothing was measured. Seats that were not chosen, which take longest, only where they are asked for. */
export async function residualOf(
  { truth, bytes }: Case,
  tools: Tools,
  withSeats: boolean,
): Promise<Residual | null> {
  const photo = await readPhoto(new AbortController().signal, bytes, tools.decoders);
  if (!photo.ok) return null;
  // The renderer prints to size.
  const scale = { x: 1, y: 1, u: 1e-6 };
  const { grey } = photo.value;
  const found = findReference(photo.value, tools.vision, scale, defaultOptions.reference);
  if (!found.ok) return null;
  const fitting = findFitting(grey, found.value, tools.vision);
  if (!fitting.ok) return null;
  const seats = withSeats ? seatsTried(grey, found.value, fitting.value, truth) : [];
  const unmeasured = {
    name: truth.name,
    seats,
    rivals: [],
    bend: null,
    surface: null,
    lengths: null,
  };
  const first = findThread(grey, found.value, fitting.value, null);
  if (!first.ok) return unmeasured;
  const { reference, seat } = seatedAgain(grey, found.value, first.value);
  const { field } = fitting.value;
  const solved = solveSeated({ grey, card: reference, seat, field, sides: 'both' });
  if (!solved.ok) return unmeasured;
  const { fit, known } = solved.value;
  if (!known) return unmeasured;
  const rivals = known.rivals.map(({ period, spoken }) => ({
    right: Math.abs(period.periodMm / truth.pitch_mm - 1) < 0.015,
    traits: period.traits,
    spoken,
  }));
  if (Math.abs(fit.pitchMm / truth.pitch_mm - 1) > 0.2) return { ...unmeasured, rivals };
  const { camera } = reference;
  const bend = reference.usedExif ? bendSeen(grey, camera, seat) : null;
  const lighting = { field, flashFired: photo.value.flashFired };
  const { budget } = withUncertainty(reference, solved.value, lighting, scale.u);
  const shared = budget.filter(({ source }) => sharedSources.includes(source));
  const traces = tracesOf(solved.value, known);
  const lengthMm = solved.value.zone.toS - solved.value.zone.fromS;
  const { hex } = seat;
  const sharedPitchMm = Math.hypot(...shared.map((row) => row.pitchMm));
  return {
    name: truth.name,
    seats,
    rivals,
    bend,
    surface: {
      error: known.surfaceMm / truth.pitch_mm - 1,
      shared: sharedPitchMm / fit.pitchMm,
      turns: lengthMm / fit.pitchMm,
    },
    lengths: {
      pitch: {
        errorMm: fit.pitchMm - truth.pitch_mm,
        sharedMm: sharedPitchMm,
        traces: traces.pitch,
      },
      radius: {
        errorMm: radiusErrorMm(solved.value, truth),
        sharedMm: Math.hypot(...shared.map((row) => row.majorDiameterMm)) / 2,
        traces: traces.radius,
      },
      growth: {
        errorMm: ((2 * fit.halfTaper - truth.taper) / 2) * lengthMm,
        sharedMm: 0,
        traces: traces.growth,
      },
      height: {
        errorMm: hex.heightMm - truth.axis_p0[2],
        uMm: hex.uHeightMm,
      },
    },
  };
}

const radiusErrorMm = ({ fit, frame }: ThreadSolution, truth: Truth): number =>
  fit.crestRadiusMm - trueRadiusMm(truth, onAxisPlane(frame, fit.middleS, 0));

const mostSeats = 4;

/** The first places at which a thread may lie, whether one of them convinces or not. */
function seatsTried(
  grey: GreyImage,
  reference: Reference,
  fitting: FoundFitting,
  truth: Truth,
): SeatSeen[] {
  const seen: SeatSeen[] = [];
  let left = mostSeats;
  for (const guess of findThreads(grey, reference, [fitting])) {
    if (left-- === 0) break;
    const seat = seatThread(grey, reference.camera, guess);
    if (seat) seen.push({ right: liesRight(seat, reference, truth), traits: seat.traits });
  }
  return seen;
}

/** Whether a seat lies on the thread: its middle on the axis and between the thread's ends, its radius within a
 *  tenth. */
function liesRight(seat: SeatedThread, { camera }: Reference, truth: Truth): boolean {
  const { frame, zone, crests } = seat;
  const middle = onAxisPlane(frame, (zone.fromS + zone.toS) / 2, 0);
  const [p0, p1] = [truth.axis_p0, truth.axis_p1];
  // As the camera sees it at the true axis' height.
  const { centre } = camera;
  const k = (-p0[2] - centre[2]) / (middle[2] - centre[2]);
  const x = centre[0] + (middle[0] - centre[0]) * k - 92 - p0[0];
  const y = 68 - centre[1] - (middle[1] - centre[1]) * k - p0[1];
  const [dx, dy] = [p1[0] - p0[0], p1[1] - p0[1]];
  const length = Math.hypot(dx, dy);
  const share = (x * dx + y * dy) / length ** 2;
  const radiusMm = trueRadiusMm(truth, middle);
  return (
    share > -0.1 &&
    share < 1.1 &&
    Math.abs(x * dy - y * dx) / length < 0.16 * radiusMm &&
    Math.abs(crests.radiusMm / radiusMm - 1) < 0.1
  );
}

/** Crest radius beside a point of the card frame: x right, y down from a corner of a sheet whose middle is
 *  at (92, 68), where the truth has its origin. */
function trueRadiusMm(truth: Truth, [x, y]: readonly [number, number, number]): number {
  const [p0, p1] = [truth.axis_p0, truth.axis_p1];
  const along = [p1[0] - p0[0], p1[1] - p0[1]];
  const from = (x - 92 - p0[0]) * along[0] + (68 - y - p0[1]) * along[1];
  return trueCrestMm(truth, from / Math.hypot(along[0], along[1]));
}
