import { erf } from '../../quantity/erf';
import * as portable from '../../quantity/portable-math';
import type { Thread } from '../../standards/thread';

/** Where the crests of a made and used part lie: equally spaced diameters and their
 *  probabilities, which sum to 1. Diameters in mm, over the crests (male) or across them
 *  (female). For a tapered male thread they hold at `anchor`. */
export interface DiameterDensity {
  readonly firstMm: number;
  readonly stepMm: number;
  readonly weights: Float64Array;
}

const cells = 56;
/** Share of parts that are visibly worn, the spread of their wear (half-normal) and of the others'
 *  (exponential), mm on diameter: one-sided, by judgement, broad on purpose. */
const worn = { share: 0.2, spreadMm: 0.22, freshMeanMm: 0.012 };
/** Plating and out-of-roundness can leave a crest above its limit by this much, mm. */
const aboveLimitMm = 0.03;

/** Crests of an external thread: inside its tolerance class, less wear. A tapered thread: at the
 *  small end, spread by the gauge tolerance. */
export function maleDensity(thread: Thread): DiameterDensity {
  const reference = thread.taperPlanes?.majorAtSmallEndMm;
  const halfMm = (thread.crests.maxMm - thread.crests.minMm) / 2;
  const max = reference === undefined ? thread.crests.maxMm : reference + halfMm;
  const min = reference === undefined ? thread.crests.minMm : reference - halfMm;
  const wearMaxMm = Math.min(0.5 * thread.pitchMm, 0.9);
  const low = min - wearMaxMm;
  return towards(-1, [max + aboveLimitMm, low], max - min, wearMaxMm);
}

/** Crests of an internal thread: basic minor plus part of its tolerance, plus wear. */
export function femaleDensity(thread: Thread): DiameterDensity {
  const wearMaxMm = Math.min(0.35 * thread.pitchMm, 0.6);
  const { minMm, maxMm } = thread.bore;
  return towards(1, [minMm - aboveLimitMm, maxMm + wearMaxMm], maxMm - minMm, wearMaxMm);
}

/** A male taper seen at some distance from its small end: shifts the density by taper × place,
 *  spread evenly over [fromMm, toMm]. */
export function atPlace(
  small: DiameterDensity,
  taper: number,
  fromMm: number,
  toMm: number,
): DiameterDensity {
  const spread = (toMm - fromMm) * taper;
  const span = small.stepMm * (cells - 1) + spread;
  const stepMm = span / (cells - 1);
  const weights = new Float64Array(cells);
  const firstMm = small.firstMm + fromMm * taper;
  const slices = 9;
  for (let s = 0; s < slices; s++) {
    const shift = (spread * (s + 0.5)) / slices;
    for (let i = 0; i < cells; i++) {
      const cell = (i * small.stepMm + shift) / stepMm;
      const k = Math.min(Math.floor(cell), cells - 2);
      const share = small.weights[i]! / slices;
      weights[k]! += share * (k + 1 - cell);
      weights[k + 1]! += share * (cell - k);
    }
  }
  return { firstMm, stepMm, weights };
}

/** Tolerance (denser in the middle than at its limits) convolved with one-sided wear. `sign` is
 *  where wear goes; `start` and `end` span the grid in that direction. */
function towards(
  sign: 1 | -1,
  [start, end]: readonly [number, number],
  tolerance: number,
  wearMaxMm: number,
): DiameterDensity {
  const stepMm = Math.abs(end - start) / (cells - 1);
  const made = new Float64Array(cells);
  const wear = new Float64Array(cells);
  for (let i = 0; i < cells; i++) {
    // Distance from the material limit, towards wear.
    const depth = i * stepMm - aboveLimitMm;
    const f = depth / tolerance;
    const soft = stepMm / tolerance + 0.08;
    made[i] = f < -soft || f > 1 + soft ? 0 : 0.15 + Math.max(0, 4 * f * (1 - f));
    const w = i * stepMm;
    if (w <= wearMaxMm) wear[i] = wearDensity(w, stepMm);
  }
  scaleToOne(made);
  scaleToOne(wear);
  const along = new Float64Array(cells);
  for (let i = 0; i < cells; i++) {
    for (let j = 0; i + j < cells; j++) along[i + j]! += made[i]! * wear[j]!;
  }
  scaleToOne(along);
  const weights = sign === 1 ? along : along.reverse();
  return { firstMm: Math.min(start, end), stepMm, weights };
}

/** Of one grid cell around w, by exact integration. */
function wearDensity(w: number, stepMm: number): number {
  const from = Math.max(0, w - stepMm / 2);
  const to = w + stepMm / 2;
  const scale = worn.spreadMm * Math.SQRT2;
  const fresh = portable.exp(-from / worn.freshMeanMm) - portable.exp(-to / worn.freshMeanMm);
  return worn.share * (erf(to / scale) - erf(from / scale)) + (1 - worn.share) * fresh;
}

function scaleToOne(weights: Float64Array): void {
  let sum = 0;
  for (const w of weights) sum += w;
  for (let i = 0; i < weights.length; i++) weights[i]! /= sum;
}
