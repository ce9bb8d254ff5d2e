import type { Thread } from '../thread';
import type { ClassLimits } from './thread-class';

const source = 'ISO 228-1:2000 Table 1 (from memory)';

/** Threads per inch: [tolerance on the major diameter, on the pitch diameter of class A], µm, to G2
 *  and above it. Class B has twice that on the pitch diameter, and the same on the major. */
const tolerances: Readonly<Record<number, readonly [number, number]>> = {
  28: [214, 107],
  19: [250, 125],
  14: [284, 142],
  11: [360, 180],
};
const aboveG2 = { fromMm: 60, row: [434, 217] } as const;

export function parallelPipeLimits(
  { designation, basicMajorMm, pitchDiameterMm, tpi }: Thread,
  name: 'A' | 'B',
): Pick<ClassLimits, 'major' | 'pitchDiameter' | 'source'> {
  const row = basicMajorMm > aboveG2.fromMm ? aboveG2.row : tolerances[tpi ?? 0];
  if (!row) throw new Error(`No ISO 228-1 tolerances for ${designation}`);
  const [majorUm, pitchUm] = row;
  return {
    major: { minMm: basicMajorMm - majorUm / 1000, maxMm: basicMajorMm },
    pitchDiameter: {
      minMm: pitchDiameterMm - ((name === 'A' ? 1 : 2) * pitchUm) / 1000,
      maxMm: pitchDiameterMm,
    },
    source,
  };
}
