import * as portable from '../../quantity/portable-math';
import { cardMiddle as middle } from '../../scale-card/geometry';
import { type PosedCamera, posed, rotationMatrix, rotationVector } from './camera';

/** What is believed of the lens before the card is looked at. Standard deviations. */
export interface LensPrior {
  readonly fPx: number;
  /** Of ln f. */
  readonly uLnF: number;
  readonly cx: number;
  readonly cy: number;
  readonly uCentrePx: number;
  readonly uK1: number;
}

export const cameraParameters = 10;

/** Camera from [ln(f/prior), (cx, cy) − prior in units of its σ, k1, three angles, image of the card's
 *  middle (u, v) / 100 px, ln(px per mm there)]. The angles turn the card against the ray through its
 *  middle: in these coordinates f, principal point and pose are nearly independent, where with R and
 *  t they lie in one long valley that least squares crawls along. */
export function cameraFrom(p: ArrayLike<number>, prior: LensPrior): PosedCamera {
  const fPx = prior.fPx * portable.exp(p[0]);
  const cx = prior.cx + p[1] * prior.uCentrePx;
  const cy = prior.cy + p[2] * prior.uCentrePx;
  const x = (100 * p[7] - cx) / fPx;
  const y = (100 * p[8] - cy) / fPx;
  const depth = fPx / portable.exp(p[9]);
  const R = multiply(rayFrame(x, y), rotationMatrix([p[4], p[5], p[6]]));
  const t = [x * depth, y * depth, depth].map(
    (v, i) => v - R[3 * i] * middle[0] - R[3 * i + 1] * middle[1],
  );
  return posed({
    fPx,
    cx,
    cy,
    k1: p[3],
    rotation: rotationVector(R),
    translation: [t[0], t[1], t[2]],
  });
}

/** The inverse of `cameraFrom`. */
export function parametersOf(camera: PosedCamera, prior: LensPrior): number[] {
  const { R, translation: t } = camera;
  const at = [0, 1, 2].map((i) => R[3 * i] * middle[0] + R[3 * i + 1] * middle[1] + t[i]);
  const x = at[0] / at[2];
  const y = at[1] / at[2];
  const turn = rotationVector(multiply(transposed(rayFrame(x, y)), R));
  return [
    portable.log(camera.fPx / prior.fPx),
    (camera.cx - prior.cx) / prior.uCentrePx,
    (camera.cy - prior.cy) / prior.uCentrePx,
    camera.k1,
    ...turn,
    (camera.fPx * x + camera.cx) / 100,
    (camera.fPx * y + camera.cy) / 100,
    portable.log(camera.fPx / at[2]),
  ];
}

/** Smallest rotation that takes the optical axis to the direction (x, y, 1). */
function rayFrame(x: number, y: number): Float64Array {
  const angle = portable.atan(Math.hypot(x, y));
  const k = Math.hypot(x, y) > 1e-12 ? angle / Math.hypot(x, y) : 1;
  return rotationMatrix([-y * k, x * k, 0]);
}

function multiply(a: Float64Array, b: Float64Array): Float64Array {
  return Float64Array.from({ length: 9 }, (_, i) => {
    const r = 3 * Math.floor(i / 3);
    const c = i % 3;
    return a[r] * b[c] + a[r + 1] * b[3 + c] + a[r + 2] * b[6 + c];
  });
}

const transposed = (m: Float64Array): Float64Array =>
  Float64Array.from({ length: 9 }, (_, i) => m[3 * (i % 3) + Math.floor(i / 3)]);
