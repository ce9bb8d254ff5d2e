import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { typedLengthMm, typedReading } from '../../src/ui/identification/bench-input';

const mmOf = (typed: string, unit: 'mm' | 'in') => {
  const reading = typedReading('caliper-od', typed, unit);
  if (!reading.ok) return reading.reason;
  return 'mm' in reading.value ? reading.value.mm : null;
};

describe('what a bench types', () => {
  it('takes the chosen unit unless the value names one', () => {
    expect(mmOf('17.2', 'mm')).toBeCloseTo(17.2, 9);
    expect(mmOf('0.677', 'in')).toBeCloseTo(17.1958, 9);
    expect(mmOf('17,2 mm', 'in')).toBeCloseTo(17.2, 9);
    expect(mmOf('.677"', 'mm')).toBeCloseTo(17.1958, 9);
  });

  it('takes a fraction for inches whatever is chosen', () => {
    expect(mmOf('11/16', 'mm')).toBeCloseTo(17.4625, 9);
    expect(mmOf('1 5/16', 'in')).toBeCloseTo(33.3375, 9);
    expect(mmOf('1-5/16', 'mm')).toBeCloseTo(33.3375, 9);
  });

  it('reads every 1/64 in', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 300 }), (parts) => {
        expect(mmOf(`${parts}/64`, 'in')).toBeCloseTo((parts * 25.4) / 64, 6);
      }),
    );
  });

  it('keeps how finely a value was written', () => {
    const reading = typedReading('caliper-od', '17.20', 'mm');
    expect(reading.ok && reading.value.text).toBe('17.20mm');
  });

  it('reads pitches both ways', () => {
    const tpi = typedReading('pitch-gauge', '11 1/2', 'tpi');
    expect(tpi.ok && 'pitchMm' in tpi.value && tpi.value.pitchMm).toBeCloseTo(25.4 / 11.5, 9);
    const mm = typedReading('pitch-gauge', '1,5', 'mm');
    expect(mm.ok && 'pitchMm' in mm.value && mm.value.pitchMm).toBe(1.5);
  });

  it('refuses everything else without a guess', () => {
    for (const typed of ['', 'abc', '-3', '1/0', '17.2.1', '1e3', 'NaN', '0'])
      expect(typedReading('caliper-od', typed, 'mm').ok, typed).toBe(false);
    expect(typedLengthMm('twelve', 'mm')).toBeNull();
    fc.assert(
      fc.property(fc.string(), (typed) => {
        const mm = typedLengthMm(typed, 'in');
        expect(mm === null || (Number.isFinite(mm) && mm > 0)).toBe(true);
      }),
    );
  });
});
