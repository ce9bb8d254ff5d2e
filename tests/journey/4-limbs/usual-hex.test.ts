import { expect, test } from 'vitest';
import { usualHex } from '../../../src/journey/4-limbs/hex-height';

/** Across flats of stud ends and their threads' diameters, mm: ISO 8434-1 (24° cones, light series), ISO 8434-2 (37°
 *  flares) and ISO 1179-2 (G, with elastomer sealing), from memory. */
const stud = [
  ['M16x1.5', 16, 17],
  ['M22x1.5', 22, 27],
  ['M36x2', 36, 41],
  ['9/16-18', 14.29, 17],
  ['1 5/16-12', 33.34, 38],
  ['G1/4', 13.16, 19],
  ['G1/2', 20.96, 27],
  ['G1', 33.25, 41],
] as const;

test.each(stud)('the hex of %s is a usual one, and one twice as wide is not', (...row) => {
  const [, diameterMm, flatsMm] = row;
  expect(usualHex(flatsMm, diameterMm)).toBeGreaterThan(0.4);
  expect(usualHex(2 * flatsMm, diameterMm)).toBeLessThan(0.15);
});
