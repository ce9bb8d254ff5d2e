import { mmPerInch } from '../quantity/length';
import { whitworthHeight } from './g-threads';
import type { Thread } from './thread';

/** Taper pipe threads, Whitworth form, 1:16. Major diameter at the gauge plane, gauge length with
 *  its tolerance, and useful length for the basic gauge length: ISO 7-1:1994 Table 1 (from
 *  memory); pitch and minor diameters by its formulas. Internal threads, Rc and Rp alike: 1 1/4
 *  turns either way (1 1/2 from 2 1/2 up), a sixteenth of it on diameter; from memory. */
const source = 'ISO 7-1:1994 Table 1 (from memory); diameters by its formulas';

/** size, threads per inch, major at gauge plane, gauge length, ± tolerance of it, useful length */
const sizes: readonly (readonly [string, number, number, number, number, number])[] = [
  ['1/16', 28, 7.723, 4, 0.9, 6.5],
  ['1/8', 28, 9.728, 4, 0.9, 6.5],
  ['1/4', 19, 13.157, 6, 1.3, 9.7],
  ['3/8', 19, 16.662, 6.4, 1.3, 10.1],
  ['1/2', 14, 20.955, 8.2, 1.8, 13.2],
  ['3/4', 14, 26.441, 9.5, 1.8, 14.5],
  ['1', 11, 33.249, 10.4, 2.3, 16.8],
  ['1 1/4', 11, 41.91, 12.7, 2.3, 19.1],
  ['1 1/2', 11, 47.803, 12.7, 2.3, 19.1],
  ['2', 11, 59.614, 15.9, 2.3, 23.4],
  ['2 1/2', 11, 75.184, 17.5, 3.5, 26.7],
  ['3', 11, 87.884, 20.6, 3.5, 29.8],
  ['4', 11, 113.03, 25.4, 3.5, 35.8],
  ['5', 11, 138.43, 28.6, 3.5, 40.1],
  ['6', 11, 163.83, 28.6, 3.5, 40.1],
];

export const rThreads: readonly Thread[] = sizes.map(
  ([size, tpi, major, gaugeLength, gaugeTolerance, usefulLength]) => {
    const p = mmPerInch / tpi;
    const height = whitworthHeight * p;
    const minor = major - 2 * height;
    const half = gaugeTolerance / 16;
    const halfInside = ((major > 70 ? 1.5 : 1.25) * p) / 16;
    return {
      system: 'R',
      designation: `R${size}`,
      series: 'R',
      tpi,
      pitchMm: p,
      basicMajorMm: major,
      pitchDiameterMm: major - height,
      minorInternalMm: minor,
      flankAngleDeg: 55,
      taper: 1 / 16,
      taperPlanes: {
        gaugeLengthMm: gaugeLength,
        gaugeToleranceMm: gaugeTolerance,
        usefulLengthMm: usefulLength,
        majorAtSmallEndMm: major - gaugeLength / 16,
        pitchDiameterAtSmallEndMm: major - height - gaugeLength / 16,
      },
      externalClass: 'ISO 7-1',
      internalClass: 'ISO 7-1',
      crests: { minMm: major - half, maxMm: major + half },
      bore: { minMm: minor - halfInside, maxMm: minor + halfInside },
      source,
      separable: true,
    };
  },
);
