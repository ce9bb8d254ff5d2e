import * as portable from '../../quantity/portable-math';
import type { Side } from '../4-thread-signal/outline-edges';

/** One outline point in grazing coordinates (axis-frame.ts), mm. */
export interface NosePoint {
  readonly side: Side;
  readonly s: number;
  readonly r: number;
  readonly slope: number;
}

/** The longest straight rise that both sides share: all angles tried, offsets counted in bins, then
 *  cut down to one unbroken stretch. Perpendicular tolerance one pixel. */
export function straightRun(
  points: readonly NosePoint[],
  mmPerPx: number,
  anglesDeg: { readonly from: number; readonly to: number },
): NosePoint[] | null {
  let best: NosePoint[] | null = null;
  let bestScore = 0;
  const bin = mmPerPx;
  for (let deg = anglesDeg.from; deg <= anglesDeg.to; deg += 0.5) {
    const sin = portable.sin((deg * Math.PI) / 180);
    const cos = portable.cos((deg * Math.PI) / 180);
    const off = (q: NosePoint) => q.r * cos - q.s * sin;
    const counts = new Map<number, { left: number; right: number }>();
    for (const q of points) {
      const k = Math.round(off(q) / bin);
      const count = counts.get(k) ?? { left: 0, right: 0 };
      count[q.side]++;
      counts.set(k, count);
    }
    for (const k of counts.keys()) {
      const of = (side: Side) =>
        [k - 1, k, k + 1].reduce((n, i) => n + (counts.get(i)?.[side] ?? 0), 0);
      if (2 * Math.min(of('left'), of('right')) <= bestScore) continue;
      const near = points.filter((q) => Math.abs(off(q) - k * bin) < bin);
      const run = unbroken(near, 3 * mmPerPx);
      const score = 2 * Math.min(countOf(run, 'left'), countOf(run, 'right'));
      if (score <= bestScore) continue;
      best = run;
      bestScore = score;
    }
  }
  return best;
}

const countOf = (points: readonly NosePoint[], side: Side) =>
  points.reduce((n, q) => n + (q.side === side ? 1 : 0), 0);

/** Of each side the longest stretch without a gap; of both what they have in common along s. */
function unbroken(points: readonly NosePoint[], gapMm: number): NosePoint[] {
  const stretches = (['left', 'right'] as const).map((side) => {
    const sorted = points.filter((q) => q.side === side).sort((a, b) => a.s - b.s);
    let best: NosePoint[] = [];
    let run: NosePoint[] = [];
    for (const q of sorted) {
      if (run.length > 0 && q.s - run[run.length - 1]!.s > gapMm) run = [];
      run.push(q);
      if (run.length > best.length) best = run;
    }
    return best;
  });
  if (stretches.some((run) => run.length < 2)) return [];
  const from = Math.max(...stretches.map((run) => run[0]!.s));
  const to = Math.min(...stretches.map((run) => run[run.length - 1]!.s));
  return stretches.flat().filter((q) => q.s >= from && q.s <= to);
}

export interface Cone {
  readonly halfAngleDeg: number;
  /** From the scatter along both sides and their disagreement. */
  readonly uDeg: number;
  readonly sidesDeg: Readonly<Record<Side, number>>;
  readonly fromS: number;
  readonly toS: number;
  /** Radii at the run's ends. */
  readonly fromR: number;
  readonly toR: number;
  /** Perpendicular distance of a point outside the cone's line, mm. */
  readonly at: (q: NosePoint) => number;
}

/** A cone r = m·(s − apex) fitted to a run. Seen along a ray of slope t it is touched off the side, at
 *  the azimuth where its normal is square to the ray, sin ψ = −m·t; there the grazing coordinates are
 *  r' = r·√(1 − m²t²) and s' = s·(1 − m²t²) from the apex, so that r'·√(1 − m²t²) = m·s' holds at every
 *  distance. The ends of the run are trimmed where blur rounds the corners. */
export function coneThrough(
  run: readonly NosePoint[],
  mmPerPx: number,
  trimMm: number,
): Cone | null {
  const s = run.map((q) => q.s);
  const fromS = Math.min(...s);
  const toS = Math.max(...s);
  let used = run.filter((q) => q.s >= fromS + trimMm && q.s <= toS - trimMm);
  let m = 0.8;
  let fits = null as Record<Side, Line> | null;
  for (let round = 0; round < 6; round++) {
    const corrected = (q: NosePoint) => q.r * Math.sqrt(Math.max(0.2, 1 - (m * q.slope) ** 2));
    const left = line(
      used.filter((q) => q.side === 'left'),
      corrected,
    );
    const right = line(
      used.filter((q) => q.side === 'right'),
      corrected,
    );
    if (!left || !right) return null;
    fits = { left, right };
    m = (left.m / left.u ** 2 + right.m / right.u ** 2) / (1 / left.u ** 2 + 1 / right.u ** 2);
    const scatter = Math.max(0.1 * mmPerPx, Math.hypot(left.scatter, right.scatter) / Math.SQRT2);
    const { left: l, right: r } = fits;
    used = run.filter((q) => {
      if (q.s < fromS + trimMm || q.s > toS - trimMm) return false;
      const side = q.side === 'left' ? l : r;
      return Math.abs(corrected(q) - side.middleR - side.m * (q.s - side.middleS)) < 3 * scatter;
    });
  }
  if (!fits) return null;
  const { left, right } = fits;
  const degrees = (slope: number) => (portable.atan(slope) * 180) / Math.PI;
  const sidesDeg = { left: degrees(left.m), right: degrees(right.m) };
  const perSlope = 180 / Math.PI / (1 + m * m);
  const radius = (at: number) =>
    (left.middleR + left.m * (at - left.middleS) + right.middleR + right.m * (at - right.middleS)) /
    2;
  return {
    halfAngleDeg: degrees(m),
    uDeg: Math.hypot(
      perSlope / Math.sqrt(1 / left.u ** 2 + 1 / right.u ** 2),
      (sidesDeg.left - sidesDeg.right) / 2,
    ),
    sidesDeg,
    fromS,
    toS,
    fromR: radius(fromS),
    toR: radius(toS),
    at: (q) => {
      const side = fits[q.side];
      const r = q.r * Math.sqrt(Math.max(0.2, 1 - (m * q.slope) ** 2));
      return (r - side.middleR - side.m * (q.s - side.middleS)) / Math.hypot(1, m);
    },
  };
}

interface Line {
  readonly m: number;
  readonly middleS: number;
  readonly middleR: number;
  readonly scatter: number;
  readonly u: number;
}

/** Cuts half a pixel apart share blur and noise reduction: one in four counts as new. */
const pointsPerNew = 4;

function line(points: readonly NosePoint[], r: (q: NosePoint) => number): Line | null {
  const n = points.length;
  if (n < 8) return null;
  const middleS = points.reduce((a, q) => a + q.s, 0) / n;
  const middleR = points.reduce((a, q) => a + r(q), 0) / n;
  let sxx = 0;
  let sxy = 0;
  for (const q of points) {
    sxx += (q.s - middleS) ** 2;
    sxy += (q.s - middleS) * (r(q) - middleR);
  }
  const m = sxy / sxx;
  const rss = points.reduce((a, q) => a + (r(q) - middleR - m * (q.s - middleS)) ** 2, 0);
  const scatter = Math.sqrt(rss / (n - 2));
  return { m, middleS, middleR, scatter, u: (scatter * Math.sqrt(pointsPerNew)) / Math.sqrt(sxx) };
}
