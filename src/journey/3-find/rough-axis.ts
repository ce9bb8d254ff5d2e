import * as portable from '../../quantity/portable-math';
import type { Blob, Pixel } from './fitting-blob';

/** Mirror line of the blob in the window view's pixels. */
export interface RoughAxis {
  readonly angleRad: number;
  /** A point on the line, pixels. */
  readonly through: Pixel;
  /** How well the mirror image covers the blob, 0…1. */
  readonly symmetry: number;
}

const scanRad = (3 * Math.PI) / 180;

/** Mirror lines of a blob, best first; a body of revolution has one along its axis, and a stubby
 *  fitting a second, poorer one across: the thread decides between them later. */
export function roughAxes(blob: Blob): RoughAxis[] {
  const edges = sparseEdges(blob, 1500);
  const scan: RoughAxis[] = [];
  for (let a = 0; a < Math.PI - 1e-9; a += scanRad) scan.push(mirror(blob, edges, a, 2));
  const peaks = scan.filter((axis, i) => {
    const before = scan[(i + scan.length - 1) % scan.length].symmetry;
    const after = scan[(i + 1) % scan.length].symmetry;
    return axis.symmetry >= before && axis.symmetry > after;
  });
  return peaks
    .sort((p, q) => q.symmetry - p.symmetry)
    .slice(0, 3)
    .map((peak) => refine(blob, edges, peak))
    .sort((p, q) => q.symmetry - p.symmetry);
}

/** Edges are broadened before they are mirrored, so that a degree to either side is almost as good and the
 *  very best of it is chance: the middle of what is almost as good is the axis. */
function refine(blob: Blob, edges: Int32Array, start: RoughAxis): RoughAxis {
  const around = Array.from({ length: 2 * fineSteps + 1 }, (_, i) =>
    mirror(blob, edges, start.angleRad + ((i - fineSteps) / fineSteps) * scanRad, 1),
  );
  const top = Math.max(...around.map(({ symmetry }) => symmetry));
  let sum = 0;
  let weights = 0;
  for (const { angleRad, symmetry } of around) {
    const w = Math.max(0, symmetry - (top - almost));
    sum += w * angleRad;
    weights += w;
  }
  return mirror(blob, edges, sum / weights, 1);
}

const fineSteps = 12;
const almost = 0.04;

/** Best of a few parallel lines around the hull's centroid: perspective and shading shift it. */
function mirror(blob: Blob, edges: Int32Array, angleRad: number, stepPx: number): RoughAxis {
  const c = portable.cos(angleRad);
  const s = portable.sin(angleRad);
  const [x0, y0] = blob.centroid;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const p of blob.hull) {
    const off = -(p[0] - x0) * s + (p[1] - y0) * c;
    if (off < least) least = off;
    if (off > most) most = off;
  }
  const middle = (most + least) / 2;
  const spread = most - least;
  const { width, height, data } = blob.nearEdges;
  let best: RoughAxis = { angleRad, through: blob.centroid, symmetry: -1 };
  for (let shift = -6; shift <= 6; shift += stepPx) {
    const off0 = middle + shift;
    let seen = 0;
    let met = 0;
    for (let e = 0; e < edges.length; e += 2) {
      const x = edges[e];
      const y = edges[e + 1];
      const twice = 2 * (-(x - x0) * s + (y - y0) * c - off0);
      const mx = x + twice * s + 0.5;
      const my = y - twice * c + 0.5;
      // What lies past the window's rim has no say.
      if (mx < 0 || my < 0 || mx >= width || my >= height) continue;
      seen++;
      // 0 or 255: every other edge meets one, and a branch would be guessed wrong as often.
      met += data[(my | 0) * width + (mx | 0)] & 1;
    }
    if (seen < edges.length / 4) continue;
    // The hull's extents must agree as well: texture inside mirrors onto texture anywhere.
    const symmetry = (met / seen) * (1 - Math.abs(shift) / spread);
    if (symmetry > best.symmetry)
      best = { angleRad, through: [x0 - s * off0, y0 + c * off0], symmetry };
  }
  return best;
}

/** x and y in turn. */
function sparseEdges({ edges }: Blob, wanted: number): Int32Array {
  const all: number[] = [];
  for (let i = 0; i < edges.data.length; i++) if (edges.data[i]) all.push(i);
  const stride = Math.max(1, Math.floor(all.length / wanted));
  const kept = all.filter((_, i) => i % stride === 0);
  return Int32Array.from({ length: 2 * kept.length }, (_, k) =>
    k % 2 === 0 ? kept[k >> 1] % edges.width : Math.floor(kept[k >> 1] / edges.width),
  );
}
