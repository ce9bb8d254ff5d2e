import type { Thread } from '../thread';
import type { ClassLimits } from './thread-class';

/** ISO 965-1:1998 prints its tolerances rounded to the R40 series of preferred numbers, here and there
 *  off its own formulas: what it prints holds. Checked against the public table 'threadlib'
 *  (design/metric_thread.csv). */
const source = 'ISO 965-1:1998 Tables 1, 3 and 5 (from memory), within the rounding of clause 13';

/** Pitch: [es of position g, Td of grade 6], µm. */
const byPitch: Readonly<Record<number, readonly [number, number]>> = {
  0.5: [20, 106],
  0.7: [22, 140],
  0.75: [22, 140],
  0.8: [24, 150],
  1: [26, 180],
  1.25: [28, 212],
  1.5: [32, 236],
  1.75: [34, 265],
  2: [38, 280],
  2.5: [42, 335],
  3: [48, 375],
  3.5: [53, 425],
  4: [60, 475],
  4.5: [63, 500],
  5: [71, 530],
  5.5: [75, 560],
  6: [80, 600],
};

/** Td2 of grade 6, µm, by pitch, for diameters over the first number of a row up to that of the next. */
const pitchTolerances: readonly (readonly [number, Readonly<Record<number, number>>])[] = [
  [2.8, { 0.5: 75, 0.7: 90, 0.75: 90, 0.8: 95 }],
  [5.6, { 0.5: 85, 0.75: 100, 1: 112, 1.25: 118, 1.5: 132 }],
  [11.2, { 0.5: 90, 0.75: 106, 1: 118, 1.25: 132, 1.5: 140, 1.75: 150, 2: 160, 2.5: 170 }],
  [22.4, { 0.75: 112, 1: 125, 1.5: 150, 2: 170, 3: 200, 3.5: 212, 4: 224, 4.5: 236 }],
  [45, { 1: 140, 1.5: 160, 2: 180, 3: 212, 4: 236, 5: 250, 5.5: 265, 6: 280 }],
];

export function metricLimits(
  { designation, basicMajorMm, pitchMm, pitchDiameterMm }: Thread,
  name: '6g' | '6h',
): Pick<ClassLimits, 'major' | 'pitchDiameter' | 'source'> {
  const row = byPitch[pitchMm];
  const pitchToleranceUm = pitchTolerances.findLast(([over]) => basicMajorMm > over)?.[1][pitchMm];
  if (!row || !pitchToleranceUm) throw new Error(`No ISO 965-1 tolerances for ${designation}`);
  const [positionUm, majorToleranceUm] = row;
  const allowanceMm = name === '6g' ? positionUm / 1000 : 0;
  return {
    major: {
      minMm: basicMajorMm - allowanceMm - majorToleranceUm / 1000,
      maxMm: basicMajorMm - allowanceMm,
    },
    pitchDiameter: {
      minMm: pitchDiameterMm - allowanceMm - pitchToleranceUm / 1000,
      maxMm: pitchDiameterMm - allowanceMm,
    },
    source,
  };
}
