import type { Estimate } from '../../quantity/estimate';
import * as portable from '../../quantity/portable-math';
import {
  type OutlinePoint,
  type OutlineView,
  outlineEdges,
  type Side,
} from '../4-thread-signal/outline-edges';
import { coneBySides } from './cone-by-sides';
import { coneThrough, type NosePoint, ratherRim, straightRun, uSystematicDeg } from './nose-cone';
import type { ThreadSolution } from './thread-solution';

export type NoseThread = Pick<ThreadSolution, 'frame' | 'zone'> & {
  readonly fit: Pick<ThreadSolution['fit'], 'crestRadiusMm' | 'halfTaper' | 'middleS' | 'pitchMm'>;
};

export const sides: readonly Side[] = ['left', 'right'];

/** What tells a cone from the chamfer that leads into any thread. A chamfer starts little below the
 *  root and climbs to the crests; a flare's cone ends at or below the root (common practice; the
 *  chamfer's depth of about a pitch too). Shares of the crest radius and of the pitch. */
const leastFall = { ofRadius: 0.15, ofPitch: 0.5 };
/** Below the roots no chamfer is as deep as this, pitches. */
const deeperThanChamfers = 1.3;
/** What lies nearer to the crests than this is the thread itself, pitches. */
export const crestBand = 0.5;
const leastLength = { px: 8, mm: 0.9 };
const widestDeg = { from: 20, to: 60 };
/** Left and right of one cone agree; a shadow's edge rarely mirrors the metal's. */
const sidesDifferDeg = 4;
/** How much an edge's bias may differ between a cone's ends, as a share of the blur. */
const biasOfBlur = 0.2;
/** Flare cones are 8° apart: an angle less sure than this would not keep them apart. */
const uMostDeg = 2;

/** Half angle of the cone ahead of the thread; null when there is none, or none is resolved. `isCone`: it is known that
 *  there is one, so that a side of it will do. */
export function noseHalfAngle(
  view: OutlineView,
  thread: NoseThread,
  isCone: boolean,
): Estimate | null {
  const { fit, zone } = thread;
  const radiusMm = fit.crestRadiusMm + fit.halfTaper * (zone.fromS - fit.middleS);
  const points = sides.flatMap((side) => noseOutline(view, thread, side, radiusMm));
  const found = coneOfBoth(view, points, radiusMm, fit.pitchMm);
  if (found || !isCone) return found;
  const near = {
    from: zone.fromS - noseReach.radii * radiusMm,
    to: zone.fromS + noseReach.turns * fit.pitchMm,
  };
  const ceiling = radiusMm - crestBand * fit.pitchMm;
  return coneBySides(
    points.filter(({ r, s }) => r < ceiling && s > near.from && s < near.to),
    view.mmPerPx,
  );
}

/** Where a cone lies against the first whole turn: its length and up to two and a half turns ahead, and not on the
 *  thread (common practice). */
const noseReach = { radii: 1.1, turns: 1 };

/** By both sides together. The thread's frame has its axis between both outlines, so that an axis turned on the card makes
 *  one side steeper and the other flatter by as much. */
function coneOfBoth(
  { mmPerPx, response }: OutlineView,
  points: readonly NosePoint[],
  radiusMm: number,
  p: number,
): Estimate | null {
  const ceiling = radiusMm - crestBand * p;
  const below = points.filter((q) => q.r < ceiling);
  const run = straightRun(below, mmPerPx, widestDeg);
  if (!run || ratherRim(run)) return null;
  const cone = coneThrough(run, mmPerPx, 1.5 * response.blurPx * mmPerPx);
  if (!cone) return null;
  const { fromR, toR } = cone;
  if (cone.usedMm < Math.max(leastLength.px * mmPerPx, leastLength.mm)) return null;
  if (toR - fromR < Math.max(leastFall.ofRadius * radiusMm, leastFall.ofPitch * p)) return null;
  if (Math.abs(cone.sidesDeg.left - cone.sidesDeg.right) > sidesDifferDeg) return null;
  if (
    toR - fromR < deeperThanChamfers * p &&
    climbsToCrests(points, cone, ceiling, 0.25 * p, 1.5 * mmPerPx)
  )
    return null;
  const slope = portable.tan((cone.halfAngleDeg * Math.PI) / 180);
  const bias = (biasOfBlur * response.blurPx * mmPerPx) / cone.usedMm / (1 + slope * slope);
  const u = Math.hypot(cone.uDeg, uSystematicDeg, (bias * 180) / Math.PI);
  if (u > uMostDeg || cone.halfAngleDeg < widestDeg.from || cone.halfAngleDeg > widestDeg.to)
    return null;
  return { value: cone.halfAngleDeg, u };
}

/** The outline from beyond the free end to the first whole turn. */
export function noseOutline(
  view: OutlineView,
  { frame, zone, fit }: NoseThread,
  side: Side,
  radiusMm: number,
): OutlinePoint[] {
  // The zone leaves out the turns over the chamfer, up to two and a half.
  const where = {
    fromS: zone.fromS - 1.3 * radiusMm - 3 * fit.pitchMm,
    toS: zone.fromS + 0.5 * fit.pitchMm,
  };
  // Cones climb by 0.45 to 1.
  const band = { fromR: 0.2 * radiusMm, toR: 1.06 * radiusMm, steepness: 0.8 };
  return outlineEdges(view, frame, { side, zone: where, band: () => band });
}

/** Whether the cone's line goes on among the crests, as a chamfer's does. */
function climbsToCrests(
  points: readonly NosePoint[],
  cone: { readonly at: (q: NosePoint) => number },
  ceilingMm: number,
  climbMm: number,
  toleranceMm: number,
): boolean {
  const above = (side: Side) =>
    points.filter(
      (q) =>
        q.side === side &&
        q.r >= ceilingMm &&
        q.r < ceilingMm + climbMm &&
        Math.abs(cone.at(q)) < toleranceMm,
    );
  return sides.some((side) => {
    const found = above(side).map((q) => q.r);
    return found.length >= 3 && Math.max(...found) - Math.min(...found) > 0.5 * climbMm;
  });
}
