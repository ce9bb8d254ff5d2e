import { quantile } from '../../quantity/order';
import type { GreyImage } from '../../vision/grey-image';
import type { Component } from '../../vision/regions';
import type { Vision } from '../../vision/vision';
import type { WindowView } from './window-view';

/** A group of crisp edges in the window view: the fitting's outline and the texture inside it. */
export interface Blob {
  /** The edges themselves, and the same widened by `toleranceMm`. */
  readonly edges: GreyImage;
  readonly nearEdges: GreyImage;
  /** Convex hull of the edges, pixels, counter-clockwise as drawn with y down. */
  readonly hull: readonly Pixel[];
  readonly hullAreaMm2: number;
  readonly centroid: Pixel;
}

export type Pixel = readonly [x: number, y: number];

/** Where not to look, pixels of the view that are not 0; how far apart the edges of one thing may lie;
 *  how many blobs are worth a look. */
export interface Look {
  readonly ignored?: Uint8Array;
  readonly gapMm?: number;
  readonly most?: number;
}

const toleranceMm = 0.5;

/** Shadows are soft where metal's outline and texture are crisp: edges that lie within a few
 *  millimetres of each other belong to one thing. Largest first. An outline that fades into its
 *  background leaves gaps, so nothing here relies on it being closed. */
export function fittingBlobs(view: WindowView, vision: Vision, look: Look = {}): Blob[] {
  const { width, height, pxPerMm } = view;
  const { ignored, gapMm = 2.5, most = Number.POSITIVE_INFINITY } = look;
  const crisp = crispEdges(view, vision);
  if (ignored) for (let i = 0; i < crisp.data.length; i++) if (ignored[i]) crisp.data[i] = 0;
  const { components, labels } = vision.components(
    vision.close(crisp, Math.round(gapMm * pxPerMm)),
    4 * pxPerMm * pxPerMm,
  );
  const extent = (c: Component) => c.bbox.width * c.bbox.height;
  const chosen =
    components.length > most
      ? [...components].sort((a, b) => extent(b) - extent(a)).slice(0, most)
      : components;
  return chosen
    .map(({ label, bbox }): Blob => {
      const edges = new Uint8Array(crisp.data.length);
      const points: Pixel[] = [];
      for (let y = bbox.y; y < bbox.y + bbox.height; y++)
        for (let x = bbox.x; x < bbox.x + bbox.width; x++) {
          const i = y * width + x;
          if (labels[i] !== label || crisp.data[i] === 0) continue;
          edges[i] = crisp.data[i];
          points.push([x, y]);
        }
      const hull = convexHull(points);
      const { area, centroid } = areaAndCentroid(hull);
      return {
        edges: { width, height, data: edges },
        nearEdges: widened({ width, height, data: edges }, Math.round(toleranceMm * pxPerMm)),
        hull,
        hullAreaMm2: area / (pxPerMm * pxPerMm),
        centroid,
      };
    })
    .sort((a, b) => b.hullAreaMm2 - a.hullAreaMm2);
}

/** Several blobs of one view as one. */
export function together(blobs: readonly Blob[]): Blob {
  const [first, ...rest] = blobs;
  if (rest.length === 0) return first;
  const hull = convexHull(blobs.flatMap((one) => one.hull));
  const { area, centroid } = areaAndCentroid(hull);
  const own = areaAndCentroid(first.hull).area;
  return {
    edges: either(blobs.map(({ edges }) => edges)),
    nearEdges: either(blobs.map(({ nearEdges }) => nearEdges)),
    hull,
    hullAreaMm2: (area / own) * first.hullAreaMm2,
    centroid,
  };
}

function either([first, ...rest]: readonly GreyImage[]): GreyImage {
  const data = first.data.slice();
  for (const { data: more } of rest)
    for (let i = 0; i < data.length; i++) if (more[i]) data[i] = more[i];
  return { ...first, data };
}

/** Andrew's monotone chain. */
function convexHull(points: readonly Pixel[]): Pixel[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (list: readonly Pixel[]) => {
    const out: Pixel[] = [];
    for (const p of list) {
      while (out.length >= 2 && turn(out[out.length - 2], out[out.length - 1], p) <= 0) out.pop();
      out.push(p);
    }
    out.pop();
    return out;
  };
  return [...chain(sorted), ...chain(sorted.reverse())];
}

const turn = (a: Pixel, b: Pixel, c: Pixel) =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

function areaAndCentroid(hull: readonly Pixel[]): { area: number; centroid: Pixel } {
  let area = 0;
  let x = 0;
  let y = 0;
  hull.forEach((p, i) => {
    const q = hull[(i + 1) % hull.length];
    const cross = p[0] * q[1] - q[0] * p[1];
    area += cross / 2;
    x += ((p[0] + q[0]) * cross) / 6;
    y += ((p[1] + q[1]) * cross) / 6;
  });
  return Math.abs(area) > 1e-9
    ? { area: Math.abs(area), centroid: [x / area, y / area] }
    : { area: 0, centroid: hull[0] ?? [0, 0] };
}

function widened({ width, height, data }: GreyImage, radius: number): GreyImage {
  const rows = new Uint8Array(data.length);
  const out = new Uint8Array(data.length);
  for (let i = 0; i < data.length; i++)
    if (data[i])
      rows.fill(
        255,
        Math.max(i - radius, i - (i % width)),
        Math.min(i + radius + 1, i - (i % width) + width),
      );
  for (let i = 0; i < data.length; i++)
    if (rows[i])
      for (let k = -radius; k <= radius; k++) {
        const j = i + k * width;
        if (j >= 0 && j < out.length) out[j] = 255;
      }
  return { width, height, data: out };
}

/** Gradients that stand out against the same view blurred by a millimetre: a penumbra is alike in
 *  both, an outline is not. Weak ones count where they join strong ones. */
function crispEdges(view: WindowView, vision: Vision): GreyImage {
  const { width, height, pxPerMm } = view;
  const soft = gradient(vision.blur(view, 1.0 * pxPerMm));
  const fine = gradient(vision.blur(view, 0.8));
  // Most of the window is empty paper: its gradients are noise and JPEG blocks.
  const noise = quantile(everySeventh(fine).sort(), 0.5);
  const weak = Math.max(1.3, 3.5 * noise);
  const crisp = soft;
  const mask = new Uint8Array(crisp.length);
  for (let i = 0; i < mask.length; i++) {
    crisp[i] = fine[i] - 1.2 * soft[i];
    mask[i] = crisp[i] > weak ? 255 : 0;
  }
  const { components, labels } = vision.components({ width, height, data: mask }, 1);
  const anchored = new Uint8Array(1 + components.length);
  for (let i = 0; i < crisp.length; i++) if (crisp[i] > 3 * weak) anchored[labels[i]] = 255;
  anchored[0] = 0;
  for (let i = 0; i < mask.length; i++) mask[i] = anchored[labels[i]];
  return { width, height, data: mask };
}

/** Central differences, grey levels per pixel. */
function gradient({ width, height, data }: GreyImage): Float32Array {
  const magnitude = new Float32Array(width * height);
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      const dx = data[i + 1] - data[i - 1];
      const dy = data[i + width] - data[i - width];
      magnitude[i] = Math.sqrt(dx * dx + dy * dy) / 2;
    }
  }
  return magnitude;
}

function everySeventh(values: Float32Array): Float32Array {
  const sparse = new Float32Array(Math.ceil(values.length / 7));
  for (let i = 0; i < sparse.length; i++) sparse[i] = values[7 * i];
  return sparse;
}
