import { middleValue } from '../../quantity/order';
import type { Extent } from '../4-thread-signal/axis-frame';
import { type OutlineView, outlineEdges } from '../4-thread-signal/outline-edges';
import { type NoseThread, sides } from '../5-measurement/nose-angle';
import { type NosePoint, unbroken } from '../5-measurement/nose-cone';
import type { ThreadSolution } from '../5-measurement/thread-solution';

/** What lies about a part between its thread and its hex: from where to where along the axis, and how far from it. */
export interface BasePlace extends Extent {
  readonly radiusMm: number;
}

export type BaseThread = NoseThread & Pick<ThreadSolution, 'hexHalfWidthMm'>;

/** Sizes in pitches. O-rings of stud ends are 1.3 to 1.5 pitches thick (ISO 11926-2, ISO 6149-2: 1.83 mm at 20 tpi,
 *  2.9 mm at 2 mm), and stand in a groove half a pitch below the crests; shoulders vary (judgement). `after` the last
 *  whole turn there is a run-out. */
const usual = {
  'o-ring': { long: 1.4, beyondCrests: 0.85, after: 0.1 },
  shoulder: { long: 1.5, beyondCrests: 1.2, after: 0.8 },
} as const;
/** A ring's outline bulges, and one that was stretched is thinner (judgement). */
const ringBand = 0.5;
/** A shoulder stands out by this much at least, pitches, and by this share of what the hex does at most. */
const shoulderBand = { least: 0.25, ofHex: 0.75 };
const levelPx = 2;
const gapPx = 4;
/** Shorter than this, the outline tells no place, pitches (judgement). */
const least = 0.5;
/** A turn and a half of run-out, an undercut, and what lies there (common practice). */
const reach = 6;

/** Where the outline beyond the thread's last turn runs level on both sides as a ring or a shoulder does; where it does
 *  not, where they usually are. */
export function basePlace(
  view: OutlineView,
  thread: BaseThread,
  kind: 'o-ring' | 'shoulder',
): BasePlace {
  const { frame, fit, zone, hexHalfWidthMm } = thread;
  const p = fit.pitchMm;
  const crestMm = fit.crestRadiusMm + fit.halfTaper * (zone.toS - fit.middleS);
  const { long, beyondCrests, after } = usual[kind];
  const radiusMm = crestMm + beyondCrests * p;
  const hexMm = hexHalfWidthMm ?? crestMm + 4 * p;
  const [from, to] =
    kind === 'o-ring'
      ? [radiusMm - ringBand * p, radiusMm + ringBand * p]
      : [crestMm + shoulderBand.least * p, crestMm + shoulderBand.ofHex * (hexMm - crestMm)];
  const band = { fromR: 0.8 * crestMm, toR: 1.06 * hexMm };
  const where = { fromS: zone.toS - 0.5 * p, toS: zone.toS + reach * p };
  const points = sides
    .flatMap((side) => outlineEdges(view, frame, { side, zone: where, band: () => band }))
    .filter(({ r }) => r > from && r < to);
  const toleranceMm = kind === 'o-ring' ? ringBand * p : levelPx * view.mmPerPx;
  const found = levelRun(points, toleranceMm, gapPx * view.mmPerPx);
  if (found && found.toS - found.fromS > least * p) return found;
  const fromS = zone.toS + after * p;
  return { fromS, toS: fromS + long * p, radiusMm };
}

/** The longest stretch that both sides share at one radius. */
export function levelRun(
  points: readonly NosePoint[],
  toleranceMm: number,
  gapMm: number,
): BasePlace | null {
  let best: NosePoint[] = [];
  for (const bin of new Set(points.map(({ r }) => Math.round((2 * r) / toleranceMm)))) {
    const near = points.filter(({ r }) => Math.abs(r - (bin * toleranceMm) / 2) < toleranceMm);
    const run = unbroken(near, gapMm);
    if (run.length > best.length) best = run;
  }
  if (best.length === 0) return null;
  const s = best.map((q) => q.s);
  return {
    fromS: Math.min(...s),
    toS: Math.max(...s),
    radiusMm: middleValue(best.map(({ r }) => r)),
  };
}
