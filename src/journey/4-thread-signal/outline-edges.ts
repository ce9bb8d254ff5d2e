import type { Estimate } from '../../quantity/estimate';
import { quantile } from '../../quantity/order';
import * as portable from '../../quantity/portable-math';
import type { Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { PosedCamera } from '../2-card-pose/camera';
import { levels } from '../2-card-pose/edge-profile';
import type { EdgeResponse } from '../2-card-pose/edge-response';
import type { PhotoPoint } from '../overlay';
import { type AxisFrame, type Extent, grazing, photoAt } from './axis-frame';
import { contrast, shapesOfCuts } from './cut-shape';
import { fitRimEdge, usualRim } from './rim-edge';
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
}

/** Where to look on the cut at s, radii in mm (axis plane), and how steeply the outline is expected to
 *  climb there, mm per mm. */
export type SearchBand = (s: number) => {
  readonly fromR: number;
  readonly toR: number;
  readonly steepness?: number;
};

/** Which side of a frame's axis, from where to where along it, and how far from it. */
export interface OutlineSearch {
  readonly side: Side;
  readonly zone: Extent;
  readonly band: SearchBand;
}

/** The photo, and how it draws the edges of what lies in it. */
export interface OutlineView {
  readonly grey: GreyImage;
  readonly camera: PosedCamera;
  readonly response: EdgeResponse;
  readonly mmPerPx: number;
  readonly field: Field;
}

/** Samples that a cut shows of inside and outside, about the edge. */
const insideSamples = 6;
const outsideSamples = 11;

/** Edges along one side of a zone, one per cut, where metal gives way to what lies behind it. */
export function outlineEdges(
  { grey, camera, response, mmPerPx, field }: OutlineView,
  frame: AxisFrame,
  { side, zone, band }: OutlineSearch,
  rim: Estimate = usualRim[field],
): OutlinePoint[] {
  const outward = facing(frame, side);
  const stepMm = 0.5 * mmPerPx;
  const bands = Array.from(
    { length: Math.max(1, Math.round((zone.toS - zone.fromS) / stepMm) + 1) },
    (_, i) => band(zone.fromS + i * stepMm),
  );
  const marginIn = 5 * mmPerPx;
  const marginOut = 8 * mmPerPx;
  const strip = straighten(
    grey,
    camera,
    outward,
    {
      ...zone,
      fromR: Math.min(...bands.map((b) => b.fromR)) - marginIn,
      toR: Math.max(...bands.map((b) => b.toR)) + marginOut,
    },
    stepMm,
  );
  const row = (r: number) => Math.round((r - strip.fromR) / stepMm);
  const points: OutlinePoint[] = [];
  const column = new Float64Array(strip.rows);
  const scratch = { value: new Float64Array(strip.rows), changes: new Float64Array(strip.rows) };
  const middle = bands[bands.length >> 1];
  const shapes = shapesOfCuts(response);
  for (let i = 0; i < strip.columns; i++) {
    for (let j = 0; j < strip.rows; j++) column[j] = strip.values[j * strip.columns + i];
    const { fromR, toR, steepness = 0 } = bands[Math.min(i, bands.length - 1)];
    const at = outlineAt(column, row(fromR), row(toR), field, scratch);
    if (at < 0) continue;
    // Where the outline runs oblique to the cut, all that it shows is stretched.
    const stretch = Math.hypot(1, steepness);
    const wider = (1 + stretch) / 2;
    const from = Math.max(0, at - Math.round(insideSamples * wider));
    const window = column.subarray(
      from,
      Math.min(strip.rows, at + Math.round(outsideSamples * wider)),
    );
    if (!window.every(Number.isFinite)) continue;
    const shape = shapes({
      perPx: (stretch * mmPerPx) / stepMm,
      // A flank bends round the axis by less than a crest, and is seen on a slant.
      radius: (stretch * stretch * middle.toR) / stepMm,
      ...contrast(levels(window, at - from)),
    });
    const fit = fitRimEdge(window, at - from, shape, rim);
    if (!fit || fit.contrastToNoise < 3) continue;
    if (Math.abs(fit.position - (at - from)) > 6) continue;
    const s = strip.fromS + i * stepMm;
    const photo = photoAt(camera, outward, s, strip.fromR + (from + fit.position) * stepMm);
    points.push(
      placed(camera, frame, {
        side,
        photo,
        uMm: fit.u * stepMm,
      }),
    );
  }
  return points;
}

type PhotoEdge = Omit<OutlinePoint, 's' | 'r' | 'slope'>;

/** The same edge seen from another axis: found once, it need not be searched again. */
export function placed(camera: PosedCamera, frame: AxisFrame, edge: PhotoEdge): OutlinePoint {
  const { s, r, slope } = grazing(camera, frame, edge.photo);
  return { ...edge, s, r: edge.side === 'left' ? r : -r, slope };
}

/** On paper, the steepest change of the logarithm: a shadow halves the light, dark metal quarters it,
 *  and of several alike the outermost. On black there are no shadows, and bright metal mirrors the
 *  black beside it, so that the outline may be a faint rise outside a glaring one: the outermost
 *  change that stands out of the background's own noise. */
function outlineAt(
  column: Float64Array,
  from: number,
  to: number,
  field: Field,
  { value, changes }: Scratch,
): number {
  const first = Math.max(3, from);
  const last = Math.min(column.length - 4, to);
  // Beyond the band only the noise of a black background is of interest.
  const end = Math.min(last + (field === 'light' ? 4 : 42), column.length);
  for (let j = first - 3; j < end; j++)
    value[j] = field === 'light' ? portable.log(column[j] + 2) : Math.sqrt(column[j]);
  let best = 0;
  for (let j = first - 1; j < end - 2; j++) {
    changes[j] = Math.abs(value[j + 2] - value[j - 2]);
    if (j >= first && j <= last) best = Math.max(best, changes[j]);
  }
  if (!(best > 0)) return -1;
  const level = field === 'light' ? 0.6 * best : standingOut(changes, last + 3, end - 2, best);
  for (let j = last; j >= first; j--) {
    // On black the metal is the brighter one, however faint.
    if (field === 'dark' && value[j - 2] < value[j + 2]) continue;
    const change = changes[j];
    if (change > level && change >= changes[j - 1] && change >= changes[j + 1]) return j;
  }
  return -1;
}

/** One column's worth, used again for each. */
interface Scratch {
  readonly value: Float64Array;
  readonly changes: Float64Array;
}

function standingOut(changes: Float64Array, from: number, to: number, best: number): number {
  const quiet = changes.slice(from, Math.max(from, to)).sort();
  return Math.max(0.15 * best, 6 * (quantile(quiet, 0.5) ?? 0), 0.25);
}

/** The frame with `left` turned to the wanted side, so that r grows outwards. */
export function facing(frame: AxisFrame, side: Side): AxisFrame {
  const [x, y, z] = frame.left;
  return side === 'left' ? frame : { ...frame, left: [-x, -y, -z] };
}
