import { expect, test } from 'vitest';
import type { OutlinePoint } from '../../../src/journey/4-thread-signal/outline-edges';
import { fitThread } from '../../../src/journey/5-measurement/fit-thread';
import { startAt } from '../../../src/journey/5-measurement/follow-fit';
import { scatterAbout } from '../../../src/journey/5-measurement/outline-scatter';
import { anyForm } from '../../../src/journey/5-measurement/thread-form';

const pitch = { value: 1.5, u: 0.002 };
const radius = { value: 10, u: 0.05 };
const priors = {
  blurMm: 0.1,
  form: anyForm,
  handed: 1,
  surfacePitch: pitch,
  mmPerPx: 0.1,
  radius,
} as const;
const fitTo = (points: readonly OutlinePoint[]) =>
  fitThread(points, 0, startAt(1.5, 0, 10, 0), priors);
const edge = (s: number, r: number): OutlinePoint => ({
  ...{ side: 'left', photo: [0, 0], slope: 0, uMm: 0.01 },
  ...{ s, r },
});

test('without an outline a thread stays as limbs and surface have it, as unsure as they are', () => {
  const fit = fitTo([]);
  expect(fit.pitchMm).toBeCloseTo(pitch.value, 6);
  expect(fit.crestRadiusMm).toBeCloseTo(radius.value, 6);
  expect(Math.sqrt(fit.covariance[0]!)).toBeCloseTo(pitch.u, 4);
  expect(fit.modelAt('left', 3, 0)).toBeGreaterThan(8);
});

test('a handful of edges that agree by chance moves it by less than its u', () => {
  const fit = fitTo([edge(-2, 10.3), edge(0, 10.3), edge(2, 10.3)]);
  expect(Math.abs(fit.pitchMm - pitch.value)).toBeLessThan(pitch.u);
  expect(Math.abs(fit.crestRadiusMm - radius.value)).toBeLessThan(radius.u);
});

test('what has not been seen of an outline counts less the more is seen', () => {
  const close = (n: number) => Array.from({ length: n }, (_, i) => (i % 2 ? 0.02 : -0.02));
  expect(scatterAbout([], 1.5)).toBeCloseTo(0.12, 6);
  expect(scatterAbout(close(4), 1.5)).toBeGreaterThan(0.1);
  expect(scatterAbout(close(2000), 1.5)).toBeLessThan(1.1 * 1.4826 * 0.02);
});
