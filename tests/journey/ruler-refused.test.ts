import { describe, expect, test } from 'vitest';
import { drawn, identifyByRuler, type Ruler } from './by-ruler';
import { m8, marksOf } from './drawn-screw';

test.each([1, 0.5, 25.4 / 16])(
  'a rule alone shows no thread: divisions of %f mm',
  async (divisionMm) => {
    const bare = { ...m8, divisionMm, threadMm: 0, headMm: { across: 0, length: 0 } };
    const result = await identifyByRuler(drawn(bare), marksOf(bare));
    expect(result).toMatchObject({ outcome: 'refused', refusal: { reason: 'no-thread' } });
  },
  60_000,
);

test('nor does a smooth pin', async () => {
  const pin = { ...m8, pitchMm: 0.01 };
  const result = await identifyByRuler(drawn(pin), marksOf(pin));
  expect(result.outcome).toBe('refused');
}, 60_000);

describe('two marks that give no scale', () => {
  const photo = drawn(m8);
  test.each<[string, Ruler]>([
    ['outside the photo', { from: [100, 100], to: [5000, 100], mm: 100 }],
    ['too close', { from: [100, 100], to: [115, 100], mm: 1 }],
    ['far too long', { from: [100, 100], to: [1100, 100], mm: 1e5 }],
    ['far too short', { from: [100, 100], to: [1100, 100], mm: 0.1 }],
    ['no length', { from: [100, 100], to: [1100, 100], mm: 0 }],
    ['not a number', { from: [Number.NaN, 100], to: [1100, 100], mm: 50 }],
  ])(
    '%s',
    async (_, ruler) => {
      const result = await identifyByRuler(photo, ruler);
      expect(result).toMatchObject({ outcome: 'refused', refusal: { reason: 'no-card' } });
      if (result.outcome === 'refused') expect(result.refusal.advice).toMatch(/[Mm]ark|distance/);
    },
    60_000,
  );

  test('a thread with too few pixels', async () => {
    const result = await identifyByRuler(photo, { from: [100, 100], to: [1100, 100], mm: 400 });
    expect(result).toMatchObject({ outcome: 'refused', refusal: { reason: 'too-coarse' } });
  }, 60_000);
});
