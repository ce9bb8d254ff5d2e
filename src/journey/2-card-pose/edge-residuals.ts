import { cardMiddle as middle } from '../../scale-card/geometry';
import { type PosedCamera, project, type Vec3 } from './camera';
import { type Bow, bowAtMm } from './card-bow';
import type { EdgePoint } from './marker-edges';

/** Edge points as flat arrays, with the direction square to their side as the photo shows it: it turns
 *  so little while the pose settles that it may stand still. */
export interface Facing {
  readonly n: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Below the plane z = 0; without the bow. */
  readonly z: Float64Array;
  readonly u: Float64Array;
  readonly v: Float64Array;
  readonly nx: Float64Array;
  readonly ny: Float64Array;
}

export function facing(
  points: readonly EdgePoint[],
  camera: PosedCamera,
  shape: { readonly scaleX: number; readonly scaleY: number },
): Facing {
  const pick = (f: (p: EdgePoint) => number) => Float64Array.from(points, f);
  const normals = points.map((p) => {
    const at: Vec3 = [p.onCard[0] * shape.scaleX, p.onCard[1] * shape.scaleY, p.onCard[2]];
    const here = project(camera, at);
    const [ox, oy] = p.outward;
    // Square to the side as seen, not the image of the card's normal: under an oblique view that one
    // leans, and a stretch of the print, which slides points along their side, would show in it.
    const next = project(camera, [at[0] - 0.2 * oy, at[1] + 0.2 * ox, at[2]]);
    const d = [next[1] - here[1], here[0] - next[0]];
    const length = Math.hypot(d[0], d[1]);
    return [d[0] / length, d[1] / length];
  });
  return {
    n: points.length,
    x: pick((p) => p.onCard[0] * shape.scaleX),
    y: pick((p) => p.onCard[1] * shape.scaleY),
    z: pick((p) => p.onCard[2]),
    u: pick((p) => p.measured[0]),
    v: pick((p) => p.measured[1]),
    nx: Float64Array.from(normals, (d) => d[0]),
    ny: Float64Array.from(normals, (d) => d[1]),
  };
}

/** Distances from expected to measured edge, px, outwards positive. The projection of camera.ts
 *  written out: this is the innermost loop of the pose. */
export function across(
  camera: PosedCamera,
  sides: Facing,
  aspect: number,
  bow: Bow,
  out: Float64Array,
): void {
  const { R, translation: t, fPx, k1, cx, cy } = camera;
  for (let i = 0; i < sides.n; i++) {
    const X = sides.x[i] * (1 - aspect / 2);
    const Y = sides.y[i] * (1 + aspect / 2);
    const a = (X - middle[0]) / bowAtMm;
    const b = (Y - middle[1]) / bowAtMm;
    const Z = sides.z[i] - (bow[0] * a * a + bow[1] * a * b + bow[2] * b * b);
    const z = R[6] * X + R[7] * Y + R[8] * Z + t[2];
    const x = (R[0] * X + R[1] * Y + R[2] * Z + t[0]) / z;
    const y = (R[3] * X + R[4] * Y + R[5] * Z + t[1]) / z;
    const f = fPx * (1 + k1 * (x * x + y * y));
    out[i] = (sides.u[i] - f * x - cx) * sides.nx[i] + (sides.v[i] - f * y - cy) * sides.ny[i];
  }
}

export interface EdgeDerivatives {
  readonly camera: PosedCamera;
  readonly moves: readonly CameraMove[];
  readonly sides: Facing;
  readonly aspect: number;
  readonly bow: Bow;
  /** Of each row. */
  readonly weight: Float64Array;
  /** Length of a column. */
  readonly stride: number;
}

/** Derivatives of `across` plus the edges' inset, each row times its weight, column by column: the
 *  parameters that move the camera, by `moves`; the inset; the print's aspect; the bow's three. What
 *  lies between, the camera's own 16 numbers, is worked out per point once for all parameters. */
export function acrossDerivatives(
  { camera, moves, sides, aspect, bow, weight, stride }: EdgeDerivatives,
  out: Float64Array,
): void {
  const { R, translation: t, fPx, k1 } = camera;
  const inset = moves.length * stride;
  for (let i = 0; i < sides.n; i++) {
    const X = sides.x[i] * (1 - aspect / 2);
    const Y = sides.y[i] * (1 + aspect / 2);
    const a = (X - middle[0]) / bowAtMm;
    const b = (Y - middle[1]) / bowAtMm;
    const Z = sides.z[i] - (bow[0] * a * a + bow[1] * a * b + bow[2] * b * b);
    const w = 1 / (R[6] * X + R[7] * Y + R[8] * Z + t[2]);
    const x = (R[0] * X + R[1] * Y + R[2] * Z + t[0]) * w;
    const y = (R[3] * X + R[4] * Y + R[5] * Z + t[1]) * w;
    const r2 = x * x + y * y;
    const nx = sides.nx[i] * weight[i];
    const ny = sides.ny[i] * weight[i];
    const off = x * nx + y * ny;
    const byF = -(1 + k1 * r2) * off;
    const byK1 = -fPx * r2 * off;
    const byX = -fPx * ((1 + k1 * r2) * nx + 2 * k1 * x * off) * w;
    const byY = -fPx * ((1 + k1 * r2) * ny + 2 * k1 * y * off) * w;
    const byZ = -(byX * x + byY * y);
    for (let j = 0, at = i; j < moves.length; j++, at += stride) {
      const m = moves[j];
      const dR = m.R;
      out[at] =
        byF * m.fPx +
        byK1 * m.k1 -
        nx * m.cx -
        ny * m.cy +
        byX * (dR[0] * X + dR[1] * Y + dR[2] * Z + m.t[0]) +
        byY * (dR[3] * X + dR[4] * Y + dR[5] * Z + m.t[1]) +
        byZ * (dR[6] * X + dR[7] * Y + dR[8] * Z + m.t[2]);
    }
    const alongX = byX * R[0] + byY * R[3] + byZ * R[6];
    const alongY = byX * R[1] + byY * R[4] + byZ * R[7];
    const alongZ = byX * R[2] + byY * R[5] + byZ * R[8];
    const dX = -sides.x[i] / 2;
    const dY = sides.y[i] / 2;
    const dZ = -((2 * bow[0] * a + bow[1] * b) * dX + (bow[1] * a + 2 * bow[2] * b) * dY) / bowAtMm;
    out[inset + i] = weight[i];
    out[inset + stride + i] = alongX * dX + alongY * dY + alongZ * dZ;
    out[inset + 2 * stride + i] = -alongZ * a * a;
    out[inset + 3 * stride + i] = -alongZ * a * b;
    out[inset + 4 * stride + i] = -alongZ * b * b;
  }
}

/** Change of the camera's numbers per unit of a parameter. */
export interface CameraMove {
  readonly fPx: number;
  readonly cx: number;
  readonly cy: number;
  readonly k1: number;
  readonly R: Float64Array;
  readonly t: Vec3;
}

/** Between the cameras half a step `h` below and above. */
export function cameraMove(below: PosedCamera, above: PosedCamera, h: number): CameraMove {
  const per = (a: number, b: number) => (b - a) / h;
  const from = below.translation;
  const to = above.translation;
  return {
    fPx: per(below.fPx, above.fPx),
    cx: per(below.cx, above.cx),
    cy: per(below.cy, above.cy),
    k1: per(below.k1, above.k1),
    R: above.R.map((v, i) => per(below.R[i], v)),
    t: [per(from[0], to[0]), per(from[1], to[1]), per(from[2], to[2])],
  };
}
