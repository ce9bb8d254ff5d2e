import * as portable from '../../quantity/portable-math';
import type { PosedCamera } from './camera';
import { cameraFrom, cameraParameters, type LensPrior, parametersOf } from './camera-parameters';
import { type Bow, bowPriorScale, flat } from './card-bow';
import {
  across,
  acrossDerivatives,
  type CameraMove,
  cameraMove,
  type Facing,
} from './edge-residuals';
import type { EdgePoint } from './marker-edges';

// Parameters: those of `cameraFrom`; how far the print's edges lie inside where the card says, px, which
// every dark–light edge of the photo shares (ink, halo, tone curve); the print's aspect; the bow's three, then each edge's
// offset and lean. Residuals: one for each point, nine priors, then two for each edge.

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
export const bowAt = aspectAt + 1;
const edgesAt = bowAt + 3;
const priors = 9;

/** What stays as it is while lens, pose and bow are fitted. */
export interface CameraProblem {
  readonly points: readonly EdgePoint[];
  readonly prior: LensPrior;
  readonly shape: CardShape;
  /** How many residuals. */
  readonly count: number;
  /** How many edges have an offset of their own. */
  readonly edges: number;
  readonly begin: readonly number[];
  /** Of the points, px. */
  readonly sigma: Float64Array;
  readonly along: Float64Array;
  /** An edge's own offset in the photo: the scale hardly changes while the pose settles. */
  readonly pxPerMm: number;
  readonly uBow: readonly number[];
}

export function cameraProblem(
  points: readonly EdgePoint[],
  start: PosedCamera,
  prior: LensPrior,
  shape: CardShape,
): CameraProblem {
  const edges = shape.edges?.count ?? 0;
  const asBegun = parametersOf(start, prior);
  return {
    points,
    prior,
    shape,
    count: points.length + priors + 2 * edges,
    edges,
    begin: [...asBegun, 0, 0, ...flat, ...Array.from({ length: 2 * edges }, () => 0)],
    sigma: Float64Array.from(points, (p) => Math.hypot(p.uPx, 0.03)),
    along: Float64Array.from(points, (p) => p.alongEdge ?? 0),
    pxPerMm: portable.exp(asBegun[9]),
    uBow: bowPriorScale.map((k) => k * shape.uBowMm),
  };
}

export const bowOf = (p: ArrayLike<number>): Bow => [p[bowAt], p[bowAt + 1], p[bowAt + 2]];

/** How far each point lies from where the parameters put it, px. */
export function pixelsOff(
  { points, prior, edges, along, pxPerMm }: CameraProblem,
  sides: Facing,
  p: Float64Array,
  out: Float64Array,
): void {
  across(cameraFrom(p, prior), sides, p[aspectAt], bowOf(p), out);
  for (let i = 0; i < points.length; i++) out[i] += p[insetAt];
  if (edges === 0) return;
  for (let i = 0; i < points.length; i++) {
    const e = edgesAt + points[i].markerId;
    out[i] += (p[e] + p[e + edges] * along[i]) * pxPerMm;
  }
}

/** Over σ; that of the points is multiplied by `scale`. */
export function residualsOf(
  problem: CameraProblem,
  sides: Facing,
  scale: number,
): (p: Float64Array, out: Float64Array) => void {
  const { prior, shape, edges, sigma, uBow } = problem;
  const n = problem.points.length;
  const { uMm: uEdge, uLeanMm: uLean } = shape.edges ?? { uMm: 1, uLeanMm: 1 };
  return (p, out) => {
    pixelsOff(problem, sides, p, out);
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
  };
}

/** Derivatives of `residualsOf`, column by column. */
export function jacobianOf(
  problem: CameraProblem,
  sides: Facing,
  scale: number,
): (p: Float64Array, out: Float64Array) => void {
  const { points, prior, edges, sigma, along, count, pxPerMm } = problem;
  const cameraOf = (p: ArrayLike<number>) => cameraFrom(p, prior);
  return (p, out) => {
    out.fill(0);
    acrossDerivatives(
      {
        camera: cameraOf(p),
        moves: movesAt(p, cameraOf),
        sides,
        aspect: p[aspectAt],
        bow: bowOf(p),
        weight: sigma.map((u) => 1 / (u * scale)),
        stride: count,
      },
      out,
    );
    setPriors(problem, out);
    if (edges === 0) return;
    for (let i = 0; i < points.length; i++) {
      const e = edgesAt + points[i].markerId;
      const weight = pxPerMm / (sigma[i] * scale);
      out[e * count + i] = weight;
      out[(e + edges) * count + i] = weight * along[i];
    }
  };
}

function setPriors(
  { points, prior, shape, edges, count, uBow }: CameraProblem,
  out: Float64Array,
): void {
  const set = (row: number, column: number, value: number) => {
    out[column * count + points.length + row] = value;
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
  if (!shape.edges) return;
  for (let e = 0; e < edges; e++) {
    set(priors + e, edgesAt + e, 1 / shape.edges.uMm);
    set(priors + edges + e, edgesAt + edges + e, 1 / shape.edges.uLeanMm);
  }
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
