import { erf, erfSlope } from '../../quantity/erf';
import * as portable from '../../quantity/portable-math';

/** One period of a thread's outline, in units of the pitch: a trapezoid with a crest flat, straight
 *  flanks and a root, as a photo shows it. */
export interface ToothShape {
  /** Width of the crest flat; ISO 68-1 and ASME B1.1 make it 1/8, wear widens it. */
  readonly flat: number;
  /** Radius of the rounding between flat and flanks (ISO 228-1, ISO 7-1). */
  readonly rounding: number;
  readonly depth: number;
  /** Standard deviation of the blur. */
  readonly blur: number;
  readonly halfAngleRad: number;
}

const phases = 48;
const nodes = 11;
const reach = 2.5;
const offsets = Float64Array.from({ length: nodes }, (_, i) => reach * ((2 * i) / (nodes - 1) - 1));
const weights = offsets.map((u) => portable.exp(-0.5 * u * u));
const weightSum = weights.reduce((a, b) => a + b, 0);

const heights = new Float64Array(nodes);

/** Height of the half-intensity contour over half a period, relative to the crest (≤ 0 but for
 *  rounding), sampled at phase k/48 from the middle of a crest; it is symmetric.
 *
 *  Two things round it. A view that slants along the axis by a slope t sees, beside each point of the
 *  silhouette, points further round the thread, r·cos θ wide and shifted by r·sin θ·t: the outline is
 *  the section dilated by a parabola of radius `slant` = (R/p)(t ± λ)², λ = p/2πR the slope of the helix,
 *  its sign by side and hand. Crests keep their height and roots fill. Then blur pulls convex
 *  corners in, which is what makes naive crest diameters small. */
export function toothContour(shape: ToothShape, slant: number): Float64Array {
  const slope = 1 / portable.tan(shape.halfAngleRad);
  const corner = cornerOf(shape.rounding, slant, slope);
  // Roots are rounded as crests are, the less the more they fill.
  const hollow = Math.max(0, shape.rounding - slant);
  const hollowReach = hollow * portable.cos(shape.halfAngleRad);
  const deepest =
    corner(0.5 - shape.flat / 2) - hollow * (1 / portable.sin(shape.halfAngleRad) - 1);
  const height = (x: number) => {
    const turn = Math.abs(x - Math.round(x));
    const off = turn - shape.flat / 2;
    if (off <= 0) return 0;
    const beside = 0.5 - turn;
    const fall =
      beside < hollowReach
        ? deepest - hollow + Math.sqrt(hollow * hollow - beside * beside)
        : corner(off);
    return -Math.min(shape.depth, fall);
  };
  const sigma = Math.max(0.004, shape.blur);
  const contour = new Float64Array(phases / 2 + 1);
  let y = 0;
  for (let k = 0; k <= phases / 2; k++) {
    for (let i = 0; i < nodes; i++) heights[i] = height(k / phases + offsets[i] * sigma);
    y = halfLevel(heights, sigma, y);
    contour[k] = y;
  }
  return contour;
}

/** Fall below the crest over the distance from its flat: a rounding of radius ρ dilated by the parabola of
 *  radius t, then the flank. Where both climb by m, x = ρ m/√(1 + m²) + t m and
 *  y = ρ (1 − 1/√(1 + m²)) + t m²/2. */
function cornerOf(rounding: number, slant: number, slope: number): (x: number) => number {
  const along = (m: number) => (rounding * m) / Math.sqrt(1 + m * m) + slant * m;
  const down = (m: number) => rounding * (1 - 1 / Math.sqrt(1 + m * m)) + (slant * m * m) / 2;
  const end = along(slope);
  const fallAtEnd = down(slope);
  return (x) => {
    if (x >= end) return fallAtEnd + slope * (x - end);
    if (rounding === 0) return (x * x) / (2 * slant);
    let m = x / (rounding + slant);
    for (let i = 0; i < 4; i++) {
      const root = Math.sqrt(1 + m * m);
      m += (x - along(m)) / (rounding / (root * root * root) + slant);
      m = Math.max(0, Math.min(slope, m));
    }
    return down(m);
  };
}

/** y at which Σ w·Φ((h − y)/σ) = ½ Σ w, by Newton steps that stay within a blur width. */
function halfLevel(heights: Float64Array, sigma: number, start: number): number {
  let y = start;
  for (let step = 0; step < 8; step++) {
    let covered = -weightSum / 2;
    let slope = 1e-9;
    for (let i = 0; i < nodes; i++) {
      const z = (heights[i] - y) / sigma;
      covered += weights[i] * 0.5 * (1 + erf(z * Math.SQRT1_2));
      slope += (weights[i] * 0.5 * Math.SQRT1_2 * erfSlope(z * Math.SQRT1_2)) / sigma;
    }
    const move = Math.max(-1.5 * sigma, Math.min(1.5 * sigma, covered / slope));
    y += move;
    if (Math.abs(move) < 1e-5) break;
  }
  return y;
}

/** Contour at any phase, in periods; linear between samples. */
export function contourAt(contour: Float64Array, phase: number): number {
  const x = Math.abs(phase - Math.round(phase)) * phases;
  const k = Math.min(phases / 2 - 1, Math.floor(x));
  const f = x - k;
  return contour[k] * (1 - f) + contour[k + 1] * f;
}
