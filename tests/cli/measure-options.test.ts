import fc from 'fast-check';
import { expect, test } from 'vitest';
import { UsageError } from '../../src/cli/arguments';
import { measureOptions } from '../../src/cli/measure-options';

test('ruler and bars say what they were given', () => {
  expect(measureOptions({ ruler: '10,20.5,400,-3,50' }).ruler).toEqual({
    from: [10, 20.5],
    to: [400, -3],
    mm: 50,
  });
  expect(measureOptions({ bars: '149.6,99.8' }).bars).toEqual({
    horizontalMm: 149.6,
    verticalMm: 99.8,
    uMm: 0.3,
  });
  // Hundredths are a caliper's.
  expect(measureOptions({ bars: '149.62,99.81' }).bars?.uMm).toBe(0.05);
  expect(measureOptions({})).toMatchObject({ ruler: null, bars: null, readings: [] });
});

test('an axis shown by hand is two points apart, of a thread outside', () => {
  expect(measureOptions({ along: '10,20,300.5,40' }).corrections).toEqual({
    axis: [
      [10, 20],
      [300.5, 40],
    ],
    side: 'both',
  });
  expect(measureOptions({}).corrections).toBeNull();
  for (const along of ['10,20,30', '10,20,10,20', 'a,b,c,d'])
    expect(() => measureOptions({ along })).toThrow('--along takes');
  expect(() => measureOptions({ along: '1,2,30,40', gender: 'female' })).toThrow(UsageError);
});

test('a reference is looked for as told; a rule needs its two marks', () => {
  expect(measureOptions({}).reference).toEqual({ kind: 'auto', corners: null });
  for (const kind of ['auto', 'card', 'id1', 'a4', 'letter'] as const)
    expect(measureOptions({ reference: kind }).reference.kind).toBe(kind);
  expect(measureOptions({ reference: 'rule', ruler: '0,0,9,0,5' }).ruler?.mm).toBe(5);
  for (const wrong of [
    { reference: 'coin' },
    { reference: 'rule' },
    { reference: 'a4', ruler: '0,0,9,0,5' },
  ])
    expect(() => measureOptions(wrong)).toThrow(UsageError);
});

test('whatever is typed is understood or refused with a word on how to type it', () => {
  const typed = fc.oneof(
    fc.string(),
    fc
      .array(fc.oneof(fc.double().map(String), fc.string({ maxLength: 3 })))
      .map((a) => a.join(',')),
  );
  fc.assert(
    fc.property(typed, (text) => {
      for (const given of [{ ruler: text }, { bars: text }, { reading: [text] }]) {
        try {
          const { ruler, bars } = measureOptions(given);
          if (ruler) {
            expect([...ruler.from, ...ruler.to, ruler.mm].every(Number.isFinite)).toBe(true);
            expect(ruler.mm).toBeGreaterThan(0);
          }
          if (bars) expect(Math.abs(bars.horizontalMm / 150 - 1)).toBeLessThan(0.1);
        } catch (error) {
          expect(error).toBeInstanceOf(UsageError);
        }
      }
    }),
    { numRuns: 2000, seed: 11 },
  );
});

test('which end is shown is weighed unless told', () => {
  expect(measureOptions({}).gender).toBe('auto');
  expect(measureOptions({ gender: 'female' }).gender).toBe('female');
  expect(() => measureOptions({ gender: 'neither' })).toThrow(UsageError);
});
