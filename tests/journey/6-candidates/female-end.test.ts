import { expect, test } from 'vitest';
import type { MeasuredThread } from '../../../src/journey/6-candidates/photo-likelihood';
import { weigh } from '../../../src/journey/6-candidates/weigh';
import { conclude } from '../../../src/journey/7-next-reading/conclude';

const seen = (pitchMm: number, diameterMm: number, end: 'male' | 'female'): MeasuredThread => ({
  end,
  pitchMm: { value: pitchMm, u: 0.005 * pitchMm },
  majorDiameterMm: { value: diameterMm, u: 0.012 * diameterMm },
  correlation: 0.2,
  taper: null,
  flankAngleDeg: null,
  noseHalfAngleDeg: null,
  middleFromEndMm: null,
  turns: 6,
});

/** ISO 965-1, M10×1 6H: minor diameter 8.917 to 9.153 mm; M9×1 6g has its crests at 8.794 to 8.974 mm. Both from
 *  memory of its tables. */
test('a bore of M10×1 is M10×1, not a male thread of its own width', () => {
  const female = conclude(seen(1, 9.03, 'female'), []);
  expect(female.end).toBe('female');
  expect(female.threads[0]).toMatchObject({ system: 'M', designation: 'M10x1' });
  expect(female.connections.every(({ end }) => end === 'female')).toBe(true);
  const male = conclude(seen(1, 9.93, 'male'), []);
  expect(male.end).toBe('male');
  expect(male.threads[0]).toMatchObject({ system: 'M', designation: 'M10x1' });
});

test('what a photo shows of one end says nothing for the other', () => {
  const { threads } = weigh({ photo: seen(1.5, 16.5, 'female'), readings: [] }, {});
  expect(threads.length).toBeGreaterThan(0);
  expect(threads.every(({ hypothesis }) => hypothesis.end === 'female')).toBe(true);
});

/** G 1/2 by ISO 228-1: minor diameter 18.631 to 19.172 mm, 14 turns an inch (from memory). 3/4-16 UNF by ASME B1.1,
 *  2B: 17.40 to 17.68 mm (from memory), 1.4 mm less at nearly an eighth less pitch. */
test('G 1/2 inside is told from its neighbours by pitch and minor diameter', () => {
  const { threads } = conclude(seen(25.4 / 14, 18.85, 'female'), []);
  expect(threads[0]).toMatchObject({ system: 'G', designation: 'G1/2' });
});
