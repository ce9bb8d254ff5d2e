import * as portable from '../../quantity/portable-math';
import { type PosedCamera, projectRow, type Vec3 } from '../2-card-pose/camera';
import { sampleLinear } from '../2-card-pose/sampling';
import { darkLight, levelLight } from '../4-limbs/level-light';
import type { PosedPhoto } from '../4-thread-signal/posed-photo';
import { type FacePlane, footOf, onPlane } from './face-plane';

/** How a bore is looked at: columns side by side, in each of them light along a ray. Rows are even in the logarithm of
 *  the length along it over a length that is expected, so that a wrong guess of that moves what is seen, no more. */
export interface SectorGrid {
  readonly rows: number;
  readonly columns: number;
  /** Length at which the first row begins, over the expected one, and the rows' height in its logarithm. */
  readonly from: number;
  readonly step: number;
}

/** So many columns are looked at together. */
const columnsPerSector = 4;
export const sectorsOf = ({ columns }: SectorGrid) => columns / columnsPerSector;

/** The mouth from within the bore to beyond the face, all round; the body's outside from below its mouth down, on the
 *  side of the camera. */
export const mouthGrid: SectorGrid = { rows: 80, columns: 64, from: 0.45, step: 0.021 };
export const bodyGrid: SectorGrid = { rows: 80, columns: 48, from: 0.5, step: 0.0247 };

/** The row, in parts of one, whose middle is at such a ratio; and the reverse. */
export const rowAt = ({ from, step }: SectorGrid, ratio: number): number =>
  portable.log(ratio / from) / step - 0.5;
export const ratioAt = ({ from, step }: SectorGrid, row: number): number =>
  from * portable.exp(step * (row + 0.5));

export interface SectorPatch {
  /** Levelled logarithm of light, then the same against what is near it in its column;
   *  values[(channel·rows + row)·columns + column]. */
  readonly values: Float32Array;
  /** How the viewing ray leans against the axis: the tangent of the angle between them. */
  readonly lean: number;
}

export const patchChannels = 2;
/** Rays side by side in a column. */
const sub = 3;
/** Rows over which light is levelled, to either side, and over which its spread is taken. */
const meanRows = 6;
const spreadRows = 12;
const leastSpread = 0.03;

