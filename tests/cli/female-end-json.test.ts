import { expect, test } from 'vitest';
import { expectedThread } from '../../src/cli/expected-thread';
import { identificationJson } from '../../src/cli/identification-json';
import { identificationText } from '../../src/cli/identification-text';
import { conclude } from '../../src/journey/7-next-reading/conclude';
import type { Measured } from '../../src/journey/identification';
import { exampleMeasurement, exampleOverlay } from '../journey/8-sheet/example';

/** What the measuring makes of an end; numbers are given: a G 1/2 inside has 14 turns an inch and a minor
 *  diameter of 18.631 to 19.172 mm (ISO 228-1, from memory). */
function answer(end: 'male' | 'female'): Measured {
  const measurement = {
    ...exampleMeasurement,
    end,
    pitchMm: { value: 25.4 / 14, u: 0.003 },
    majorDiameterMm: { value: end === 'female' ? 18.85 : 20.9, u: 0.05 },
  };
  return {
    outcome: 'measured',
    reference: {
      ...{ kind: 'card', pxPerMm: 9.4, axisHeightMm: 20, cameraHeightMm: 290, tiltDeg: 30 },
      field: 'light',
    },
    measurement,
    overlay: exampleOverlay,
    profile: { axialMm: [], leftMm: [], rightMm: [], leftFitMm: [], rightFitMm: [] },
    crests: [],
    conclusion: conclude(measurement, []),
    otherEnds: [{ measurement, axis: exampleOverlay.axis! }],
    notes: [],
    timingsMs: { total: 1 },
  };
}

/** Every value under this name, however deep; of candidates' tables there is none. */
function valuesOf(name: string, within: unknown): unknown[] {
  if (typeof within !== 'object' || within === null) return [];
  return Object.entries(within).flatMap(([key, value]) =>
    key === name ? [value] : valuesOf(name, value),
  );
}

test('no line of JSON gives a major diameter of a female end', () => {
  const json = identificationJson('gf', answer('female'));
  const majors = valuesOf('majorDiameterMm', json);
  // Thread, two ends, two rows of the budget.
  expect(majors).toEqual([null, null, null, null, null]);
  expect(valuesOf('minorDiameterMm', json)).toEqual([
    { value: 18.85, u: 0.05 },
    { value: 18.85, u: 0.05 },
    { value: 18.85, u: 0.05 },
    0.006,
    0.05,
  ]);
});

test('of a male end it does, and no minor diameter', () => {
  const json = identificationJson('gz', answer('male'));
  expect(valuesOf('majorDiameterMm', json)).toEqual([
    { value: 20.9, u: 0.05 },
    { value: 20.9, u: 0.05 },
    { value: 20.9, u: 0.05 },
    0.006,
    0.05,
  ]);
  expect(valuesOf('minorDiameterMm', json)).toEqual([]);
});

test('nor is a female end judged by the crests of a male thread', () => {
  const expected = expectedThread({ expect: 'G1/2' });
  expect(identificationJson('gf', answer('female'), { expected })).toMatchObject({
    wear: { crest: { state: 'not-decidable', why: 'unresolved', byMm: null }, overlapMm: null },
  });
  expect(identificationJson('gz', answer('male'), { expected })).toMatchObject({
    wear: { overlapMm: expect.any(Number) },
  });
});

test('in words it is the minor diameter', () => {
  const words = identificationText('gf', answer('female'));
  expect(words).toMatch(/minor diameter +18\.850 ± 0\.098 mm/);
  expect(words).not.toContain('major');
});
