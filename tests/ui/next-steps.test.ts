import { describe, expect, it } from 'vitest';
import type { RefusalReason } from '../../src/journey/identification';
import { en } from '../../src/ui/language/en';
import { nextSteps, type Shown } from '../../src/ui/measuring/next-steps';
import { refusalWords } from '../../src/ui/measuring/refusal-words';

const reasons = Object.keys(en.refused.reasons) as RefusalReason[];
const both = [false, true];
const allShown: Shown[] = both.flatMap((ruler) =>
  both.flatMap((axis) =>
    both.flatMap((corners) => both.map((female) => ({ ruler, axis, corners, female }))),
  ),
);
const nothing: Shown = { ruler: false, axis: false, corners: false, female: false };

describe('what to do about a refusal', () => {
  it.each(reasons)('%s: a first step, another besides, and readings without a photo', (reason) => {
    for (const shown of allShown) {
      const steps = nextSteps(reason, shown);
      expect(new Set(steps).size).toBe(steps.length);
      expect(steps.length).toBeGreaterThanOrEqual(3);
      expect(steps).toContain('readings');
    }
  });

  it.each(reasons)('%s: what was just shown by hand is not the first advice again', (reason) => {
    for (const shown of allShown) {
      const tried = Object.keys(shown).filter((key) => shown[key as keyof Shown]);
      const [first] = nextSteps(reason, shown);
      expect(tried).not.toContain(first);
      expect(first).not.toBe('readings');
    }
  });

  it('a thread that was not found may be on the other side of the wall', () => {
    expect(nextSteps('no-thread', nothing)).toContain('other-gender');
    expect(nextSteps('no-thread', { ...nothing, female: true })).toContain('other-gender');
  });

  it.each(reasons)('%s: a female end is not shown by an axis or beside a rule', (reason) => {
    const steps = nextSteps(reason, { ...nothing, female: true });
    expect(steps).not.toContain('axis');
    expect(steps).not.toContain('ruler');
  });

  it('a reason that only a newer worker knows has ways on too', () => {
    expect(nextSteps('stolen', nothing)).toEqual(['another', 'retake', 'readings']);
  });
});

describe('words of a refusal', () => {
  const words = (reason: RefusalReason, shown: Partial<Shown>, field: 'light' | 'dark' | null) =>
    refusalWords({ refusal: { reason, advice: '' }, field }, { ...nothing, ...shown });

  it('name the dark field only where the light one is used', () => {
    expect(words('no-thread', {}, 'light').todo).toMatch(/dark field/);
    expect(words('no-thread', {}, 'dark').todo).not.toMatch(/field/);
    expect(words('no-thread', {}, null).todo).not.toMatch(/field/);
  });

  it('say of a female end how its bore is shown', () => {
    expect(words('no-thread', { female: true }, 'light')).toEqual(en.end.refused['no-thread']);
    expect(words('no-card', { female: true }, null)).toEqual(en.refused.reasons['no-card']);
  });

  it('blame marks that were shown, not a card that nobody claimed to see', () => {
    expect(words('no-card', { ruler: true }, null)).toEqual(en.refused.ruleMarks);
    expect(words('no-card', { corners: true }, null)).toEqual(en.refused.cornerMarks);
    expect(words('no-thread', { axis: true }, 'light')).toEqual(en.refused.axisMarks);
    expect(words('no-card', {}, null)).toEqual(en.refused.reasons['no-card']);
  });
});
