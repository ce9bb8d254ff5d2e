import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseReading } from '../../../src/journey/6-candidates/parse-reading';
import { askableKinds, seats } from '../../../src/journey/6-candidates/reading-choices';
import { resolutionMm } from '../../../src/journey/6-candidates/reading-errors';

const value = (text: string) => {
  const parsed = parseReading(text);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.advice}`);
  return parsed.value;
};

test('readings as benches write them', () => {
  expect(value('pitch-gauge=16tpi')).toMatchObject({ kind: 'pitch-gauge', pitchMm: 1.5875 });
  expect(value('pitch-gauge=1,5 mm')).toMatchObject({ pitchMm: 1.5 });
  expect(value('caliper-od=17.2mm')).toMatchObject({ kind: 'caliper-od', mm: 17.2 });
  expect(value('caliper-od=11/16in')).toMatchObject({ mm: 17.4625 });
  expect(value('caliper-id=1 3/8in')).toMatchObject({ kind: 'caliper-id', mm: 34.925 });
  expect(value('rule-od=27 mm')).toMatchObject({ kind: 'rule-od', mm: 27 });
  expect(value('tube-od=none')).toMatchObject({ kind: 'tube-od', mm: null });
  expect(value('tube-od=12mm')).toMatchObject({ mm: 12 });
  expect(value('taper=tapered')).toMatchObject({ taper: 'tapered' });
  expect(value('flank=55')).toMatchObject({ flankDeg: 55 });
  expect(value('turns-over=10 in 15.9mm')).toMatchObject({ turns: 10, overMm: 15.9 });
  expect(value('turns-over=8 / 1/2in')).toMatchObject({ turns: 8, overMm: 12.7 });
  expect(value('end-type=swivel-nut')).toMatchObject({ type: 'swivel-nut' });
  expect(value('crest-form=rounded')).toMatchObject({ crest: 'rounded' });
  expect(value('marking=left-hand')).toMatchObject({ mark: 'left-hand' });
  expect(value('flange-thickness=6.7mm')).toMatchObject({ mm: 6.7 });
  expect(value('hand=left')).toMatchObject({ hand: 'left' });
  expect(value('seat-gauge=37')).toMatchObject({ cone: 'cone-37' });
  expect(value('seat=cone-37 by-gauge')).toMatchObject({ kind: 'seat-gauge', cone: 'cone-37' });
  expect(value('seat=cone-37 by-eye')).toMatchObject({ kind: 'seat', seat: 'cone-37' });
  expect(value('cannot-tell=seat')).toMatchObject({ kind: 'cannot-tell', of: 'seat' });
  expect(value('cone-size=9.2-5.4 over 2.5mm')).toMatchObject({ wideMm: 9.2, overMm: 2.5 });
  expect(value('cone-size=1-5/16 to 3/4 over 1/4in')).toMatchObject({
    wideMm: expect.closeTo(33.3375, 6),
    narrowMm: expect.closeTo(19.05, 6),
    overMm: expect.closeTo(6.35, 6),
  });
  for (const seat of seats) expect(value(`seat=${seat}`)).toMatchObject({ seat });
  expect((value('caliper-od=0.677in') as { mm: number }).mm).toBeCloseTo(17.196, 3);
});

test('what cannot be meant is refused with advice', () => {
  for (const text of [
    'caliper-od=17',
    'caliper-od=',
    'caliper-od=0mm',
    'caliper-od=2000mm',
    'pitch-gauge=0tpi',
    'pitch-gauge=1.5',
    'seat=round',
    'taper=maybe',
    'flank=58',
    'cone-size=5-9 over 2mm',
    'cone-size=9 over 2mm',
    'turns-over=1 in 2mm',
    'cannot-tell=everything',
    'weight=3kg',
    'caliper-od',
    '',
  ]) {
    const parsed = parseReading(text);
    expect(parsed.ok, text).toBe(false);
    if (!parsed.ok) expect(parsed.advice).toMatch(/\w+ .+\.?$/);
  }
});

test('any text is read or refused, and what is read reads back the same', () => {
  const kind = fc.constantFrom(...askableKinds, 'cannot-tell', 'x');
  const loose = fc.oneof(
    fc.string(),
    fc.double({ min: -10, max: 400, noNaN: true }).map((n) => `${n.toFixed(3)}mm`),
    fc.tuple(fc.nat(3), fc.nat(70), fc.nat(70)).map(([a, b, c]) => `${a} ${b}/${c}in`),
  );
  fc.assert(
    fc.property(kind, loose, (k, text) => {
      const parsed = parseReading(`${k}=${text}`);
      if (!parsed.ok) return parsed.advice.length > 0;
      const again = parseReading(`${parsed.value.kind}=${parsed.value.text}`);
      expect(again).toEqual(parsed);
      return true;
    }),
    { seed: 4, numRuns: 2000 },
  );
});

test('how finely a length was read follows from how it is written', () => {
  expect(resolutionMm('17.2mm')).toBeCloseTo(0.1, 9);
  expect(resolutionMm('17.25 mm')).toBeCloseTo(0.01, 9);
  expect(resolutionMm('17mm')).toBe(1);
  expect(resolutionMm('0.677in')).toBeCloseTo(0.0254, 9);
  expect(resolutionMm('43/64in')).toBeCloseTo(25.4 / 64, 9);
  // Counters round to sixteenths (common practice): 1 3/8 is not read to an eighth.
  expect(resolutionMm('1 3/8in')).toBeCloseTo(25.4 / 16, 9);
});
