import { expect, test } from 'vitest';
import {
  ascending,
  betweenRanks,
  median,
  middleValue,
  nearestRank,
  quantile,
} from '../../src/quantity/order';

const even = [7, 1, 3, 10];

test('of an even count the median is a mean, the middle value the upper of two', () => {
  expect(median(even)).toBe(5);
  expect(middleValue(even)).toBe(7);
  expect(median([9, 1, 4])).toBe(4);
  expect(middleValue([9, 1, 4])).toBe(4);
});

/** Hyndman & Fan 1996, from memory: nearest rank is type 1, linear between ranks type 7; the worked values are by hand. */
test('quantiles by their three definitions', () => {
  const sorted = ascending(even);
  expect(sorted).toEqual([1, 3, 7, 10]);
  expect(even[0]).toBe(7);
  expect([0, 0.25, 0.5, 0.99].map((share) => quantile(sorted, share))).toEqual([1, 3, 7, 10]);
  expect([0.2, 0.25, 0.5, 1].map((share) => nearestRank(sorted, share))).toEqual([1, 1, 3, 10]);
  expect([0, 0.5, 0.75, 1].map((share) => betweenRanks(sorted, share))).toEqual([1, 5, 7.75, 10]);
});

test('no values have no order', () => {
  expect(middleValue([])).toBeUndefined();
  expect(nearestRank([], 0.95)).toBeUndefined();
  expect(betweenRanks([], 0.5)).toBeNaN();
});
