import { expect, test } from 'vitest';
import { tiltFault } from '../../src/journey/guided-tilt';
import { checksOf, firstHint } from '../../src/ui/shoot/checks';

const seen = (tiltDeg: number) => ({
  referenceSeen: true,
  tiltDeg,
  tooNear: false,
  tooDark: false,
  moving: false,
  lowContrast: false,
  field: 'light' as const,
  fittingOutside: false,
  ready: true,
});

/** Issue 17: a female end stands and is seen from 30–40° beside straight above, or lies and is seen from 30–40° above
 *  the table; a male end is seen from above. */
test.each([35, 55])('%d° from straight above shows a female end, and not a male one', (tilt) => {
  expect(tiltFault(tilt, 'female')).toBeNull();
  expect(tiltFault(tilt, 'male')).toBe('too-slanted');
  expect(firstHint(seen(tilt), 'card', 'female')).toBeNull();
  expect(firstHint(seen(tilt), 'card', 'male')).toBe('tilt');
});

test('from straight above no far wall of a bore is seen', () => {
  expect(tiltFault(10, 'male')).toBeNull();
  expect(tiltFault(10, 'female')).toBe('too-level');
  const tilt = checksOf(seen(10), 'card', 'female').find(({ key }) => key === 'tilt');
  expect(tilt?.state).toBe('bad');
});
