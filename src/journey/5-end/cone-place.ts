import { middleValue } from '../../quantity/order';
import * as portable from '../../quantity/portable-math';
import type { OutlineView, Side } from '../4-thread-signal/outline-edges';
import { crestBand, type NoseThread, noseOutline, sides } from '../5-measurement/nose-angle';
import { type NosePoint, unbroken } from '../5-measurement/nose-cone';

/** A cone ahead of a thread: r = tan(half angle)·(s − apex), between two radii. */
export interface ConePlace {
  readonly halfAngleDeg: number;
  /** Where either side's line meets the axis, mm along it: they differ where the axis lies aside. */
  readonly apexS: Readonly<Record<Side, number>>;
  readonly narrowMm: number;
  readonly wideMm: number;
}

const tangent = (deg: number) => portable.tan((deg * Math.PI) / 180);

/** How much nearer to the axis the limb of a cone lies than its radius, seen along a ray of this slope along the axis
 *  (nose-cone.ts says why). */
export const shrinkage = (halfAngleDeg: number, slope: number): number =>
  Math.sqrt(Math.max(0.2, 1 - (tangent(halfAngleDeg) * slope) ** 2));

/** Off the line by no more than this, px. */
const tolerancePx = 1.5;
const gapPx = 4;
/** Shorter than this on either side, the outline tells no place (judgement). */
const leastPx = 5;

/** Where the outline ahead of a thread runs along both sides of a cone of a known angle; null where it does not. */
export function coneAlong(
  points: readonly NosePoint[],
  halfAngleDeg: number,
  mmPerPx: number,
): ConePlace | null {
  const m = tangent(halfAngleDeg);
  const radius = (q: NosePoint) => q.r * shrinkage(halfAngleDeg, q.slope);
  const apex = (q: NosePoint) => q.s - radius(q) / m;
  const toleranceMm = (tolerancePx * mmPerPx) / portable.sin((halfAngleDeg * Math.PI) / 180);
  let best: NosePoint[] = [];
  for (const at of new Set(points.map((q) => Math.round(apex(q) / (toleranceMm / 2))))) {
    const near = points.filter((q) => Math.abs(apex(q) - (at * toleranceMm) / 2) < toleranceMm);
    const run = unbroken(near, gapPx * mmPerPx);
    if (run.length > best.length) best = run;
  }
  const along = best.map(radius);
  const [narrowMm, wideMm] = [Math.min(...along), Math.max(...along)];
  if (!(wideMm - narrowMm > leastPx * mmPerPx * m)) return null;
  const of = (side: Side) => middleValue(best.filter((q) => q.side === side).map(apex));
  return { halfAngleDeg, apexS: { left: of('left'), right: of('right') }, narrowMm, wideMm };
}

/** As cones are usually made: their wide end stands at the root, half a turn before the thread's first whole one,
 *  their narrow end at two thirds of that (judgement). */
const usual = { depthOfPitch: 0.75, turnsAhead: 0.5, narrow: 0.65 };

/** The cone of a claimed angle ahead of a thread: on the line that the outline shows, as far as cones usually reach,
 *  since dirt and blur hide an outline here and there; where none is shown, where cones usually are. */
export function conePlace(view: OutlineView, thread: NoseThread, halfAngleDeg: number): ConePlace {
  const { fit, zone } = thread;
  const crestMm = fit.crestRadiusMm + fit.halfTaper * (zone.fromS - fit.middleS);
  const points = sides
    .flatMap((side) => noseOutline(view, thread, side, crestMm))
    .filter(({ r }) => r < crestMm - crestBand * fit.pitchMm);
  const found = coneAlong(points, halfAngleDeg, view.mmPerPx);
  const wideMm = crestMm - usual.depthOfPitch * fit.pitchMm;
  const narrowMm = usual.narrow * wideMm;
  if (found)
    return {
      ...found,
      narrowMm: Math.min(narrowMm, found.narrowMm),
      wideMm: Math.max(wideMm, found.wideMm),
    };
  const apexS = zone.fromS - usual.turnsAhead * fit.pitchMm - wideMm / tangent(halfAngleDeg);
  return { halfAngleDeg, apexS: { left: apexS, right: apexS }, narrowMm, wideMm };
}

/** Where the limb of a cone of this radius is seen, as r and s of `limbPoint`. */
export function onCone(
  { halfAngleDeg, apexS }: ConePlace,
  side: Side,
  radiusMm: number,
  slopeAt: (s: number) => number,
): { readonly s: number; readonly r: number } {
  const along = radiusMm / tangent(halfAngleDeg);
  const shrink = shrinkage(halfAngleDeg, slopeAt(apexS[side] + along));
  return {
    s: apexS[side] + along * shrink * shrink,
    r: (side === 'left' ? 1 : -1) * radiusMm * shrink,
  };
}
