import { aboutMean } from '../../quantity/linear-fit';
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

/** Of an angle that is seen without noise: edges, axis, lens. */
export const uSystematicDeg = 0.5;

/** Of each side the longest stretch without a gap; of both what they have in common along s. */
export function unbroken(points: readonly NosePoint[], gapMm: number): NosePoint[] {
  const stretches = (['left', 'right'] as const).map((side) => {
    const sorted = points.filter((q) => q.side === side).sort((a, b) => a.s - b.s);
    return longestStretch(sorted, gapMm);
  });
  if (stretches.some((run) => run.length < 2)) return [];
  const from = Math.max(...stretches.map((run) => run[0]!.s));
  const to = Math.min(...stretches.map((run) => run[run.length - 1]!.s));
  return stretches.flat().filter((q) => q.s >= from && q.s <= to);
}

/** Of points in order the longest stretch without a gap. */
export function longestStretch(sorted: readonly NosePoint[], gapMm: number): NosePoint[] {
  let best: NosePoint[] = [];
  let run: NosePoint[] = [];
  for (const q of sorted) {
    if (run.length > 0 && q.s - run[run.length - 1]!.s > gapMm) run = [];
    run.push(q);
    if (run.length > best.length) best = run;
  }
  return best;
}

/** Whether the run is rather the rim of a flat face that is seen at a slant: half an ellipse, in grazing
 *  coordinates s = end − |t|·√(ρ² − r²), whose shoulder looks straight over a short stretch. Two
 *  unknowns, as for the line, so that the residuals compare; in doubt it is the rim. */
export function ratherRim(run: readonly NosePoint[]): boolean {
  const squares = (residual: (q: NosePoint) => number) => {
    const list = run.map(residual);
    const mean = list.reduce((a, v) => a + v, 0) / list.length;
    return list.reduce((a, v) => a + (v - mean) ** 2, 0);
  };
  const meanS = run.reduce((a, q) => a + q.s, 0) / run.length;
  const meanR = run.reduce((a, q) => a + q.r, 0) / run.length;
  const srr = run.reduce((a, q) => a + (q.r - meanR) ** 2, 0);
  const inverse = run.reduce((a, q) => a + (q.r - meanR) * (q.s - meanS), 0) / srr;
  const asLine = squares((q) => q.s - inverse * q.r);
  const top = Math.max(...run.map((q) => q.r));
  let asRim = Number.POSITIVE_INFINITY;
  for (let rho = top; rho < 1.5 * top; rho += 0.01 * top)
    asRim = Math.min(
      asRim,
      squares((q) => q.s + Math.abs(q.slope) * Math.sqrt(rho * rho - q.r * q.r)),
    );
  return asRim < rimDoubt * asLine;
}

const rimDoubt = 2;

export interface Cone {
  readonly halfAngleDeg: number;
  /** From the scatter along both sides and their disagreement. */
  readonly uDeg: number;
  readonly sidesDeg: Readonly<Record<Side, number>>;
  readonly fromS: number;
  readonly toS: number;
  /** Length of the stretch that gave the angle. */
  readonly usedMm: number;
  /** Radii at the run's ends. */
  readonly fromR: number;
  readonly toR: number;
  /** Perpendicular distance of a point outside the cone's line, mm. */
  readonly at: (q: NosePoint) => number;
}

/** A cone r = m·(s − apex) fitted to a run. Seen along a ray of slope t it is touched off the side, at
 *  the azimuth where its normal is square to the ray, sin ψ = −m·t; there the grazing coordinates are
 *  r' = r·√(1 − m²t²) and s' = s·(1 − m²t²) from the apex, so that r'·√(1 − m²t²) = m·s' holds at every
 *  distance. Of all stretches of the run, at least half of it, the one that says most of the angle:
 *  corners rounded by blur, or a chamfer beyond, scatter more than they lengthen. */
export function coneThrough(
  run: readonly NosePoint[],
  mmPerPx: number,
  trimMm: number,
): Cone | null {
  const s = run.map((q) => q.s);
  const ends = { fromS: Math.min(...s), toS: Math.max(...s) };
  const fromS = ends.fromS + trimMm;
  const toS = ends.toS - trimMm;
  const most = Math.max(0, (toS - fromS) / 2);
  const step = Math.max(mmPerPx, most / 8);
  const tried: { cone: Cone; cut: number; u: number }[] = [];
  for (let a = 0; a <= most + 1e-9; a += step)
    for (let b = 0; a + b <= most + 1e-9; b += step) {
      const cone = coneBetween(run, fromS + a, toS - b, ends, mmPerPx);
      if (cone) tried.push({ cone, cut: a + b, u: Math.hypot(cone.uDeg, uSystematicDeg) });
    }
  const least = Math.min(...tried.map(({ u }) => u));
  const good = tried.filter(({ u }) => u <= 1.15 * least);
  return good.sort((a, b) => a.cut - b.cut || a.u - b.u)[0]?.cone ?? null;
}

