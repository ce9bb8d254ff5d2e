import { leastSquares } from '../../quantity/least-squares';
import * as portable from '../../quantity/portable-math';
import { card } from '../../scale-card/geometry';
import { type PosedCamera, posed, rotationMatrix, rotationVector, type Vec3 } from './camera';
import { type Bow, bowPriorScale, flat, largestBow } from './card-bow';
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
  /** By what the points' σ had to be multiplied, and ½ Σ ρ with it, priors included: two fits of one
   *  photo at one scale are weighed by their costs. */
  readonly scale: number;
  readonly cost: number;
  readonly blurPx: number;
  /** Root mean square residual of single edge points, and of means over marker sides, px. */
  readonly rmsPx: number;
  readonly sideRmsPx: number;
  readonly bow: Bow;
  readonly largestBow: { readonly riseMm: number; readonly uMm: number };
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
  /** Prior standard deviation of the bow: rise at `bowAtMm`, mm. */
  readonly uBowMm: number;
  /** How far each edge of a reference that has but a few lies off its nominal place, and leans at its
   *  ends, mm: worn, cut, curled, or shifted by what it borders on. `EdgePoint.markerId` says which edge,
   *  from 0. None for a card of many markers. */
  readonly edges?: { readonly count: number; readonly uMm: number; readonly uLeanMm: number };
}

const uInsetPriorPx = 0.5;
const insetAt = cameraParameters;
const aspectAt = insetAt + 1;
const bowAt = aspectAt + 1;
const edgesAt = bowAt + 3;
const priors = 9;

/** Joint least squares of lens, pose and bow on edge points of the reference. Residuals are distances
 *  across each side over their σ, Huber beyond 2.5 σ; priors are residuals. The bow is always free: a
 *  sheet that rises by half a millimetre, taken for flat, is met by a focal length three times as long. */
