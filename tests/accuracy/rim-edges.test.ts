import { describe, expect, it } from 'vitest';
import { fitEdge } from '../../src/journey/2-card-pose/edge-profile';
import { gaussianResponse } from '../../src/journey/2-card-pose/edge-response';
import { shapesOfCuts, tableStep } from '../../src/journey/4-thread-signal/cut-shape';
import { fitRimEdge, usualRim } from '../../src/journey/4-thread-signal/rim-edge';
import { seededRandom } from '../../src/quantity/random';

const sigma = 1.4;
const radius = 200;
const count = 18;

/** Outline of a round bar that mirrors the paper behind it: Schlick's (1 − cos θ)⁵ of the step is given
 *  back at the rim, times `share`. Averaged over a fine grid, then blurred. */
function profile(positionAt: number, share: number, noise: number, seed: number): Float64Array {
  const random = seededRandom(seed);
  const fine = 0.01;
  const light = (x: number) => {
    const depth = positionAt - x;
    if (depth < 0) return 200;
    const cosine = Math.min(1, Math.sqrt((2 * depth) / radius));
    return 200 - 120 * (1 - share * (1 - cosine) ** 5);
  };
  return Float64Array.from({ length: count }, (_, i) => {
    let sum = 0;
    let weights = 0;
    for (let x = i - 5 * sigma; x <= i + 5 * sigma; x += fine) {
      const w = Math.exp(-0.5 * ((x - i) / sigma) ** 2);
      sum += w * light(x);
      weights += w;
    }
    return sum / weights + noise * random.normal();
  });
}

const cut = { perPx: 2, radius, bodyIsBright: false, darkOverBright: 0.4 };
const shape = shapesOfCuts(gaussianResponse(sigma / 2))(cut);

describe('edges of a body whose rim mirrors what lies behind it', () => {
  it.each([0.2, 0.35, 0.5])(
    'share %f: found within 0.15 samples, inside by a plain step',
    (share) => {
      let rim = 0;
      let plain = 0;
      const trials = 40;
      for (let k = 0; k < trials; k++) {
        const at = 7 + k / trials;
        const seen = profile(at, share, 1.5, k + 1);
        rim += (fitRimEdge(seen, 7, shape, usualRim.light)!.position - at) / trials;
        plain += (fitEdge(seen, 7, sigma)!.position - at) / trials;
      }
      expect(Math.abs(rim)).toBeLessThan(0.15);
      expect(plain).toBeLessThan(-0.1);
      expect(Math.abs(rim)).toBeLessThan(0.6 * Math.abs(plain));
    },
  );

  it('the rim itself: all at the outline, (1 − cos θ)⁵ within it', () => {
    const { rim, from } = shapesOfCuts(gaussianResponse(0.03))(cut);
    const at = (depth: number) => rim[Math.round((depth - from) / tableStep)]!;
    // Blurred over a sixteenth of a sample; the cusp is gone a little further in.
    for (const depth of [1, 3, 10, 25])
      expect(Math.abs(at(depth) - (1 - Math.sqrt((2 * depth) / radius)) ** 5)).toBeLessThan(0.01);
  });

  it('refuses a profile without an edge', () => {
    const random = seededRandom(9);
    const flat = Float64Array.from({ length: count }, () => 100 + random.normal());
    const fit = fitRimEdge(flat, 8, shape, usualRim.light);
    expect(fit === null || fit.contrastToNoise < 6).toBe(true);
  });
});
