import * as portable from '../../quantity/portable-math';
import { project, type Vec3 } from '../2-card-pose/camera';
import { sampleLinear } from '../2-card-pose/sampling';
import type { AxisFrame, Extent } from './axis-frame';
import type { PosedPhoto } from './posed-photo';
import type { Cone, Unrolled } from './unrolled-surface';

const widestRad = (72 * Math.PI) / 180;

/** The visible side of a thread unrolled in coded brightness, the square root of linear light, less its running mean
 *  over a period and a half: what the older way beside a rule reads its ridges from. */
export function unrollLight(
  { grey, camera }: PosedPhoto,
  frame: AxisFrame,
  zone: Extent,
  surface: Cone,
  { mmPerPx, periodMm }: { readonly mmPerPx: number; readonly periodMm: number },
): Unrolled {
  const stepMm = mmPerPx;
  const columns = Math.max(8, Math.floor((zone.toS - zone.fromS) / stepMm) + 1);
  const rowStep = Math.max((2 * mmPerPx) / surface.radiusMm, widestRad / 40);
  const { origin: o, along: d, left: l } = frame;
  // Up from the card, perpendicular to axis and side.
  const up: Vec3 = [
    d[1] * l[2] - d[2] * l[1],
    d[2] * l[0] - d[0] * l[2],
    d[0] * l[1] - d[1] * l[0],
  ];
  const lift = up[2] < 0 ? 1 : -1;
  const rows: Float64Array[] = [];
  const azimuths: number[] = [];
  const half = Math.max(2, Math.round((0.75 * periodMm) / stepMm));
  for (let phi = -widestRad; phi <= widestRad; phi += rowStep) {
    const raw = new Float64Array(columns);
    for (let i = 0; i < columns; i++) {
      const s = zone.fromS + i * stepMm;
      const r = surface.radiusMm + surface.halfTaper * (s - surface.middleS);
      const a = r * portable.sin(phi);
      const b = lift * r * portable.cos(phi);
      const at = project(camera, [
        o[0] + s * d[0] + a * l[0] + b * up[0],
        o[1] + s * d[1] + a * l[1] + b * up[1],
        o[2] + s * d[2] + a * l[2] + b * up[2],
      ]);
      raw[i] = Math.sqrt(sampleLinear(grey, at[0], at[1]));
    }
    if (!raw.every(Number.isFinite)) continue;
    rows.push(lessRunningMean(raw, half));
    azimuths.push(phi);
  }
  return { rows, azimuths, fromS: zone.fromS, stepMm };
}

function lessRunningMean(row: Float64Array, half: number): Float64Array {
  const sums = new Float64Array(row.length + 1);
  for (let i = 0; i < row.length; i++) sums[i + 1] = sums[i] + row[i];
  return row.map((v, i) => {
    const a = Math.max(0, i - half);
    const b = Math.min(row.length, i + half + 1);
    return v - (sums[b] - sums[a]) / (b - a);
  });
}
