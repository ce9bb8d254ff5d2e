import { describe, expect, test } from 'vitest';
import { fullSweep } from '../full-sweep';
import { drawn, errorsOf, identifyByRuler } from './by-ruler';
import { type DrawnScrew, m8, marksOf } from './drawn-screw';

/** One of each always: black, grey and askew, few pixels, an inch rule, smallest, and a pitch that is the rule's
 *  own division. The full sweep adds a near head, more pixels, a far camera, the largest, and the plain one. */
const always = ['M8 on black', 'M8 on grey, askew', 'M8, 10 px per mm', 'M6', '1/4-20', 'M3'];

describe('drawings of a screw beside a rule', () => {
  const small = { axisHeightMm: 1, gapMm: 6 };
  const screws: [string, DrawnScrew][] = [
    ['M8', m8],
    ['M8 on black', { ...m8, table: 35, metal: 230 }],
    ['M8 on grey, askew', { ...m8, table: 120, metal: 200, angleRad: 0.6, gapMm: 18 }],
    ['M8 whose head touches the rule', { ...m8, gapMm: 7.1 }],
    ['M8 from afar', { ...m8, distanceMm: 1500 }],
    ['M8, 10 px per mm', { ...m8, pxPerMm: 10 }],
    ['M8, 45 px per mm', { ...m8, pxPerMm: 45 }],
    // Its pitch is the rule's own division, and it lies along the rule.
    ['M6', { ...m8, pitchMm: 1, majorMm: 5.9, headMm: { across: 10, length: 4 }, gapMm: 8 }],
    ['1/4-20', { ...m8, pitchMm: 1.27, majorMm: 6.3, divisionMm: 25.4 / 16 }],
    [
      'M3',
      {
        ...m8,
        ...small,
        pitchMm: 0.5,
        majorMm: 2.95,
        headMm: { across: 5.5, length: 3 },
        threadMm: 16,
      },
    ],
    [
      'M24',
      {
        ...m8,
        pitchMm: 3,
        majorMm: 23.7,
        threadMm: 40,
        headMm: { across: 36, length: 15 },
        axisHeightMm: 11.5,
        gapMm: 20,
      },
    ],
  ];
  test.each(screws.filter(([name]) => fullSweep || always.includes(name)))(
    '%s is covered by its interval, its ratio is better known',
    async (_, screw) => {
      const result = await identifyByRuler(drawn(screw), marksOf(screw));
      if (result.outcome === 'refused') throw new Error(result.refusal.advice);
      const errors = errorsOf(result, screw.pitchMm, screw.majorMm);
      expect(Math.abs(errors.pitch)).toBeLessThan(1.96);
      expect(Math.abs(errors.major)).toBeLessThan(1.96);
      // Flat paint mirrors nothing at its rim, where metal does: diameters read large by 0.15 px a side.
      expect(Math.abs(errors.ratio)).toBeLessThan(0.024);
      expect(errors.relative).toBeLessThan(0.07);
      expect(Math.min(errors.uPitch, errors.uMajor)).toBeGreaterThan(0.01);
      // The scale is common; the shadow that a lamp might throw beside a small screw is not.
      expect(result.measurement.correlation).toBeGreaterThan(0.55);
    },
    60_000,
  );
});