function coneBetween(
  run: readonly NosePoint[],
  fromS: number,
  toS: number,
  ends: { readonly fromS: number; readonly toS: number },
  mmPerPx: number,
): Cone | null {
  const within = run.filter((q) => q.s >= fromS && q.s <= toS);
  let kept = within;
  let m = 0.8;
  let fits: Record<Side, Line> | null = null;
  for (let round = 0; round < 5; round++) {
    const now = m;
    const corrected = (q: NosePoint) => q.r * Math.sqrt(Math.max(0.2, 1 - (now * q.slope) ** 2));
    const of = (side: Side) =>
      line(
        kept.filter((q) => q.side === side),
        corrected,
      );
    const left = of('left');
    const right = of('right');
    if (!left || !right) return null;
    fits = { left, right };
    const [wl, wr] = [1 / left.u ** 2, 1 / right.u ** 2];
    m = (left.m * wl + right.m * wr) / (wl + wr);
    const limit = 3 * Math.max(0.1 * mmPerPx, Math.hypot(left.scatter, right.scatter) / Math.SQRT2);
    const lines = fits;
    kept = within.filter((q) => Math.abs(corrected(q) - onLine(lines[q.side], q.s)) < limit);
  }
  if (!fits) return null;
  const { left, right } = fits;
  const degrees = (slope: number) => (portable.atan(slope) * 180) / Math.PI;
  const sidesDeg = { left: degrees(left.m), right: degrees(right.m) };
  const perSlope = 180 / Math.PI / (1 + m * m);
  const bend = (left.bend + right.bend) / 2;
  const radius = (at: number) => (onLine(left, at) + onLine(right, at)) / 2;
  const lines = fits;
  return {
    halfAngleDeg: degrees(m),
    uDeg: Math.hypot(
      perSlope / Math.sqrt(1 / left.u ** 2 + 1 / right.u ** 2),
      (sidesDeg.left - sidesDeg.right) / 2,
      bendShare * perSlope * bend,
    ),
    sidesDeg,
    ...ends,
    fromR: radius(ends.fromS),
    toR: radius(ends.toS),
    usedMm: toS - fromS,
    at: (q) => {
      const r = q.r * Math.sqrt(Math.max(0.2, 1 - (m * q.slope) ** 2));
      return (r - onLine(lines[q.side], q.s)) / Math.hypot(1, m);
    },
  };
}

/** A slope that changes by b from one half to the other is somewhere within ± b/2: b/√12. */
const bendShare = 1 / Math.sqrt(12);

const onLine = (l: Line, s: number) => l.middleR + l.m * (s - l.middleS);

interface Line {
  readonly m: number;
  readonly middleS: number;
  readonly middleR: number;
  readonly scatter: number;
  readonly u: number;
  /** Slope of the upper half less that of the lower. */
  readonly bend: number;
}

/** Cuts half a pixel apart share blur and noise reduction: one in six counts as new. */
export const pointsPerNew = 6;

function line(points: readonly NosePoint[], r: (q: NosePoint) => number): Line | null {
  const n = points.length;
  if (n < 8) return null;
  const { x: middleS, y: middleR, sxx, sxy } = aboutMean(points, (q) => q.s, r);
  const m = sxy / sxx;
  const rss = points.reduce((a, q) => a + (r(q) - middleR - m * (q.s - middleS)) ** 2, 0);
  const scatter = Math.sqrt(rss / (n - 2));
  const u = (scatter * Math.sqrt(pointsPerNew)) / Math.sqrt(sxx);
  const half = (upper: boolean) => {
    const part = points.filter((q) => q.s > middleS === upper);
    const s0 = part.reduce((a, q) => a + q.s, 0) / part.length;
    const top = part.reduce((a, q) => a + (q.s - s0) * r(q), 0);
    return top / part.reduce((a, q) => a + (q.s - s0) ** 2, 0);
  };
  return { m, middleS, middleR, scatter, u, bend: half(true) - half(false) };
}
