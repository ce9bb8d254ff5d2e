import { mmPerInch } from '../quantity/length';
import { inchesOf, inchFraction } from './inch-fraction';
import type { Thread } from './thread';

/** Unified inch threads. Which sizes exist in which series: ASME B1.1-2003, Table 1 (standard
 *  series combinations), from memory; every dimension is computed by the standard's formulas. */
const source = 'ASME B1.1-2003: series from Table 1 (from memory); limits by its formulas (5.8)';
const specialSource =
  'ASME B1.1-2003 formulas; UNS combination used by SAE J512, SAE J514 or SAE J1453 (from memory)';

type Series = 'UNC' | 'UNF' | 'UNEF' | 'UN' | 'UNS';

/** size: [UNC, UNF, UNEF] in threads per inch, 0 where the series has no such size. */
const graded: Record<string, readonly [number, number, number]> = {
  '.0600': [0, 80, 0],
  '.0730': [64, 72, 0],
  '.0860': [56, 64, 0],
  '.0990': [48, 56, 0],
  '.1120': [40, 48, 0],
  '.1250': [40, 44, 0],
  '.1380': [32, 40, 0],
  '.1640': [32, 36, 0],
  '.1900': [24, 32, 0],
  '.2160': [24, 28, 32],
  '1/4': [20, 28, 32],
  '5/16': [18, 24, 32],
  '3/8': [16, 24, 32],
  '7/16': [14, 20, 28],
  '1/2': [13, 20, 28],
  '9/16': [12, 18, 24],
  '5/8': [11, 18, 24],
  '11/16': [0, 0, 24],
  '3/4': [10, 16, 20],
  '13/16': [0, 0, 20],
  '7/8': [9, 14, 20],
  '15/16': [0, 0, 20],
  '1': [8, 12, 20],
  '1 1/16': [0, 0, 18],
  '1 1/8': [7, 12, 18],
  '1 3/16': [0, 0, 18],
  '1 1/4': [7, 12, 18],
  '1 5/16': [0, 0, 18],
  '1 3/8': [6, 12, 18],
  '1 7/16': [0, 0, 18],
  '1 1/2': [6, 12, 18],
  '1 9/16': [0, 0, 18],
  '1 5/8': [0, 0, 18],
  '1 11/16': [0, 0, 18],
  '1 3/4': [5, 0, 0],
  '2': [4.5, 0, 0],
  '2 1/4': [4.5, 0, 0],
  '2 1/2': [4, 0, 0],
  '2 3/4': [4, 0, 0],
  '3': [4, 0, 0],
  '3 1/4': [4, 0, 0],
  '3 1/2': [4, 0, 0],
  '3 3/4': [4, 0, 0],
  '4': [4, 0, 0],
};

/** Constant-pitch series: [tpi, first size, last size, step], inches. A combination that a graded
 *  series already has goes under that name. 32-UN is left out: no fitting uses it. */
const constantPitch: readonly (readonly [number, number, number, number])[] = [
  [28, 5 / 16, 1 + 1 / 2, 1 / 16],
  [20, 5 / 16, 3, 1 / 16],
  [16, 7 / 16, 4, 1 / 16],
  [12, 5 / 8, 4, 1 / 16],
  [8, 1 + 1 / 16, 4, 1 / 16],
  [6, 1 + 7 / 16, 4, 1 / 16],
  [4, 2 + 5 / 8, 4, 1 / 8],
];

/** Special combinations that fittings use. */
const special: readonly (readonly [string, number])[] = [
  ['7/16', 24],
  ['1/2', 24],
  ['11/16', 18],
  ['3/4', 14],
  ['3/4', 18],
  ['13/16', 18],
  ['7/8', 18],
  ['1', 14],
  ['1', 18],
  ['1 1/16', 14],
];

/** Above 2 in the constant-pitch series step by 1/8. */
function isTabulatedSize(inches: number): boolean {
  return inches <= 2 || Number.isInteger(inches * 8);
}

export const unifiedThreads: readonly Thread[] = build();

function build(): Thread[] {
  const rows = new Map<string, Thread>();
  const add = (size: string, tpi: number, series: Series) => {
    const key = `${size}-${tpi}`;
    if (!rows.has(key)) rows.set(key, unified(size, tpi, series));
  };
  for (const [size, [unc, unf, unef]] of Object.entries(graded)) {
    if (unc) add(size, unc, 'UNC');
    if (unf) add(size, unf, 'UNF');
    if (unef) add(size, unef, 'UNEF');
  }
  for (const [tpi, first, last, step] of constantPitch) {
    for (let inches = first; inches <= last + 1e-9; inches += step) {
      if (isTabulatedSize(inches)) add(inchFraction(inches), tpi, 'UN');
    }
  }
  for (const [size, tpi] of special) add(size, tpi, 'UNS');
  return [...rows.values()].sort(
    (a, b) => a.basicMajorMm - b.basicMajorMm || a.pitchMm - b.pitchMm,
  );
}

/** Number sizes 0 to 12 are 0.060 + 0.013 n inch (ASME B1.1). */
function sizeName(size: string): string {
  return size.startsWith('.') ? `#${Math.round((Number(size) - 0.06) / 0.013)}` : size;
}

function unified(size: string, tpi: number, series: Series): Thread {
  const d = inchesOf(size);
  const p = 1 / tpi;
  // Length of engagement the formulas are tabulated for: D for UNC and UNF, 9p for the others.
  const engagement = series === 'UNC' || series === 'UNF' ? d : 9 * p;
  const pitchTolerance2A =
    0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(engagement) + 0.015 * p ** (2 / 3);
  const allowance = 0.3 * pitchTolerance2A;
  const majorTolerance2A = 0.06 * p ** (2 / 3);
  const minor = d - 1.25 * (Math.sqrt(3) / 2) * p;
  const largest = d - allowance;
  return {
    system: 'UN',
    designation: `${sizeName(size)}-${tpi} ${series}`,
    series: series === 'UN' ? `${tpi}-UN` : series,
    tpi,
    pitchMm: p * mmPerInch,
    basicMajorMm: d * mmPerInch,
    pitchDiameterMm: (d - 0.75 * (Math.sqrt(3) / 2) * p) * mmPerInch,
    minorInternalMm: minor * mmPerInch,
    flankAngleDeg: 60,
    taper: 0,
    taperPlanes: null,
    externalClass: '2A',
    internalClass: '2B',
    crests: { minMm: (largest - majorTolerance2A) * mmPerInch, maxMm: largest * mmPerInch },
    bore: { minMm: minor * mmPerInch, maxMm: (minor + minorTolerance2B(d, p)) * mmPerInch },
    source: series === 'UNS' ? specialSource : source,
    separable: true,
  };
}

/** ASME B1.1 5.8.2, internal minor diameter, classes 1B and 2B, inches (from memory). */
function minorTolerance2B(d: number, p: number): number {
  if (d < 0.25) {
    const t = 0.05 * p ** (2 / 3) + (0.03 * p) / d - 0.002;
    return Math.min(Math.max(t, 0.25 * p - 0.4 * p * p), 0.394 * p);
  }
  return p >= 0.25 - 1e-9 ? 0.15 * p : 0.25 * p - 0.4 * p * p;
}
