import { expect, test } from 'vitest';
import type { Overlay, PhotoPoint } from '../../src/journey/overlay';
import { visibleRings } from '../../src/journey/visible-rings';

const circle = (cx: number, from = 0): PhotoPoint[] => {
  const points = Array.from({ length: 72 }, (_, k): PhotoPoint => {
    const t = (2 * Math.PI * (k + from)) / 72;
    return [cx + 50 * Math.cos(t), 50 * Math.sin(t)];
  });
  return [...points, points[0]];
};
const seen = (...outline: PhotoPoint[][]) => visibleRings({ outline } as unknown as Overlay);

/** Two circles of radius 50, their middles 60 apart: half of the chord that they share is 40, so that the deeper one
 *  is within the mouth over 2·acos(0.6) = 106.3° of its way round. */
test.each([0, 18, 36, 55])(
  'of a deeper ring only what the mouth shows, begun at point %d',
  (from) => {
    const [mouth, ...deeper] = seen(circle(0), circle(60, from));
    expect(mouth).toEqual(circle(0));
    expect(deeper).toHaveLength(1);
    for (const [x, y] of deeper[0]) expect(Math.hypot(x, y)).toBeLessThan(50);
    expect(deeper[0].length * 5).toBeGreaterThan(95);
    expect(deeper[0].length * 5).toBeLessThan(112);
  },
);

test('what is not closed is no ring', () => {
  expect(seen(circle(0).slice(0, 40))).toEqual([]);
});
