import { mmPerInch } from '../../quantity/length';
import type { Thread } from '../thread';
import type { ClassLimits } from './thread-class';

const source = 'ASME B1.1-2003, 5.8.1 (from memory)';

/** Classes 2A and 3A, inches: Td2(2A) = 0.0015 ∛D + 0.0015 √Le + 0.015 ∛p², Td2(3A) = 0.75 Td2(2A),
 *  Td = 0.060 ∛p², es(2A) = 0.300 Td2(2A), es(3A) = 0. Le is D for UNC and UNF, 9 p for the others. */
export function unifiedLimits(
  { basicMajorMm, pitchMm, pitchDiameterMm, series }: Thread,
  name: '2A' | '3A',
): Pick<ClassLimits, 'major' | 'pitchDiameter' | 'source'> {
  const d = basicMajorMm / mmPerInch;
  const p = pitchMm / mmPerInch;
  const engagement = series === 'UNC' || series === 'UNF' ? d : 9 * p;
  const loose = 0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(engagement) + 0.015 * Math.cbrt(p * p);
  const allowanceMm = name === '2A' ? 0.3 * loose * mmPerInch : 0;
  const pitchToleranceMm = (name === '2A' ? 1 : 0.75) * loose * mmPerInch;
  const majorToleranceMm = 0.06 * Math.cbrt(p * p) * mmPerInch;
  return {
    major: {
      minMm: basicMajorMm - allowanceMm - majorToleranceMm,
      maxMm: basicMajorMm - allowanceMm,
    },
    pitchDiameter: {
      minMm: pitchDiameterMm - allowanceMm - pitchToleranceMm,
      maxMm: pitchDiameterMm - allowanceMm,
    },
    source,
  };
}
