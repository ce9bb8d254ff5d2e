import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches } from '../../src/quantity/length';
import { parseLength, parsePitch } from '../../src/quantity/units';

const numberOf = (parsed: ReturnType<typeof parseLength> | ReturnType<typeof parsePitch>) =>
  parsed.ok ? parsed.value : Number.NaN;

describe('lengths as a bench writes them', () => {
  it.each([
    ['17.2mm', 17.2],
    ['17,2 mm', 17.2],
    ['0.677in', 17.1958],
    ['.677"', 17.1958],
    ['11/16in', 17.4625],
    ['1 5/16"', 33.3375],
    ['1-5/16 in', 33.3375],
    ['3/4 inch', 19.05],
    ['2″', 50.8],
  ])('%s', (text, expected) => {
    expect(numberOf(parseLength(text))).toBeCloseTo(expected, 9);
  });

  it.each(['', '17.2', 'mm', '1/0in', '-3mm', '0mm', '1 2 3mm', '1.2.3mm', '16tpi', '5cm'])(
    'refuses %j',
    (text) => {
      expect(parseLength(text).ok).toBe(false);
    },
  );

  it('reads every sixty-fourth', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5 }),
        fc.integer({ min: 1, max: 63 }),
        (whole, over) => {
          const text = `${whole > 0 ? `${whole} ` : ''}${over}/64 in`;
          expect(numberOf(parseLength(text))).toBeCloseTo(inches(whole + over / 64), 10);
        },
      ),
    );
  });

  it('reads decimals with either mark', () => {
    const decimals = fc.double({ min: 0.01, max: 500, noNaN: true });
    fc.assert(
      fc.property(decimals, fc.constantFrom('.', ','), (value, mark) => {
        const written = (digits: number) => value.toFixed(digits).replace('.', mark);
        expect(numberOf(parseLength(`${written(3)} mm`))).toBeCloseTo(value, 2);
        const inch = numberOf(parseLength(`${written(5)} in`));
        expect(Math.abs(inch - 25.4 * value)).toBeLessThan(0.00001 * 25.4);
      }),
    );
  });
});

describe('pitch', () => {
  it.each([
    ['16tpi', 1.5875],
    ['11 1/2 tpi', 25.4 / 11.5],
    ['11.5 TPI', 25.4 / 11.5],
    ['1.5mm', 1.5],
    ['1,5 mm', 1.5],
  ])('%s', (text, expected) => {
    expect(numberOf(parsePitch(text))).toBeCloseTo(expected, 12);
  });
  it('refuses inches: a leaf says threads', () => {
    expect(parsePitch('16in').ok).toBe(false);
  });
});
