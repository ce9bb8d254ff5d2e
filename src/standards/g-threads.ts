import { mmPerInch } from '../quantity/length';
import type { Thread } from './thread';

/** Parallel pipe threads, Whitworth form. Major diameters and tolerances: ISO 228-1:2000 Table 1
 *  (from memory); pitch and minor diameters by its formulas (h = 0.640327 p). The tolerance on the
 *  major diameter is the same for classes A and B. */
const source = 'ISO 228-1:2000 Table 1 (from memory); diameters by its formulas';

/** size, threads per inch, basic major mm */
const sizes: readonly (readonly [string, number, number])[] = [
  ['1/16', 28, 7.723],
  ['1/8', 28, 9.728],
  ['1/4', 19, 13.157],
  ['3/8', 19, 16.662],
  ['1/2', 14, 20.955],
  ['5/8', 14, 22.911],
  ['3/4', 14, 26.441],
  ['7/8', 14, 30.201],
  ['1', 11, 33.249],
  ['1 1/8', 11, 37.897],
  ['1 1/4', 11, 41.91],
  ['1 1/2', 11, 47.803],
  ['1 3/4', 11, 53.746],
  ['2', 11, 59.614],
  ['2 1/4', 11, 65.71],
  ['2 1/2', 11, 75.184],
  ['2 3/4', 11, 81.534],
  ['3', 11, 87.884],
  ['3 1/2', 11, 100.33],
  ['4', 11, 113.03],
  ['4 1/2', 11, 125.73],
  ['5', 11, 138.43],
  ['5 1/2', 11, 151.13],
  ['6', 11, 163.83],
];

/** Threads per inch: tolerance of the external major (minus) and internal minor (plus), mm.
 *  The larger value holds above G2. */
const tolerances: Record<number, { major: number; minor: number }> = {
  28: { major: 0.214, minor: 0.282 },
  19: { major: 0.25, minor: 0.445 },
  14: { major: 0.284, minor: 0.541 },
  11: { major: 0.36, minor: 0.64 },
};
const largeMajorToleranceUm = 434;

/** Thread height over pitch of the rounded 55° form: two thirds of the sharp triangle. */
export const whitworthHeight = (2 / 3) * (0.5 / Math.tan((27.5 * Math.PI) / 180));

export const gThreads: readonly Thread[] = sizes.map(([size, tpi, major]) => {
  const p = mmPerInch / tpi;
  const height = whitworthHeight * p;
  const minor = major - 2 * height;
  const tolerance = tolerances[tpi]!;
  const majorTolerance = major > 60 ? largeMajorToleranceUm / 1000 : tolerance.major;
  return {
    system: 'G',
    designation: `G${size}`,
    series: 'G',
    tpi,
    pitchMm: p,
    basicMajorMm: major,
    pitchDiameterMm: major - height,
    minorInternalMm: minor,
    flankAngleDeg: 55,
    taper: 0,
    taperPlanes: null,
    externalClass: 'A or B',
    internalClass: 'ISO 228-1',
    crests: { minMm: major - majorTolerance, maxMm: major },
    bore: { minMm: minor, maxMm: minor + tolerance.minor },
    source,
    separable: true,
  };
});
