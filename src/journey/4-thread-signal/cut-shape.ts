import * as portable from '../../quantity/portable-math';
import { type EdgeResponse, responseAt, responseReachPx } from '../2-card-pose/edge-response';

/** What a cut across the outline of a round body shows, as this photo draws it, over the depth inside
 *  the outline: the body, 0 beyond and 1 within; how its rim mirrors what lies behind it, falling as
 *  (1 − cos θ)⁵ (Schlick 1994) with cos θ = √(2·depth/radius); and their slopes. `tableStep` samples
 *  apart, from depth `from`. */
export interface CutShape {
  /** Blur, in samples. */
  readonly sigma: number;
  readonly from: number;
  readonly body: Float64Array;
  readonly bodySlope: Float64Array;
  readonly rim: Float64Array;
  readonly rimSlope: Float64Array;
}

export interface CutSetting {
  /** Samples per px across the outline: more where it runs oblique to the cut. */
  readonly perPx: number;
  /** Of the body where the cut meets it, samples. */
  readonly radius: number;
  readonly bodyIsBright: boolean;
  readonly darkOverBright: number;
}

/** Light on both sides of an edge, as `CutSetting` puts it. */
export const contrast = ([inside, outside]: readonly [number, number]) => ({
  bodyIsBright: inside > outside,
  darkOverBright: Math.max(0, Math.min(inside, outside)) / Math.max(inside, outside, 1),
});

export const tableStep = 0.2;
/** Shapes are shared between cuts that differ by less: steps of perPx, of ln radius and of the root of
 *  the contrast. */
const steps = { perPx: 0.2, lnRadius: 0.1, contrast: 0.125 };
/** Deeper than this share of the radius the rim has sunk to a hundredth. */
const rimDepth = 0.18;
const deepestSamples = 30;

const known = new WeakMap<EdgeResponse, Map<number, CutShape>>();

export function shapesOfCuts(response: EdgeResponse): (setting: CutSetting) => CutShape {
  const shapes = known.get(response) ?? new Map<number, CutShape>();
  known.set(response, shapes);
  return ({ perPx, radius, bodyIsBright, darkOverBright }) => {
    const a = Math.round(perPx / steps.perPx);
    const b = Math.round(portable.log(Math.max(4, radius)) / steps.lnRadius);
    const c = Math.round(Math.sqrt(Math.min(1, darkOverBright)) / steps.contrast);
    const key = ((a * 256 + b) * 16 + c) * 2 + Number(bodyIsBright);
    let shape = shapes.get(key);
    if (!shape) {
      shape = computed(response, {
        perPx: a * steps.perPx,
        radius: portable.exp(b * steps.lnRadius),
        bodyIsBright,
        darkOverBright: (c * steps.contrast) ** 2,
      });
      shapes.set(key, shape);
    }
    return shape;
  };
}

function computed(response: EdgeResponse, setting: CutSetting): CutShape {
  const { perPx, radius, bodyIsBright } = setting;
  const respond = responseAt(response, setting.darkOverBright);
  const bodyAt = bodyIsBright
    ? (depth: number) => respond(depth / perPx)
    : (depth: number) => 1 - respond(-depth / perPx);
  const spread = Math.ceil((responseReachPx * perPx) / tableStep);
  const cells = Math.ceil(Math.min(rimDepth * radius, deepestSamples) / tableStep);
  const from = -spread * tableStep;
  const n = cells + 2 * spread + 2;
  const body = Float64Array.from({ length: n }, (_, k) => bodyAt(from + k * tableStep));
  const line = Float64Array.from({ length: 2 * spread + 1 }, (_, k) => {
    const depth = (k - spread) * tableStep;
    return (bodyAt(depth + tableStep / 2) - bodyAt(depth - tableStep / 2)) / tableStep;
  });
  // Averages over cells of the depth, since the cusp at the outline is finer than any grid; each cell's
  // light is spread as an edge's slope is.
  const rim = new Float64Array(n);
  for (let j = 0; j < cells; j++) {
    const light =
      rimLight((j + 1) * tableStep, radius) - rimLight(Math.max(0, j) * tableStep, radius);
    const first = light / 2;
    for (let k = 0; k <= 2 * spread; k++) {
      rim[j + k] += first * line[k];
      rim[j + k + 1] += first * line[k];
    }
  }
  return {
    sigma: response.blurPx * perPx,
    from,
    body,
    bodySlope: slopes(body),
    rim,
    rimSlope: slopes(rim),
  };
}

/** ∫ (1 − c)⁵ dd from the outline to a depth, d = r c²/2. */
function rimLight(depth: number, radius: number): number {
  const c = Math.min(1, Math.sqrt((2 * depth) / radius));
  const cube = (1 - c) * (1 - c) * (1 - c);
  return (radius * (1 - cube * cube * (1 + 6 * c))) / 42;
}

function slopes(values: Float64Array): Float64Array {
  const last = values.length - 1;
  return values.map(
    (_, k) => (values[Math.min(last, k + 1)] - values[Math.max(0, k - 1)]) / (2 * tableStep),
  );
}
