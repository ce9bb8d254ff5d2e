import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import { sampleLinear } from '../2-card-pose/sampling';
import type { PhotoPoint } from '../overlay';

/** The graduations of a rule: a band along the line through two of them, in the photo's pixels.
 *  `beside` counts to the left of the line as seen. */
export interface RuleStrip {
  readonly origin: PhotoPoint;
  /** Unit vector from the first point to the second. */
  readonly along: readonly [number, number];
  readonly fromPx: number;
  readonly toPx: number;
}

/** Divisions of steel rules: half and whole millimetres, 8ths to 64ths of an inch (common practice). */
const divisionsMm = [0.5, 1, 25.4 / 8, 25.4 / 16, 25.4 / 32, 25.4 / 64];
const reachMm = 12;
const rowMm = 0.3;
const windowMm = 13;
/** The two points are tapped on graduations, or a little beside them. */
const besideMm = 2.5;
const marginMm = 0.8;

/** How far the graduations reach on either side of the tapped line: rows along it that repeat with
 *  a rule's division. A rule's own lines repeat like a thread and must not be taken for one. */
export function ruleStrip(
  grey: GreyImage,
  from: PhotoPoint,
  to: PhotoPoint,
  pxPerMm: number,
): RuleStrip {
  const lengthPx = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const lengthMm = lengthPx / pxPerMm;
  const along = [(to[0] - from[0]) / lengthPx, (to[1] - from[1]) / lengthPx] as const;
  const offsets: number[] = [];
  for (let r = -reachMm; r <= reachMm + 1e-9; r += rowMm) offsets.push(r);
  const stepMm = Math.max(0.5 / pxPerMm, 0.04);
  // Left of a line that runs right is up in the photo: (dy, −dx) with y down, as in axis-frame.ts.
  const spanMm = Math.max(lengthMm, 2 * windowMm);
  const rows = offsets.map((r) =>
    Float64Array.from({ length: Math.floor(spanMm / stepMm) + 1 }, (_, i) => {
      const t = 0.5 + (i * stepMm - spanMm / 2) / lengthMm;
      const x = from[0] + t * (to[0] - from[0]) + r * along[1] * pxPerMm;
      const y = from[1] + t * (to[1] - from[1]) - r * along[0] * pxPerMm;
      return Math.sqrt(sampleLinear(grey, x, y));
    }),
  );
  const near = offsets.flatMap((r, i) => (Math.abs(r) <= besideMm ? [i] : []));
  let shares = new Float64Array(offsets.length);
  let strongest = 0;
  for (const division of divisionsMm) {
    if (division < 2.5 / pxPerMm) continue;
    const tried = Float64Array.from(rows, (row) => repetition(row, stepMm, division));
    const here = Math.max(...near.map((i) => tried[i]));
    if (here <= strongest) continue;
    strongest = here;
    shares = tried;
  }
  const start = near.reduce((best, i) => (shares[i] > shares[best] ? i : best), near[0]);
  const level = Math.max(0.08, 0.3 * strongest);
  const end = (direction: 1 | -1) => {
    let reached = start;
    for (let i = start; i >= 0 && i < offsets.length; i += direction) {
      if (shares[i] > level) reached = i;
      else if (Math.abs(i - reached) * rowMm > 0.9) break;
    }
    return offsets[reached];
  };
  const seen = strongest > 0.12;
  return {
    origin: from,
    along,
    fromPx: ((seen ? Math.min(0, end(-1)) : -besideMm) - marginMm) * pxPerMm,
    toPx: ((seen ? Math.max(0, end(1)) : besideMm) + marginMm) * pxPerMm,
  };
}

/** Four corners of the strip, run on beyond the photo at both ends. */
export function stripCorners(
  { origin, along, fromPx, toPx }: RuleStrip,
  { width, height }: GreyImage,
): PhotoPoint[] {
  const reachPx = width + height;
  const at = (t: number, beside: number): PhotoPoint => [
    origin[0] + t * along[0] + beside * along[1],
    origin[1] + t * along[1] - beside * along[0],
  ];
  return [at(-reachPx, fromPx), at(reachPx, fromPx), at(reachPx, toPx), at(-reachPx, toPx)];
}

/** Share of a row's variance at a period and its second harmonic, mean over windows. */
function repetition(row: Float64Array, stepMm: number, periodMm: number): number {
  const n = Math.min(row.length, Math.round(Math.max(windowMm, 6 * periodMm) / stepMm));
  let sum = 0;
  let count = 0;
  for (let from = 0; from + n <= row.length; from += Math.max(1, n >> 1)) {
    const part = row.subarray(from, from + n);
    if (!part.every(Number.isFinite)) continue;
    const mean = part.reduce((s, v) => s + v, 0) / n;
    let energy = 1e-6;
    for (const v of part) energy += (v - mean) ** 2;
    let share = 0;
    for (const h of [1, 2]) {
      let c = 0;
      let s = 0;
      part.forEach((v, i) => {
        const angle = (2 * Math.PI * h * i * stepMm) / periodMm;
        c += (v - mean) * portable.cos(angle);
        s += (v - mean) * portable.sin(angle);
      });
      share += (2 * (c * c + s * s)) / (n * energy);
    }
    // Blank metal has noise only: nothing repeats in it.
    sum += energy / n > 0.02 ? Math.min(1, share) : 0;
    count++;
  }
  return count ? sum / count : 0;
}
