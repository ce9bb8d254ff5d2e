import { quantile } from '../../quantity/order';
import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';

/** Steep places of a reduced photo, and the straight lines that many of them share. */
export interface EdgeField {
  readonly width: number;
  readonly height: number;
  /** Slope towards more light, grey levels per pixel; 0 where it is not steep. */
  readonly gx: Float32Array;
  readonly gy: Float32Array;
}

/** A line with the light on the side that its normal points to: nx·x + ny·y = offset. */
export interface StraightEdge {
  readonly angleRad: number;
  readonly nx: number;
  readonly ny: number;
  readonly offset: number;
}

/** Outlines cover a few per cent of a photo; grain of wood and cloth lies below them. */
const steepShare = 0.08;
const leastSlope = 3;

export function edgeField({ width, height, data }: GreyImage): EdgeField {
  const gx = new Float32Array(width * height);
  const gy = new Float32Array(width * height);
  const size = new Float32Array(width * height);
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      // Scharr's kernel, whose direction is right within a degree (H. Scharr, thesis, Heidelberg 2000,
      // from memory).
      const a = data[i - width - 1];
      const c = data[i - width + 1];
      const f = data[i + width - 1];
      const h = data[i + width + 1];
      gx[i] = (3 * (c + h - a - f) + 10 * (data[i + 1] - data[i - 1])) / 32;
      gy[i] = (3 * (f + h - a - c) + 10 * (data[i + width] - data[i - width])) / 32;
      size[i] = Math.sqrt(gx[i] * gx[i] + gy[i] * gy[i]);
    }
  const sorted = size.slice().sort();
  const least = Math.max(leastSlope, quantile(sorted, 1 - steepShare));
  for (let i = 0; i < size.length; i++) if (size[i] < least) gx[i] = gy[i] = 0;
  return { width, height, gx, gy };
}

const angleBins = 180;
const offsetBinPx = 1.5;
const most = 40;

/** Hough's transform with each point's own direction (D. H. Ballard, Pattern Recognition 13, 1981): a point
 *  votes for lines within a few degrees of it, so that grain does not add up. Strongest first. */
export function straightEdges(field: EdgeField): StraightEdge[] {
  const { width, height, gx, gy } = field;
  const reach = Math.hypot(width, height) / 2;
  const offsets = 2 * Math.ceil(reach / offsetBinPx) + 1;
  const votes = new Float32Array(angleBins * offsets);
  const directions = Array.from({ length: angleBins }, (_, k) => {
    const angle = (2 * Math.PI * k) / angleBins;
    return [portable.cos(angle), portable.sin(angle)] as const;
  });
  const cx = (width - 1) / 2;
  const cy = (height - 1) / 2;
  const steep = steepPlaces(field);
  for (let q = 0; q < steep.length; q += 2) {
    const x = steep[q];
    const y = steep[q + 1];
    const i = y * width + x;
    const own = Math.round((portable.atan2(gy[i], gx[i]) / (2 * Math.PI)) * angleBins);
    for (let k = own - 2; k <= own + 2; k++) {
      const bin = (k + 2 * angleBins) % angleBins;
      const [c, s] = directions[bin];
      const at = Math.round((c * (x - cx) + s * (y - cy)) / offsetBinPx) + (offsets >> 1);
      votes[bin * offsets + at]++;
    }
  }
  const edges: StraightEdge[] = [];
  while (edges.length < most) {
    let best = 0;
    let bin = 0;
    for (let i = 0; i < votes.length; i++)
      if (votes[i] > best) {
        best = votes[i];
        bin = i;
      }
    if (best < 0.04 * width) break;
    const k = Math.floor(bin / offsets);
    const at = bin % offsets;
    const edge = refined(field, steep, directions[k], (at - (offsets >> 1)) * offsetBinPx);
    if (edge) edges.push(edge);
    for (let dk = -4; dk <= 4; dk++)
      for (let d = -4; d <= 4; d++) {
        const row = (k + dk + angleBins) % angleBins;
        if (at + d >= 0 && at + d < offsets) votes[row * offsets + at + d] = 0;
      }
  }
  return edges;
}

/** Where the field is steep, x and y in turn. */
function steepPlaces({ width, height, gx, gy }: EdgeField): Int32Array {
  const places: number[] = [];
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      if (gx[i] !== 0 || gy[i] !== 0) places.push(x, y);
    }
  return Int32Array.from(places);
}

/** The line again, by least squares on the points near it that face its way. */
function refined(
  { width, height, gx, gy }: EdgeField,
  steep: Int32Array,
  start: readonly [number, number],
  startOffset: number,
): StraightEdge | null {
  const cx = (width - 1) / 2;
  const cy = (height - 1) / 2;
  let [c, s] = start;
  let offset = startOffset;
  for (let round = 0; round < 2; round++) {
    let n = 0;
    let sa = 0;
    let sd = 0;
    let saa = 0;
    let sad = 0;
    for (let q = 0; q < steep.length; q += 2) {
      const x = steep[q] - cx;
      const y = steep[q + 1] - cy;
      const d = c * x + s * y - offset;
      if (d > 2.5 || d < -2.5) continue;
      const i = steep[q + 1] * width + steep[q];
      const dot = c * gx[i] + s * gy[i];
      if (!(dot > 0) || Math.abs(c * gy[i] - s * gx[i]) > 0.2 * dot) continue;
      const a = c * y - s * x;
      n++;
      sa += a;
      sd += d;
      saa += a * a;
      sad += a * d;
    }
    const spread = saa - (sa * sa) / n;
    if (n < 8 || !(spread > 0)) return null;
    const slope = (sad - (sa * sd) / n) / spread;
    const turn = portable.atan(slope);
    const [tc, ts] = [portable.cos(turn), portable.sin(turn)];
    const intercept = (sd - slope * sa) / n;
    [c, s] = [c * tc + s * ts, s * tc - c * ts];
    offset = (offset + intercept) * tc;
  }
  const full = offset + c * cx + s * cy;
  return { angleRad: portable.atan2(s, c), nx: c, ny: s, offset: full };
}
