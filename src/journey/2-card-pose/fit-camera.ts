import { leastSquares } from '../../quantity/least-squares';
import * as portable from '../../quantity/portable-math';
import { card } from '../../scale-card/geometry';
import { type PosedCamera, posed, rotationMatrix, rotationVector, type Vec3 } from './camera';
import { across, acrossDerivatives, type CameraMove, cameraMove, facing } from './edge-residuals';
import type { EdgePoint } from './marker-edges';

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

export interface CameraFit {
  readonly camera: PosedCamera;
  /** See `cameraFrom`. */
  readonly parameters: Float64Array;
  readonly prior: LensPrior;
  /** 10 × 10 of `parameters`; edge noise, scatter between sides (print, interpolation) and priors
   *  included; print scale is not: it enters once, later. */
  readonly covariance: Float64Array;
  /** How far the print's edges lie inside where the card says, px. Every dark–light edge of the
   *  photo shares it: ink, halo, tone curve. */
  readonly insetPx: number;
  readonly uInsetPx: number;
  readonly blurPx: number;
  /** Root mean square residual of single edge points, and of means over marker sides, px. */
  readonly rmsPx: number;
  readonly sideRmsPx: number;
  /** Sag of the card across its width and height, mm, when freed; zero in a flat fit. */
  readonly bowMm: readonly [number, number];
  readonly uBowMm: readonly [number, number];
}

export const cameraParameters = 10;
const perSide = 6;
const middle: Vec3 = [card.widthMm / 2, card.heightMm / 2, 0];

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

