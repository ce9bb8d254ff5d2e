import { describe, expect, it } from 'vitest';
import type { Conclusion } from '../../../src/journey/7-next-reading/decision';
import { measuredAgain } from '../../../src/journey/8-sheet/measured-again';
import type { Sheet } from '../../../src/journey/8-sheet/sheet-schema';
import { stampOf, whatHolds } from '../../../src/journey/8-sheet/what-holds';
import { exampleSheet } from './example';

const judged = (sheet: Sheet, counter: Partial<NonNullable<Sheet['counter']>>): Sheet => ({
  ...sheet,
  counter: {
    verdict: 'confirmed',
    identified: null,
    by: '',
    remarks: '',
    parts: [],
    at: sheet.createdAt,
    ...counter,
  },
});
const other = { thread: 'M22x1.5', connection: null };

describe('what holds', async () => {
  const { sheet } = await exampleSheet();
  const { thread } = sheet.conclusion.decision;

  it('is the evidence, until the counter says otherwise', () => {
    expect(whatHolds({ ...sheet, counter: null })).toMatchObject({ thread, by: 'evidence' });
    expect(whatHolds(judged(sheet, {}))).toMatchObject({ thread, by: 'evidence' });
    expect(whatHolds(judged(sheet, { identified: other }))).toMatchObject({
      thread: 'M22x1.5',
      by: 'counter',
    });
  });

  it('a rejection identifies nothing', () => {
    const rejected = judged(sheet, { verdict: 'rejected', identified: other });
    expect(whatHolds(rejected).by).toBe('evidence');
    expect(stampOf(rejected)).toBe('rejected');
  });

  it('contradicted evidence is open, whatever it decides', () => {
    const settled = (contradictions: Conclusion['contradictions']) => {
      const decision = { ...sheet.conclusion.decision, state: 'settled' as const };
      return { counter: null, conclusion: { ...sheet.conclusion, decision, contradictions } };
    };
    expect(stampOf(settled([]))).toBe('settled');
    expect(stampOf(settled([{ source: 'photo' }]))).toBe('open');
  });
});

describe('measured again', async () => {
  const { sheet } = await exampleSheet();
  const now = new Date('2030-01-02T03:04:05.000Z');
  const better = { ...sheet.measurement!, majorDiameterMm: { value: 17.1, u: 0.01 } };

  it('by the counter: the sender’s stays, dated', () => {
    const next = measuredAgain({ ...sheet, received: true, earlier: [] }, better, now);
    expect(next).toMatchObject({ measuredBy: 'counter', measuredAt: now.toISOString() });
    expect(next.earlier).toEqual([
      {
        at: sheet.measuredAt ?? sheet.createdAt,
        by: 'sender',
        pitchMm: sheet.measurement!.pitchMm,
        majorDiameterMm: sheet.measurement!.majorDiameterMm,
      },
    ]);
  });

  it('by the sender before anyone saw it: only the new one; after sending: both', () => {
    const own = { ...sheet, received: false, earlier: [], handedOver: false };
    expect(measuredAgain(own, better, now).earlier).toEqual([]);
    expect(measuredAgain({ ...own, handedOver: true }, better, now).earlier).toHaveLength(1);
  });
});
