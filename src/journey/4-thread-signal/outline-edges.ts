import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';
import { fitEdge } from '../2-card-pose/edge-profile';
import type { Field } from '../../scale-card/geometry';
import type { PhotoPoint } from '../overlay';
import { type AxisFrame, grazing, photoAt } from './axis-frame';
import { straighten } from './straightened';

export type Side = 'left' | 'right';

/** A point of the outline found on one cut across the thread. */
export interface OutlinePoint {
  readonly side: Side;
  readonly photo: PhotoPoint;
  /** Grazing coordinates (axis-frame.ts): mm along the axis, radius in mm, positive on both sides. */
  readonly s: number;
  readonly r: number;
  /** Slope of the viewing ray along the axis. */
  readonly slope: number;
  readonly uMm: number;
  readonly blurMm: number;
  /** Light outside less light inside, linear. */
  readonly step: number;
}

/** Edges along one side of a zone, one per cut, where metal gives way to what lies behind it. */
export function outlineEdges(
  grey: GreyImage,
  camera: PosedCamera,
  frame: AxisFrame,
  side: Side,
  zone: { readonly fromS: number; readonly toS: number },
  search: { readonly fromR: number; readonly toR: number },
  mmPerPx: number,
  field: Field,
): OutlinePoint[] {
  const outward = facing(frame, side);
  const stepMm = 0.5 * mmPerPx;
  const strip = straighten(
    grey,
    camera,
    outward,
    { ...zone, fromR: search.fromR - 5 * mmPerPx, toR: search.toR + 6 * mmPerPx },
    stepMm,
  );
  const points: OutlinePoint[] = [];
  const column = new Float64Array(strip.rows);
  const first = Math.round(5 * mmPerPx / stepMm);
  const last = strip.rows - 1 - Math.round(6 * mmPerPx / stepMm);
  for (let i = 0; i < strip.columns; i++) {
    for (let j = 0; j < strip.rows; j++) column[j] = strip.values[j * strip.columns + i];
    const at = outlineAt(column, first, last, field);
    if (at < 0) continue;
    const from = Math.max(0, at - 9);
    const window = column.subarray(from, Math.min(strip.rows, at + 11));
    if (!window.every(Number.isFinite)) continue;
    const fit = fitEdge(window, at - from, 1.2 / 0.5);
    if (!fit || fit.contrastToNoise < 3 || fit.sigma > 9) continue;
    const s = strip.fromS + i * stepMm;
    const photo = photoAt(camera, outward, s, strip.fromR + (from + fit.position) * stepMm);
    const graze = grazing(camera, frame, photo);
    points.push({
      side,
      photo,
      s: graze.s,
      r: Math.abs(graze.r),
      slope: graze.slope,
      uMm: fit.u * stepMm,
      blurMm: fit.sigma * stepMm,
      step: fit.after - fit.before,
    });
  }
  return points;
}

/** On paper, the steepest change of the logarithm: a shadow halves the light, dark metal quarters it,
 *  and of several alike the outermost. On black there are no shadows, and bright metal mirrors the
 *  black beside it, so that the outline may be a faint rise outside a glaring one: the outermost
 *  change that stands out of the background's own noise. */
function outlineAt(column: Float64Array, first: number, last: number, field: Field): number {
  const value =
    field === 'light' ? (j: number) => Math.log(column[j] + 2) : (j: number) => Math.sqrt(column[j]);
  const change = (j: number) => Math.abs(value(j + 2) - value(j - 2));
  let best = 0;
  for (let j = first; j <= last; j++) best = Math.max(best, change(j));
  if (!(best > 0)) return -1;
  const quiet: number[] = [];
  for (let j = last + 1; j < column.length - 2; j++) quiet.push(change(j));
  quiet.sort((a, b) => a - b);
  const noise = quiet[quiet.length >> 1] ?? 0;
  const level = field === 'light' ? 0.6 * best : Math.max(0.22 * best, 5 * noise, 0.25);
  for (let j = last; j >= first; j--) {
    if (change(j) > level && change(j) >= change(j - 1) && change(j) >= change(j + 1)) return j;
  }
  return -1;
}

/** The frame with `left` turned to the wanted side, so that r grows outwards. */
export function facing(frame: AxisFrame, side: Side): AxisFrame {
  const [x, y, z] = frame.left;
  return side === 'left' ? frame : { ...frame, left: [-x, -y, -z] };
}
