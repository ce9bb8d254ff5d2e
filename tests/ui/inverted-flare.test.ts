import { expect, test } from 'vitest';
import { connections } from '../../src/standards/connections/connections';
import { findThread } from '../../src/standards/threads';
import { sectionShape } from '../../src/ui/identification/section-geometry';
import { dimensionsOf } from '../../src/ui/identification/table-rows';

const drawn = (end: 'male' | 'female') => {
  const row = connections.find(
    (c) => c.family === 'SAE J512 inverted' && c.size === '-5' && c.end === end,
  )!;
  return sectionShape(dimensionsOf(findThread(row.thread!)!, row));
};

const angleDeg = ([a, b]: readonly (readonly [number, number])[]) =>
  (180 / Math.PI) * Math.atan2(Math.abs(b![1] - a![1]), Math.abs(b![0] - a![0]));

// SAE J512 (from memory): the seat stands up at the bottom of the port, at 42° to the axis; the nut
// presses a flared tube on it.
test('an inverted-flare port shows a cone that points to its mouth', () => {
  const { seal, threadToMm } = drawn('female');
  expect(seal).toHaveLength(2);
  expect(angleDeg(seal)).toBeCloseTo(42, 6);
  const [tip, foot] = seal;
  expect(tip![0]).toBeLessThan(foot![0]);
  expect(tip![1]).toBeLessThan(foot![1]);
  expect(foot![0]).toBeGreaterThan(threadToMm);
});

test('its nut shows the flared tube inside, opening to the port', () => {
  const { seal, insert, boreMm } = drawn('male');
  expect(angleDeg(seal)).toBeCloseTo(42, 6);
  // Wider at the free end.
  expect(seal[0]![0]).toBe(0);
  expect(seal[0]![1]).toBeGreaterThan(seal[1]![1]);
  expect(insert.length).toBeGreaterThan(4);
  for (const [, r] of insert) expect(r).toBeGreaterThanOrEqual(boreMm / 2 - 1e-9);
});
