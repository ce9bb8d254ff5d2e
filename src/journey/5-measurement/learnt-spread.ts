import type { Estimate } from '../../quantity/estimate';
import learnt from '../4-limbs/allowances.json';
import { fitParameters } from './fit-thread';
import type { LocalSpread } from './local-spread';
import type { OtherPeriod } from './thread-measurement';
import type { Known, ThreadSolution } from './thread-solution';

/** What a measured length leaves behind that says how sure it is, mm. */
export interface Traces {
  /** Standard uncertainty by the outline's fit. */
  readonly fitMm: number;
  /** Between the outline's fit and what limbs or surface say without it, beyond what these may be off. */
  readonly apartMm: number;
  /** Standard uncertainty that limbs or surface claim for themselves. */
  readonly knownMm: number;
  readonly pitchMm: number;
  readonly pixelMm: number;
}

/** How much of each trace is uncertainty; set by `npm run calibrate` on photos with truth. */
export interface Shares {
  readonly fit: number;
  readonly apart: number;
  readonly known: number;
  readonly pitch: number;
  readonly pixel: number;
}

export const shareNames = ['fit', 'apart', 'known', 'pitch', 'pixel'] as const;

export const spreadMm = (t: Traces, a: Shares): number =>
  Math.hypot(
    a.fit * t.fitMm,
    a.apart * t.apartMm,
    a.known * t.knownMm,
    a.pitch * t.pitchMm,
    a.pixel * t.pixelMm,
  );

/** Of pitch and crest radius, and of the axis' height over what the hex network claims. */
export const learntShares: { readonly pitch: Shares; readonly radius: Shares } = learnt.shares;
/** How far, in its u, an outline moves the limbs' radius before it is taken for the edge of something else. */
export const learntFurthestApart: number = learnt.outline.furthestApart;
export const learntHeight: { readonly known: number; readonly ofHeight: number } = learnt.height;

/** What the traces of a seated thread amount to. `shadowMm`: what a shadow known to be there adds to the
 *  diameter. */
export function learntSpread(
  solution: ThreadSolution,
  known: Known,
  shadowMm: number,
): LocalSpread {
  const { fit, zone } = solution;
  const { pitch, radius } = tracesOf(solution, known);
  const radiusMm = spreadMm(radius, learntShares.radius);
  return {
    rows: [
      ...(shadowMm > 0
        ? [{ source: 'edge-bias' as const, pitchMm: 0, majorDiameterMm: shadowMm }]
        : []),
      {
        source: 'thread-form',
        pitchMm: Math.hypot(
          spreadMm(pitch, learntShares.pitch),
          doubtOf(known.others) * fit.pitchMm,
        ),
        majorDiameterMm: 2 * Math.hypot(radiusMm, solution.uFormMm),
      },
    ],
    // Sides drawn inwards or outwards at one end only.
    uTaper: (2 * radiusMm) / (zone.toS - zone.fromS),
  };
}

/** Traces of pitch and crest radius. */
export function tracesOf(
  { fit, mmPerPx }: Pick<ThreadSolution, 'fit' | 'mmPerPx'>,
  known: Pick<Known, 'pitch' | 'radius'>,
): { readonly pitch: Traces; readonly radius: Traces } {
  const u = (k: number) => Math.sqrt(fit.covariance[k * fitParameters.length + k]);
  const traces = (value: number, fitMm: number, of: Estimate): Traces => ({
    fitMm,
    apartMm: Math.max(0, Math.abs(value - of.value) - of.u),
    knownMm: of.u,
    pitchMm: fit.pitchMm,
    pixelMm: mmPerPx,
  });
  return {
    pitch: traces(fit.pitchMm, u(0), known.pitch),
    radius: traces(fit.crestRadiusMm, u(2), known.radius),
  };
}

/** Beyond a 95 % interval. */
const outside = 0.05;

/** Spread of the pitch, relative, by other periods, once they are too likely to lie outside a 95 %
 *  interval; less likely ones are left to the matching. */
function doubtOf(others: readonly OtherPeriod[]): number {
  const all = others.reduce((sum, { share }) => sum + share, 0);
  if (all < outside) return 0;
  return Math.sqrt(others.reduce((sum, { ratio, share }) => sum + share * (ratio - 1) ** 2, 0));
}