function parametersOf(camera: PosedCamera, prior: LensPrior): number[] {
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

export interface CardShape {
  /** Print scale along x and y: measured over nominal length of the print-check bars. */
  readonly scaleX: number;
  readonly scaleY: number;
  /** Prior standard deviation of ln(y stretch / x stretch) beyond these two. Foreshortening looks
   *  just like it: 0.05 % of it passes for 1.6 % of focal length at a tilt of 10°. */
  readonly uAspect: number;
  /** Prior standard deviation of the sag, mm; 0 holds the card flat. */
  readonly uBowMm: number;
}

/** Joint least squares of lens and pose on edge points of the markers.
 *  Residuals are distances across each side over their σ, Huber beyond 2.5 σ; priors are residuals. */
export function fitCamera(
  points: readonly EdgePoint[],
  start: PosedCamera,
  prior: LensPrior,
  shape: CardShape,
): CameraFit {
  const bowed = shape.uBowMm > 0;
  const cameraOf = (p: ArrayLike<number>) => cameraFrom(p, prior);
  const bow = (p: ArrayLike<number>): [number, number] => (bowed ? [p[12], p[13]] : [0, 0]);
  const sigma = Float64Array.from(points, (p) => Math.hypot(p.uPx, 0.03));
  const parameters = [...parametersOf(start, prior), 0, 0, ...(bowed ? [0, 0] : [])];
  const priors = 6 + (bowed ? 2 : 0);
  const n = points.length;
  const count = n + priors;
  let scale = 1;
  let sides = facing(points, start, shape);
  const fit = () =>
    leastSquares({
      parameters,
      count,
      loss: 'huber',
      lossScale: 2.5,
      residuals: (p, out) => {
        const camera = cameraOf(p);
        const [bx, by] = bow(p);
        across(camera, sides, p[11], bx, by, out);
        for (let i = 0; i < n; i++) out[i] = (out[i] + p[10]) / (sigma[i] * scale);
        out[n] = p[0] / prior.uLnF;
        out[n + 1] = p[1];
        out[n + 2] = p[2];
        out[n + 3] = p[3] / prior.uK1;
        out[n + 4] = p[10] / 0.5;
        out[n + 5] = p[11] / shape.uAspect;
        if (bowed) {
          out[n + 6] = p[12] / shape.uBowMm;
          out[n + 7] = p[13] / shape.uBowMm;
        }
      },
      jacobian: (p, out) => {
        out.fill(0);
        acrossDerivatives(
          cameraOf(p),
          movesAt(p, cameraOf),
          sides,
          p[11],
          bowed ? bow(p) : null,
          sigma.map((u) => 1 / (u * scale)),
          count,
          out,
        );
        out[n] = 1 / prior.uLnF;
        out[count + n + 1] = 1;
        out[2 * count + n + 2] = 1;
        out[3 * count + n + 3] = 1 / prior.uK1;
        out[10 * count + n + 4] = 1 / 0.5;
        out[11 * count + n + 5] = 1 / shape.uAspect;
        if (bowed) {
          out[12 * count + n + 6] = 1 / shape.uBowMm;
          out[13 * count + n + 7] = 1 / shape.uBowMm;
        }
      },
    });
  let result = fit();
  // Scatter beyond the edge fits' own u, shared along a side, widens everything: the second fit
  // weighs image against priors with it.
  const seen = new Float64Array(n);
  sides = facing(points, cameraOf(result.parameters), shape);
  across(
    cameraOf(result.parameters),
    sides,
    result.parameters[11],
    ...bow(result.parameters),
    seen,
  );
  const scatter = scatterOf(
    points,
    seen.map((d) => d + result.parameters[10]),
    sigma,
  );
  scale = scatter.scale;
  parameters.splice(0, parameters.length, ...result.parameters);
  result = fit();
  const p = result.parameters;
  const k = parameters.length;
  const covariance = new Float64Array(cameraParameters * cameraParameters);
  for (let i = 0; i < cameraParameters; i++)
    for (let j = 0; j < cameraParameters; j++)
      covariance[i * cameraParameters + j] = result.covariance[i * k + j];
  const u = (i: number) => Math.sqrt(result.covariance[i * k + i]);
  return {
    camera: cameraOf(p),
    parameters: Float64Array.from(p.slice(0, cameraParameters)),
    prior,
    covariance,
    insetPx: p[10],
    uInsetPx: u(10),
    blurPx: median(points.map((q) => q.blurPx)),
    rmsPx: scatter.rmsPx,
    sideRmsPx: scatter.sideRmsPx,
    bowMm: bow(p),
    uBowMm: bowed ? [u(12), u(13)] : [0, 0],
  };
}

/** How each parameter moves the camera, by central differences. */
function movesAt(p: Float64Array, cameraOf: (p: ArrayLike<number>) => PosedCamera): CameraMove[] {
  const at = p.slice();
  return Array.from({ length: cameraParameters }, (_, j) => {
    const h = 1e-6 * Math.max(1e-2, Math.abs(p[j]));
    at[j] = p[j] - h;
    const below = cameraOf(at);
    at[j] = p[j] + h;
    const above = cameraOf(at);
    at[j] = p[j];
    return cameraMove(below, above, 2 * h);
  });
}

function scatterOf(points: readonly EdgePoint[], residuals: Float64Array, sigma: Float64Array) {
  const sides = new Map<number, number[]>();
  const all: number[] = [];
  points.forEach((point, i) => {
    const r = residuals[i];
    if (Math.abs(r) > 8 * Math.hypot(sigma[i], 0.1)) return;
    all.push(r / sigma[i]);
    const list = sides.get(point.side) ?? [];
    list.push(r);
    sides.set(point.side, list);
  });
  const means = [...sides.values()].map((list) => list.reduce((s, r) => s + r, 0) / list.length);
  const meanSigma = median([...sigma]);
  const rms = (v: readonly number[]) => Math.sqrt(v.reduce((s, r) => s + r * r, 0) / v.length);
  // 1.48·MAD: markers under a hose must not widen the rest.
  const robust = (v: readonly number[]) => 1.4826 * median(v.map(Math.abs));
  const pointScale = robust(all);
  const sideScale = (robust(means) / meanSigma) * Math.sqrt(perSide);
  return {
    scale: Math.max(0.5, pointScale, sideScale),
    rmsPx: rms(all) * meanSigma,
    sideRmsPx: rms(means),
  };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1];
}
