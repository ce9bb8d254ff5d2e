import type { Estimate } from '../../quantity/estimate';
import { type FitParameter, index, type OutlineParameters } from './outline-parameters';
import type { PeriodStart } from './start-period';
import type { ThreadForm } from './thread-form';

/** What is known of a thread and its photo before its outline is fitted. */
export interface ThreadPriors {
  readonly blurMm: number;
  readonly form: ThreadForm;
  /** +1 or −1: which way the helix climbs, as the sign of its slope on the left side. */
  readonly handed: 1 | -1;
  /** Pitch by the unrolled surface, where it tells one. */
  readonly surfacePitch: Estimate | null;
  readonly mmPerPx: number;
  /** Crest radius by where the metal's texture ends, when that is known. */
  readonly radius?: Estimate | null;
  /** Growth of the radius along s, when that is known. */
  readonly halfTaper?: Estimate;
  /** Distance from the camera to the axis; the two contact lines are less than half a round apart by
   *  2·asin(R/range). Infinite for a view from afar. */
  readonly rangeMm?: number;
  /** How far the axis may still be off, mm and rad. */
  readonly uOffsetMm?: number;
  readonly uTurn?: number;
}

/** Straight or 1:16 on diameter, and little else (ISO 7-1, ASME B1.20.1). */
const anyTaper: Estimate = { value: 1 / 64, u: 0.03 };
/** Of a pitch of fewer pixels the photo does not show the flank angle. */
const angleFromPx = 20;
const uAngle = { free: 0.15, held: 0.06 };
const uLnBlur = 0.2;
const nothing: Estimate = { value: 0, u: Number.POSITIVE_INFINITY };

export const leavesAngleFree = (pitchMm: number, { mmPerPx }: ThreadPriors): boolean =>
  pitchMm / mmPerPx > angleFromPx;

export const radiusAtStart = (start: PeriodStart, { radius }: ThreadPriors): number =>
  radius?.value ?? (start.left[0] + start.right[0]) / 2 + 0.9 * start.amplitudeMm;

/** Where a fit begins. */
export const initialParameters = (start: PeriodStart, priors: ThreadPriors): number[] => [
  start.pitchMm,
  start.crestS,
  radiusAtStart(start, priors),
  (start.left[1] + start.right[1]) / 2,
  (start.left[0] - start.right[0]) / 2,
  (start.left[1] - start.right[1]) / 2,
  priors.form.flat.value,
  priors.form.depth.value,
  0,
  priors.form.halfAngleRad,
];

/** One parameter's expected value: a residual beside those of the edges. */
export interface PriorRow extends Estimate {
  readonly parameter: FitParameter;
}

export function priorRows(start: PeriodStart, priors: ThreadPriors): readonly PriorRow[] {
  const {
    form,
    surfacePitch,
    radius,
    halfTaper = anyTaper,
    uOffsetMm = 0.6,
    uTurn = 0.02,
  } = priors;
  const free = leavesAngleFree(start.pitchMm, priors);
  return [
    { parameter: 'flat', ...form.flat },
    { parameter: 'depth', ...form.depth },
    { parameter: 'lnBlur', value: 0, u: uLnBlur },
    { parameter: 'halfAngle', value: form.halfAngleRad, u: free ? uAngle.free : uAngle.held },
    { parameter: 'pitch', ...(surfacePitch ?? nothing) },
    // A crest lies somewhere in a pitch, which matters only where no edge says where.
    { parameter: 'crestS', value: start.crestS, u: start.pitchMm },
    { parameter: 'radius', ...(radius ?? nothing) },
    { parameter: 'offset', value: 0, u: uOffsetMm },
    { parameter: 'turn', value: 0, u: uTurn },
    { parameter: 'halfTaper', ...halfTaper },
  ];
}

/** Into `out`, from place `first` on. */
export function priorResiduals(
  rows: readonly PriorRow[],
  p: OutlineParameters,
  out: Float64Array,
  first: number,
): void {
  rows.forEach(({ parameter, value, u }, k) => {
    out[first + k] = (p[index[parameter]] - value) / u;
  });
}

/** Into a Jacobian of `count` residuals, column-wise, of which the priors' are those from `first` on. */
export function priorDerivatives(
  rows: readonly PriorRow[],
  out: Float64Array,
  count: number,
  first: number,
): void {
  rows.forEach(({ parameter, u }, k) => {
    out[index[parameter] * count + first + k] = 1 / u;
  });
}
