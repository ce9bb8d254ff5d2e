import type { OutlinePoint } from '../4-thread-signal/outline-edges';
import type { OutlineModel } from './outline-model';
import { fitParameters, index, type OutlineParameters } from './outline-parameters';

/** Edges of an outline, and the model that they are held against. */
export interface SeenOutline {
  readonly points: readonly OutlinePoint[];
  readonly model: OutlineModel;
  /** The model's tilt at each point. */
  readonly tilts: readonly number[];
  readonly middleS: number;
}

/** Half-width of differences along the tooth, pitches. */
const h = 0.01;
/** Parameters of the tooth's shape, and by how much each is moved to see what that does. */
const shapeSteps = [
  { k: index.flat, step: 0.004 },
  { k: index.depth, step: 0.004 },
  { k: index.lnBlur, step: 0.02 },
  { k: index.halfAngle, step: 0.02 },
] as const;

/** How far the edges lie outside the model, mm. */
export function outlineResiduals({ points, model }: SeenOutline, p: OutlineParameters): number[] {
  const at = model.at(p);
  return points.map((q) => q.r - at(q.side, q.s, q.slope));
}

/** An edge is as sure square to itself everywhere: along a cut the less, the steeper it runs. Length along the outline
 *  per length along the axis, at each point. */
export function steepnessOf(
  { points, model, tilts }: SeenOutline,
  p: OutlineParameters,
): Float64Array {
  const contours = model.contoursOf(p);
  return Float64Array.from(points, (q, i) =>
    Math.hypot(1, riseAt(model, contours, tilts[i], model.phaseOf(p, q.side, q.s))),
  );
}

/** Derivatives of the edges' residuals, in their σ, after the parameters, column-wise into `out`: along the outline in
 *  closed form, those of the tooth's shape by differences. */
export function outlineJacobian(
  { points, model, tilts, middleS }: SeenOutline,
  p: Float64Array,
  sigmas: Float64Array,
  out: Float64Array,
): void {
  const rows = out.length / fitParameters.length;
  const contours = model.contoursOf(p);
  const shapes = shapeSteps.map(({ k, step }) => {
    const moved = Float64Array.from(p);
    moved[k] += step;
    return { k, step, contours: model.contoursOf(moved) };
  });
  const pitch = p[index.pitch];
  const crestS = p[index.crestS];
  const radius = p[index.radius];
  const turn = p[index.turn];
  for (let i = 0; i < points.length; i++) {
    const q = points[i];
    const w = -1 / sigmas[i];
    const t = q.s - middleS;
    const sign = q.side === 'left' ? 1 : -1;
    const phase = model.phaseOf(p, q.side, q.s);
    const here = model.toothAt(contours, tilts[i], phase);
    const rise = riseAt(model, contours, tilts[i], phase);
    out[index.pitch * rows + i] =
      w * (here - rise * ((model.along(p, q.side, q.s) - crestS) / pitch));
    out[index.crestS * rows + i] = w * -rise;
    out[index.radius * rows + i] = w * (1 + rise * sign * turn);
    out[index.halfTaper * rows + i] = w * t;
    out[index.offset * rows + i] = w * sign;
    out[index.turn * rows + i] = w * sign * (t + rise * radius);
    for (const { k, step, contours: moved } of shapes)
      out[k * rows + i] = (w * pitch * (model.toothAt(moved, tilts[i], phase) - here)) / step;
  }
}

/** Slope of the tooth, pitches per pitch. */
const riseAt = (
  { toothAt }: OutlineModel,
  contours: readonly Float64Array[],
  tilt: number,
  phase: number,
): number => (toothAt(contours, tilt, phase + h) - toothAt(contours, tilt, phase - h)) / (2 * h);