/** A ring's middle on a plane and its radius, mm of that plane. */
export interface RingGuess {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Directions on the plane at a place: `away` from the camera's foot, and a quarter turn on from it. */
export function awayAt(plane: FacePlane, camera: PosedCamera, x: number, y: number) {
  const foot = footOf(plane, camera.centre);
  const [dx, dy] = [x - foot.x, y - foot.y];
  const reach = Math.max(1e-9, Math.hypot(dx, dy));
  const away = [dx / reach, dy / reach] as const;
  return { away, across: [-away[1], away[0]] as const, lean: reach / foot.distanceMm };
}

/** Round about a guessed ring; the first column begins at the side away from the camera. */
export function mouthPatch(photo: PosedPhoto, plane: FacePlane, guess: RingGuess): SectorPatch {
  const { x, y, radius } = guess;
  const { away, across, lean } = awayAt(plane, photo.camera, x, y);
  const origin = onPlane(plane, x, y);
  const rayAt = (turn: number): Ray => {
    const c = radius * portable.cos(2 * Math.PI * turn);
    const s = radius * portable.sin(2 * Math.PI * turn);
    return {
      origin,
      unit: onDirections(plane, c * away[0] + s * across[0], c * away[1] + s * across[1]),
    };
  };
  return { values: patchAlong(photo, mouthGrid, rayAt), lean };
}

/** Azimuths of a body's side that are looked at, to either side of the one that faces the camera, rad. */
export const widestAzimuth = 1.2;

/** Outside of a body below the ring that is its mouth's outer edge, as if that ring lay on the plane. */
export function bodyPatch(photo: PosedPhoto, plane: FacePlane, outer: RingGuess): SectorPatch {
  const { x, y, radius } = outer;
  const { away, across, lean } = awayAt(plane, photo.camera, x, y);
  const unit = plane.inwards.map((v) => radius * v) as unknown as Vec3;
  const rayAt = (turn: number): Ray => {
    const azimuth = widestAzimuth * (2 * turn - 1);
    const c = -radius * portable.cos(azimuth);
    const s = radius * portable.sin(azimuth);
    const origin = onPlane(plane, x + c * away[0] + s * across[0], y + c * away[1] + s * across[1]);
    return { origin, unit };
  };
  return { values: patchAlong(photo, bodyGrid, rayAt), lean };
}

const onDirections = ({ right: r, down: d }: FacePlane, x: number, y: number): Vec3 => [
  x * r[0] + y * d[0],
  x * r[1] + y * d[1],
  x * r[2] + y * d[2],
];

/** Points origin + ratio·unit. */
interface Ray {
  readonly origin: Vec3;
  readonly unit: Vec3;
}

function patchAlong(
  { grey, camera }: PosedPhoto,
  grid: SectorGrid,
  rayAt: (turn: number) => Ray,
): Float32Array {
  const { rows, columns, from, step } = grid;
  const hop = 0.8 * from * step;
  const count = Math.floor((from * (portable.exp(rows * step) - 1)) / hop);
  const rowOf = Int32Array.from({ length: count }, (_, i) =>
    Math.min(rows - 1, Math.floor(portable.log(1 + ((i + 0.5) * hop) / from) / step)),
  );
  const seen = new Float64Array(rows);
  for (let i = 0; i < count; i++) seen[rowOf[i]] += sub;
  const cells = rows * columns;
  const out = new Float32Array(patchChannels * cells);
  const at = new Float64Array(2 * count);
  for (let j = 0; j < columns * sub; j++) {
    const { origin: o, unit: u } = rayAt((j + 0.5) / (columns * sub));
    const first = from + hop / 2;
    const start: Vec3 = [o[0] + first * u[0], o[1] + first * u[1], o[2] + first * u[2]];
    projectRow(camera, start, [hop * u[0], hop * u[1], hop * u[2]], count, at);
    const column = Math.floor(j / sub);
    for (let i = 0; i < count; i++) {
      const row = rowOf[i];
      out[row * columns + column] +=
        portable.log(sampleLinear(grey, at[2 * i], at[2 * i + 1]) + darkLight) / seen[row];
    }
  }
  againstNear(out, grid);
  levelLight([out.subarray(0, cells)]);
  return out;
}

/** Second channel: the first less its mean over some rows, over its spread. */
function againstNear(out: Float32Array, { rows, columns }: SectorGrid): void {
  const cells = rows * columns;
  const sums = new Float64Array(rows + 1);
  const squares = new Float64Array(rows + 1);
  const flat = new Float64Array(rows);
  for (let x = 0; x < columns; x++) {
    let last = 0;
    for (let y = 0; y < rows; y++) {
      const v = out[y * columns + x];
      // Beyond the photo: as at its edge.
      if (!Number.isNaN(v)) last = v;
      flat[y] = last;
      sums[y + 1] = sums[y] + last;
    }
    for (let y = 0; y < rows; y++) {
      const [a, b] = [Math.max(0, y - meanRows), Math.min(rows, y + meanRows + 1)];
      flat[y] -= (sums[b] - sums[a]) / (b - a);
      squares[y + 1] = squares[y] + flat[y] * flat[y];
    }
    for (let y = 0; y < rows; y++) {
      const [a, b] = [Math.max(0, y - spreadRows), Math.min(rows, y + spreadRows + 1)];
      const spread = Math.max(leastSpread, Math.sqrt((squares[b] - squares[a]) / (b - a)));
      out[cells + y * columns + x] = Math.max(-3, Math.min(3, flat[y] / spread));
    }
  }
}
