import { expect, test } from 'vitest';
import { evenPitch } from '../../../src/journey/4-limbs/even-crests';

const line = (pitchMm: number, sureness = 20) => ({
  at: Array.from({ length: 7 }, (_, k) => 0.3 + k * pitchMm),
  sureness: Array.from({ length: 7 }, () => sureness),
});
const nothingKnown = { value: 1.5, u: Number.POSITIVE_INFINITY };

test('crests that lie evenly tell their pitch, whatever was expected within the span', () => {
  const { value, u } = evenPitch([line(1.512, 400)], nothingKnown, 0.02);
  expect(value).toBeCloseTo(1.512, 3);
  expect(u).toBeLessThan(0.006);
});

test('what is known beforehand is weighed with what is seen', () => {
  const unsure = [line(1.512, 1)];
  const free = evenPitch(unsure, nothingKnown, 0.02);
  const held = evenPitch(unsure, { value: 1.5, u: 0.002 }, 0.02);
  expect(free.value).toBeGreaterThan(held.value);
  expect(held.u).toBeLessThan(0.0021);
  expect(held.u).toBeLessThan(free.u);
});

test('one crest that was misled moves the pitch by less than its u', () => {
  const good = line(1.5);
  const bad = { ...good, at: good.at.map((s, i) => (i === 3 ? s + 0.5 : s)) };
  const { value, u } = evenPitch([bad], nothingKnown, 0.02);
  expect(Math.abs(value - 1.5)).toBeLessThan(u);
});
