import { mmPerInch } from '../quantity/length';
import type { Thread } from './thread';

/** American pipe threads. Pipe outside diameter, threads per inch and L1: ASME B1.20.1-2013
 *  Table 2 (from memory); everything else by its formulas, inches:
 *  E0 = D − (0.05 D + 1.1) p, E1 = E0 + L1/16, L2 = (0.8 D + 6.8) p, height 0.8 p. */
const source = 'ASME B1.20.1-2013 Table 2 (from memory); diameters by its formulas';

/** size, pipe OD, threads per inch, L1 */
const sizes: readonly (readonly [string, number, number, number])[] = [
  ['1/16', 0.3125, 27, 0.16],
  ['1/8', 0.405, 27, 0.1615],
  ['1/4', 0.54, 18, 0.2278],
  ['3/8', 0.675, 18, 0.24],
  ['1/2', 0.84, 14, 0.32],
  ['3/4', 1.05, 14, 0.339],
  ['1', 1.315, 11.5, 0.4],
  ['1 1/4', 1.66, 11.5, 0.42],
  ['1 1/2', 1.9, 11.5, 0.42],
  ['2', 2.375, 11.5, 0.436],
  ['2 1/2', 2.875, 8, 0.682],
  ['3', 3.5, 8, 0.766],
  ['3 1/2', 4, 8, 0.821],
  ['4', 4.5, 8, 0.844],
  ['5', 5.563, 8, 0.937],
  ['6', 6.625, 8, 0.958],
];

type Row = (typeof sizes)[number];

/** NPTF (ASME B1.20.3) differs from NPT only in how far crests and roots are cut, by less than a
 *  photo or a caliper shows: its rows are listed, and NPT stands for both in the matching. */
export const nptThreads: readonly Thread[] = [
  ...sizes.map((row) => taper(row, 'NPT')),
  ...sizes.filter(([size]) => nptfSizes(size)).map((row) => taper(row, 'NPTF')),
  ...sizes.filter(([size]) => npsmSizes(size)).map(npsm),
];

/** ASME B1.20.3 Table 1 lists 1/16 to 3 in. */
function nptfSizes(size: string): boolean {
  return !['3 1/2', '4', '5', '6'].includes(size);
}

/** ASME B1.20.1 Table for NPSM lists 1/8 to 6 in; fittings stop at 2 in. */
function npsmSizes(size: string): boolean {
  return !['1/16', '2 1/2', '3', '3 1/2', '4', '5', '6'].includes(size);
}

function taper([size, od, tpi, l1]: Row, series: 'NPT' | 'NPTF'): Thread {
  const p = 1 / tpi;
  const e0 = od - (0.05 * od + 1.1) * p;
  const e1 = e0 + l1 / 16;
  const height = 0.8 * p;
  const mm = (inches: number) => inches * mmPerInch;
  // One turn either way at the gauge (B1.20.1, 8.1) is p/16 on diameter.
  const half = p / 16;
  return {
    system: 'NPT',
    designation: `${size} ${series}`,
    series,
    tpi,
    pitchMm: mm(p),
    basicMajorMm: mm(od),
    pitchDiameterMm: mm(e1),
    minorInternalMm: mm(e1 - height),
    flankAngleDeg: 60,
    taper: 1 / 16,
    taperPlanes: {
      gaugeLengthMm: mm(l1),
      gaugeToleranceMm: mm(p),
      usefulLengthMm: mm((0.8 * od + 6.8) * p),
      majorAtSmallEndMm: mm(e0 + height),
      pitchDiameterAtSmallEndMm: mm(e0),
    },
    externalClass: series,
    internalClass: series,
    crests: { minMm: mm(e1 + height - half), maxMm: mm(e1 + height + half) },
    bore: { minMm: mm(e1 - height - half), maxMm: mm(e1 - height + half) },
    source: series === 'NPT' ? source : `${source}; ASME B1.20.3-1976 (NPTF, SAE J476)`,
    separable: series === 'NPT',
  };
}

/** Straight mechanical thread of swivel nuts: pitch diameter E1 of NPT, 60° form with the unified
 *  basic height, class 2A allowance by the unified formula (B1.20.1, 11; from memory, checked in
 *  tests against the tabulated 1/4 and 1/2 majors within 0.1 mm). */
function npsm([size, od, tpi, l1]: Row): Thread {
  const p = 1 / tpi;
  const e1 = od - (0.05 * od + 1.1) * p + l1 / 16;
  const h = Math.sqrt(3) / 2;
  const major = e1 + 0.75 * h * p;
  const minor = major - 1.25 * h * p;
  const pitchTolerance = 0.0015 * Math.cbrt(od) + 0.0015 * Math.sqrt(9 * p) + 0.015 * p ** (2 / 3);
  const mm = (inches: number) => inches * mmPerInch;
  const largest = major - 0.3 * pitchTolerance;
  return {
    system: 'NPT',
    designation: `${size} NPSM`,
    series: 'NPSM',
    tpi,
    pitchMm: mm(p),
    basicMajorMm: mm(major),
    pitchDiameterMm: mm(e1),
    minorInternalMm: mm(minor),
    flankAngleDeg: 60,
    taper: 0,
    taperPlanes: null,
    externalClass: '2A',
    internalClass: '2B',
    crests: { minMm: mm(largest - 0.06 * p ** (2 / 3)), maxMm: mm(largest) },
    bore: { minMm: mm(minor), maxMm: mm(minor + 0.25 * p - 0.4 * p * p) },
    source: `${source}; NPSM major by the unified form`,
    separable: true,
  };
}