export function fitCamera(
  points: readonly EdgePoint[],
  start: PosedCamera,
  prior: LensPrior,
  shape: CardShape,
  /** Of the points' σ, from an earlier fit; found from this one's residuals when absent. */
  givenScale?: number,
): CameraFit {
  const cameraOf = (p: ArrayLike<number>) => cameraFrom(p, prior);
  const bowOf = (p: ArrayLike<number>): Bow => [p[bowAt], p[bowAt + 1], p[bowAt + 2]];
  const sigma = Float64Array.from(points, (p) => Math.hypot(p.uPx, 0.03));
  const uBow = bowPriorScale.map((k) => k * shape.uBowMm);
  const n = points.length;
  const edges = shape.edges?.count ?? 0;
  const count = n + priors + 2 * edges;
  const asBegun = parametersOf(start, prior);
  /** An edge's own offset in the photo: the scale hardly changes while the pose settles. */
  const pxPerMm = portable.exp(asBegun[9]);
  const { uMm: uEdge, uLeanMm: uLean } = shape.edges ?? { uMm: 1, uLeanMm: 1 };
  const along = Float64Array.from(points, (p) => p.alongEdge ?? 0);
  let scale = givenScale ?? 1;
  let sides = facing(points, start, shape);
  const pixelsOff = (p: Float64Array, out: Float64Array) => {
    across(cameraOf(p), sides, p[aspectAt], bowOf(p), out);
    for (let i = 0; i < n; i++) out[i] += p[insetAt];
    if (edges === 0) return;
    for (let i = 0; i < n; i++) {
      const e = edgesAt + points[i].markerId;
      out[i] += (p[e] + p[e + edges] * along[i]) * pxPerMm;
    }
  };
  const fit = (parameters: ArrayLike<number>) =>
    leastSquares({
      parameters,
      count,
      loss: 'huber',
      lossScale: 2.5,
      lossCount: n,
      // A fit whose scale is given is one of many that are compared by their costs, which are of order 10.
      tolerance: givenScale === undefined ? 1e-10 : 1e-6,
      maxIterations: givenScale === undefined ? 50 : 30,
      residuals: (p, out) => {
        pixelsOff(p, out);
        for (let i = 0; i < n; i++) out[i] /= sigma[i] * scale;
        out[n] = p[0] / prior.uLnF;
        out[n + 1] = p[1];
        out[n + 2] = p[2];
        out[n + 3] = p[3] / prior.uK1;
        out[n + 4] = p[insetAt] / uInsetPriorPx;
        out[n + 5] = p[aspectAt] / shape.uAspect;
        const [xx, xy, yy] = bowOf(p);
        out[n + 6] = (xx + yy) / uBow[0];
        out[n + 7] = (xx - yy) / uBow[1];
        out[n + 8] = xy / uBow[2];
        for (let e = 0; e < edges; e++) {
          out[n + priors + e] = p[edgesAt + e] / uEdge;
          out[n + priors + edges + e] = p[edgesAt + edges + e] / uLean;
        }
      },
      jacobian: (p, out) => {
        out.fill(0);
        acrossDerivatives(
          cameraOf(p),
          movesAt(p, cameraOf),
          sides,
          p[aspectAt],
          bowOf(p),
          sigma.map((u) => 1 / (u * scale)),
          count,
          out,
        );
        const set = (row: number, column: number, value: number) => {
          out[column * count + n + row] = value;
        };
        set(0, 0, 1 / prior.uLnF);
        set(1, 1, 1);
        set(2, 2, 1);
        set(3, 3, 1 / prior.uK1);
        set(4, insetAt, 1 / uInsetPriorPx);
        set(5, aspectAt, 1 / shape.uAspect);
        set(6, bowAt, 1 / uBow[0]);
        set(6, bowAt + 2, 1 / uBow[0]);
        set(7, bowAt, 1 / uBow[1]);
        set(7, bowAt + 2, -1 / uBow[1]);
        set(8, bowAt + 1, 1 / uBow[2]);
        if (edges === 0) return;
        for (let e = 0; e < edges; e++) {
          set(priors + e, edgesAt + e, 1 / uEdge);
          set(priors + edges + e, edgesAt + edges + e, 1 / uLean);
        }
        for (let i = 0; i < n; i++) {
          const e = edgesAt + points[i].markerId;
          const weight = pxPerMm / (sigma[i] * scale);
          out[e * count + i] = weight;
          out[(e + edges) * count + i] = weight * along[i];
        }
      },
    });
  const offAt = (p: Float64Array) => {
    const out = new Float64Array(n);
    pixelsOff(p, out);
    return out;
  };
  let solved = fit([...asBegun, 0, 0, ...flat, ...Array.from({ length: 2 * edges }, () => 0)]);
  // Scatter beyond the edge fits' own u, shared along a side, widens everything: the second fit
  // weighs image against priors with it.
  const scatter = scatterOf(points, offAt(solved.parameters), sigma);
  if (givenScale === undefined) {
    scale = scatter.scale;
    sides = facing(points, cameraOf(solved.parameters), shape);
    solved = fit(solved.parameters);
  }
  const { parameters: p, covariance: all, cost } = solved;
  const k = p.length;
  const of = (i: number, j: number) => all[i * k + j];
  return {
    camera: cameraOf(p),
    parameters: Float64Array.from(p.slice(0, cameraParameters)),
    prior,
    covariance: Float64Array.from({ length: cameraParameters ** 2 }, (_, i) =>
      of(Math.floor(i / cameraParameters), i % cameraParameters),
    ),
    insetPx: p[insetAt],
    uInsetPx: Math.sqrt(of(insetAt, insetAt)),
    scale,
    cost,
    blurPx: median(points.map((q) => q.blurPx)),
    rmsPx: scatter.rmsPx,
    sideRmsPx: scatter.sideRmsPx,
    bow: bowOf(p),
    largestBow: largestBow(bowOf(p), (i, j) => of(bowAt + i, bowAt + j)),
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
