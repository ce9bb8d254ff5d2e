import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import { projectRow, type Vec3 } from '../2-card-pose/camera';
import type { AxisFrame, Extent } from './axis-frame';
import { mmPerPxAt } from './axis-moves';
import type { PosedPhoto } from './posed-photo';

/** A cone about an axis: radius at `middleS` and its growth along s, mm and mm per mm. */
export interface Cone {
  readonly radiusMm: number;
  readonly halfTaper: number;
  readonly middleS: number;
}

/** The visible side of a cone unrolled: rows of constant azimuth, columns along the axis. On it the
 *  ridges of a helix are straight lines, evenly spaced, slanted by the lead.
 *  rows[j][i] is the brightness at azimuth azimuths[j] (0 at the top, positive to the left, rad) and
 *  s = fromS + i·stepMm, less its running mean along the row. Rows that leave the photo are left out. */
export interface Unrolled {
  readonly rows: readonly Float64Array[];
  readonly azimuths: readonly number[];
  readonly fromS: number;
  readonly stepMm: number;
}

/** Beyond this the surface is seen too obliquely to show ridges. */
const widestRad = (78 * Math.PI) / 180;
const usualRows = 40;
/** Shading changes over a good part of the radius, ridges over a fraction of it. */
const meanOverRadius = 0.35;
const spreadOverRadius = 0.9;
/** Spread of the logarithm below which a row is noise and paper. */
const leastSpread = 0.015;
const clip = 2.5;
/** Coded value added before the logarithm is taken: noise of a dark pixel. */
const darkLevel = 8;

/** How finely a cone is sampled, and whether from inside. */
interface Grid {
  readonly stepMm: number;
  readonly rowCount?: number;
  readonly inside?: { readonly widestRad: number };
}

/** Brightness is the logarithm of the coded value, less its running mean and over its running spread along the row.
 *  From outside azimuth 0 is where the axis' upper side faces; `inside` a bore it is where `left` is a quarter turn on
 *  from, about `along`: the wall that faces the camera, up to `widestRad` either way. */
export function unroll(
  { grey, camera }: PosedPhoto,
  frame: AxisFrame,
  zone: Extent,
  cone: Cone,
  { stepMm, rowCount = usualRows, inside }: Grid,
): Unrolled {
  const columns = Math.max(8, Math.floor((zone.toS - zone.fromS) / stepMm) + 1);
  const { origin: o, along: d, left: l } = frame;
  const up: Vec3 = [
    d[1] * l[2] - d[2] * l[1],
    d[2] * l[0] - d[0] * l[2],
    d[0] * l[1] - d[1] * l[0],
  ];
  const lift = up[2] < 0 && !inside ? 1 : -1;
  const widest = inside?.widestRad ?? widestRad;
  const at = new Float64Array(2 * columns);
  const rows: Float64Array[] = [];
  const azimuths: number[] = [];
  for (let j = 0; j <= rowCount; j++) {
    const azimuth = widest * ((2 * j) / rowCount - 1);
    const a = portable.sin(azimuth);
    const b = lift * portable.cos(azimuth);
    const side: Vec3 = [0, 1, 2].map((k) => a * l[k] + b * up[k]) as unknown as Vec3;
    const r0 = cone.radiusMm + cone.halfTaper * (zone.fromS - cone.middleS);
    const start: Vec3 = [
      o[0] + zone.fromS * d[0] + r0 * side[0],
      o[1] + zone.fromS * d[1] + r0 * side[1],
      o[2] + zone.fromS * d[2] + r0 * side[2],
    ];
    const k = stepMm * cone.halfTaper;
    const step: Vec3 = [
      stepMm * d[0] + k * side[0],
      stepMm * d[1] + k * side[1],
      stepMm * d[2] + k * side[2],
    ];
    projectRow(camera, start, step, columns, at);
    const row = sampled(grey, at, columns);
    if (!row) continue;
    rows.push(
      levelled(
        row,
        (meanOverRadius * cone.radiusMm) / stepMm,
        (spreadOverRadius * cone.radiusMm) / stepMm,
      ),
    );
    azimuths.push(azimuth);
  }
  return { rows, azimuths, fromS: zone.fromS, stepMm };
}

/** Ridges are seen about this far below the crests, in pitches. */
const ridgeDepth = 0.3;
/** Of a pixel, between columns. */
const ridgeStep = 0.7;

/** A thread's surface unrolled as deep as its ridges are seen; `radiusMm` is over its crests. */
export function ridgesUnrolled(
  photo: PosedPhoto,
  frame: AxisFrame,
  zone: Extent,
  { radiusMm, halfTaper, middleS }: Cone,
  pitchMm: number,
): Unrolled {
  const depth = Math.min(ridgeDepth * pitchMm, ridgeDepth * radiusMm);
  const cone = { radiusMm: radiusMm - depth, halfTaper, middleS };
  return unroll(photo, frame, zone, cone, {
    stepMm: ridgeStep * mmPerPxAt(photo.camera, frame, zone),
  });
}

const logs = Float64Array.from({ length: 256 }, (_, v) => portable.log(v + darkLevel));

/** Logarithm of the coded values along a row, bilinear; null where it leaves the photo. */
function sampled({ width, height, data }: GreyImage, at: Float64Array, n: number) {
  const row = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const x = at[2 * i];
    const y = at[2 * i + 1];
    if (!(x >= 0 && y >= 0 && x < width - 1 && y < height - 1)) return null;
    const x0 = Math.floor(x);
    const y0 = Math.floor(y);
    const k = y0 * width + x0;
    const fx = x - x0;
    const fy = y - y0;
    const v =
      (data[k] * (1 - fx) + data[k + 1] * fx) * (1 - fy) +
      (data[k + width] * (1 - fx) + data[k + width + 1] * fx) * fy;
    const at0 = Math.min(254, v | 0);
    row[i] = logs[at0] + (v - at0) * (logs[at0 + 1] - logs[at0]);
  }
  return row;
}

function levelled(row: Float64Array, meanHalf: number, spreadHalf: number): Float64Array {
  const flat = runningMean(row, Math.max(2, Math.round(meanHalf)));
  const squares = new Float64Array(row.length);
  for (let i = 0; i < row.length; i++) {
    flat[i] = row[i] - flat[i];
    squares[i] = flat[i] * flat[i];
  }
  const spread = runningMean(squares, Math.max(3, Math.round(spreadHalf)));
  for (let i = 0; i < row.length; i++) {
    const v = flat[i] / Math.max(leastSpread, Math.sqrt(spread[i]));
    flat[i] = Math.max(-clip, Math.min(clip, v));
  }
  return flat;
}

function runningMean(row: Float64Array, half: number): Float64Array {
  const n = row.length;
  const sums = new Float64Array(n + 1);
  for (let i = 0; i < n; i++) sums[i + 1] = sums[i] + row[i];
  const out = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const a = Math.max(0, i - half);
    const b = Math.min(n, i + half + 1);
    out[i] = (sums[b] - sums[a]) / (b - a);
  }
  return out;
}
