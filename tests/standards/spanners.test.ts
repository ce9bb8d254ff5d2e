import { expect, test } from 'vitest';
import { spannersBetween } from '../../src/standards/spanners';

// Common practice: 27 mm and 1 1/16 in (26.99 mm) are one hex, 19 mm and 3/4 in (19.05 mm) another.
test('one hex takes its metric and its inch spanner', () => {
  const names = (low: number, high: number) =>
    spannersBetween(low, high).map(({ system, name }) => `${name} ${system}`);
  expect(names(26.8, 27.2)).toEqual(['27 metric', '1 1/16 inch']);
  expect(names(18.9, 19.2)).toEqual(['19 metric', '3/4 inch']);
  expect(names(25.2, 25.6)).toEqual(['1 inch']);
  expect(names(42.5, 43)).toEqual([]);
});
