import type { Estimate } from '../../quantity/estimate';
import { aboutMean } from '../../quantity/linear-fit';
import * as portable from '../../quantity/portable-math';
import type { Side } from '../4-thread-signal/outline-edges';
import { longestStretch, type NosePoint, pointsPerNew } from './nose-cone';

/** Where a cone is known to be: an outline of this length and as straight as this is one of its sides. */
const leastLength = { px: 20, mm: 0.9 };
const uSureDeg = 1;
/** One that is less sure still says how the axis is turned. */
const uMostDeg = 3;
/** Standard uncertainty of how far the axis is turned against the outline that either side has in one photo: it makes one
 *  side steeper and the other flatter by as much (judgement, with 33 cones of seed 82003, photos-wide and another
 *  renderer in view: the angles that come out are off by 0.75° in the root mean square, by 2.6° at most). */
const uTurnDeg = 1.5;
/** Of what is left where both tell (judgement, likewise). */
const uSystematicDeg = 1;
/** Sides that differ by more, in standard uncertainties, are no two sides of one cone. */
const sidesDifferU = 2.5;
const anglesDeg = { from: 22, to: 58 };
const gapPx = 4;

/** Half angle of a cone, degrees, by either side of its outline on its own: where light hides the other, or the axis lies
 *  aside, both are no straight line together. For ends that are known to have a cone: what is as straight on others may
 *  be anything. Null where neither side tells, or where they contradict each other. */
export function coneBySides(points: readonly NosePoint[], mmPerPx: number): Estimate | null {
  const told = (['left', 'right'] as const).flatMap(
    (side) => lineThrough(straightest(points, side, mmPerPx), mmPerPx) ?? [],
  );
  const [one, other] = told;
  if (!one || !told.some(({ u }) => u <= uSureDeg)) return null;
  const alone = Math.hypot(one.u, uTurnDeg, uSystematicDeg);
  if (!other) return { value: one.value, u: alone };
  const apart = Math.hypot(one.u, other.u, 2 * uTurnDeg);
  if (Math.abs(one.value - other.value) > sidesDifferU * apart) return null;
  // Both are the angle and the turn, with opposite signs: least squares with what the turn is beforehand.
  const weights = [other, one].map(({ u }) => u ** 2 + 2 * uTurnDeg ** 2);
  const sum = weights[0]! + weights[1]!;
  const value = (weights[0]! * one.value + weights[1]! * other.value) / sum;
  const [a, b] = [one.u ** 2, other.u ** 2];
  const variance = (a * b + (a + b) * uTurnDeg ** 2) / sum;
  return { value, u: Math.hypot(Math.sqrt(variance), uSystematicDeg) };
}

/** The longest stretch of one side, without a gap, along one line that rises towards the thread. */
function straightest(points: readonly NosePoint[], side: Side, mmPerPx: number): NosePoint[] {
  const own = points.filter((q) => q.side === side).sort((a, b) => a.s - b.s);
  let best: NosePoint[] = [];
  for (let deg = anglesDeg.from; deg <= anglesDeg.to; deg++) {
    const sin = portable.sin((deg * Math.PI) / 180);
    const cos = portable.cos((deg * Math.PI) / 180);
    const lines = own.map((q) => (q.r * cos - q.s * sin) / mmPerPx);
    for (const k of new Set(lines.map(Math.round))) {
      const run = longestStretch(
        own.filter((_, i) => Math.abs(lines[i]! - k) < 1),
        gapPx * mmPerPx,
      );
      if (run.length > best.length) best = run;
    }
  }
  return best;
}

const fewestPoints = 8;
/** Outlines are no sharper than this, px. */
const leastScatterPx = 0.1;

/** Angle of a straight side and its u by the scatter about it, degrees; null where it tells too little. The limb of a cone
 *  lies nearer to the axis than its radius by what nose-cone.ts says. */
function lineThrough(run: readonly NosePoint[], mmPerPx: number): Estimate | null {
  let kept = run;
  let m = 0.8;
  let u = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 5; round++) {
    if (kept.length < fewestPoints) return null;
    const now = m;
    const radius = (q: NosePoint) => q.r * Math.sqrt(Math.max(0.2, 1 - (now * q.slope) ** 2));
    const mean = aboutMean(kept, (q) => q.s, radius);
    m = mean.sxy / mean.sxx;
    const off = (q: NosePoint) => radius(q) - mean.y - m * (q.s - mean.x);
    const squares = kept.reduce((sum, q) => sum + off(q) ** 2, 0);
    const scatter = Math.max(leastScatterPx * mmPerPx, Math.sqrt(squares / (kept.length - 2)));
    u = (scatter * Math.sqrt(pointsPerNew)) / Math.sqrt(mean.sxx);
    const within = run.filter((q) => Math.abs(off(q)) < 3 * scatter);
    if (round < 4) kept = within;
  }
  const along = kept.map((q) => q.s);
  const lengthMm = Math.max(...along) - Math.min(...along);
  if (lengthMm < Math.max(leastLength.px * mmPerPx, leastLength.mm)) return null;
  const perSlope = 180 / Math.PI / (1 + m * m);
  if (u * perSlope > uMostDeg) return null;
  return { value: (portable.atan(m) * 180) / Math.PI, u: u * perSlope };
}
