import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deg, rad, toDeg, toRad, wrapped } from '../../src/quantity/angle';
import { inches, mm, pitchOfTpi, tpiOfPitch } from '../../src/quantity/length';
import {
  formatInches,
  formatMm,
  nearestFraction,
  parseLength,
  parsePitch,
} from '../../src/quantity/units';

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

  it('reads every sixty-fourth it writes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6 * 64 }), (parts) => {
        const length = inches(parts / 64);
        const { text, offMm } = nearestFraction(length);
        expect(Math.abs(offMm)).toBeLessThan(1e-12);
        expect(numberOf(parseLength(text))).toBeCloseTo(length, 10);
      }),
    );
  });

  it('is never more than half a sixty-fourth off', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 200, noNaN: true }), (value) => {
        const { text, offMm } = nearestFraction(mm(value));
        expect(Math.abs(offMm)).toBeLessThanOrEqual(25.4 / 128 + 1e-9);
        const read = parseLength(text);
        if (read.ok) expect(read.value + offMm).toBeCloseTo(value, 9);
      }),
    );
  });

  it('reads decimals back with either mark', () => {
    const decimals = fc.double({ min: 0.01, max: 500, noNaN: true });
    fc.assert(
      fc.property(decimals, fc.constantFrom('.' as const, ',' as const), (value, mark) => {
        expect(numberOf(parseLength(formatMm(mm(value), 3, mark)))).toBeCloseTo(value, 2);
        const inch = numberOf(parseLength(formatInches(mm(value + 1), 5, mark)));
        expect(Math.abs(inch - value - 1)).toBeLessThan(0.00001 * 25.4);
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
  it('goes to threads per inch and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 4, max: 80, noNaN: true }), (tpi) => {
        expect(tpiOfPitch(pitchOfTpi(tpi))).toBeCloseTo(tpi, 10);
      }),
    );
  });
});

describe('angles', () => {
  it('wrap to one turn and convert both ways', () => {
    fc.assert(
      fc.property(fc.double({ min: -1000, max: 1000, noNaN: true }), (value) => {
        const w = wrapped(rad(value));
        expect(w).toBeGreaterThan(-Math.PI - 1e-9);
        expect(w).toBeLessThanOrEqual(Math.PI + 1e-9);
        expect(Math.cos(w)).toBeCloseTo(Math.cos(value), 9);
        expect(toDeg(toRad(deg(value)))).toBeCloseTo(value, 9);
      }),
    );
  });
});
