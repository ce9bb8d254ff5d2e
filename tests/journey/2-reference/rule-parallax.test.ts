import { describe, expect, it } from 'vitest';
import { axisHeightPrior, ruleParallax } from '../../../src/journey/2-reference/rule-parallax';
import { seededRandom } from '../../../src/quantity/random';

describe('parallax beside a rule', () => {
  it('is the ratio of similar triangles where everything is known', () => {
    // Camera 300 mm over the face, axis 14 mm over a table with a rule of 1 mm: 287/300.
    const { value, u } = ruleParallax({
      lnDistance: { value: Math.log(300), u: 0 },
      faceMm: { value: 1, u: 0 },
      axisMm: { value: 14, u: 0 },
    });
    expect(value).toBeCloseTo(287 / 300, 9);
    expect(u).toBe(0);
  });

  it.each([
    [0.02, 0.3],
    [0.4, 3],
  ])(
    'u(ln distance) %f, u(height) %f mm: mean and u as drawn by Monte Carlo (JCGM 101)',
    (uLn, uMm) => {
      const random = seededRandom(4);
      const scene = {
        lnDistance: { value: Math.log(250), u: uLn },
        faceMm: { value: 1, u: 0.3 },
        axisMm: { value: 15, u: uMm },
      };
      const n = 200_000;
      let sum = 0;
      let square = 0;
      for (let i = 0; i < n; i++) {
        const distance = Math.exp(scene.lnDistance.value + uLn * random.normal());
        const over = 14 + uMm * random.normal() - 0.3 * random.normal();
        const factor = 1 - over / distance;
        sum += factor;
        square += factor * factor;
      }
      const mean = sum / n;
      const spread = Math.sqrt(square / n - mean * mean);
      const found = ruleParallax(scene);
      expect(Math.abs(found.value - mean)).toBeLessThan(0.02 * spread);
      expect(Math.abs(found.u / spread - 1)).toBeLessThan(0.02);
    },
  );

  it('takes the height from what is wider than the thread, where there is such', () => {
    // A 22 mm hex lies 11 mm up; M8's head of 13 mm (ISO 4762) on the table and its point too: 5.25 at
    // the thread's middle. Both within the bounds of a rectangular distribution.
    const hex = axisHeightPrior(16, 22 / Math.sqrt(3));
    expect(Math.abs(hex.value - 11)).toBeLessThan(Math.sqrt(3) * hex.u);
    const head = axisHeightPrior(8, 6.5);
    expect(Math.abs(head.value - 5.25)).toBeLessThan(Math.sqrt(3) * head.u);
    const guess = axisHeightPrior(16, null);
    // M16 on its 24 mm hex (ISO 4017) lies 12 mm up, on its own thread 8 mm: both within the bounds.
    expect(Math.abs(guess.value - 12)).toBeLessThan(2 * guess.u);
    expect(Math.abs(guess.value - 8)).toBeLessThan(2 * guess.u);
  });
});
