import { metricThreads } from './metric-threads';
import type { Thread } from './thread';

/** Metric taper external threads, 1:16, as on short taper studs: basic diameters hold at the gauge
 *  plane, and the hole is parallel. Sizes from memory of DIN 158-1; gauge lengths from memory and
 *  good to a millimetre, which is 0.06 mm on diameter. */
const source = 'DIN 158-1 (from memory); diameters by ISO 724';

const parallel = [
  'M8x1',
  'M10x1',
  'M12x1.5',
  'M14x1.5',
  'M16x1.5',
  'M18x1.5',
  'M20x1.5',
  'M22x1.5',
];

/** Pitch: gauge length, ± of it, useful length, mm. */
const lengths: Readonly<Record<number, readonly [number, number, number]>> = {
  1: [2.5, 1, 5.5],
  1.5: [3.5, 1.2, 8.5],
};

/** What DIN 158 writes behind the designation (kegelig). */
const metricTaperSuffix = ' keg';

export const metricTaperThreads: readonly Thread[] = metricThreads
  .filter(({ designation }) => parallel.includes(designation))
  .map((thread) => {
    const { designation, pitchMm, basicMajorMm, pitchDiameterMm } = thread;
    const [gaugeLengthMm, gaugeToleranceMm, usefulLengthMm] = lengths[pitchMm]!;
    const half = gaugeToleranceMm / 16;
    return {
      ...thread,
      designation: `${designation}${metricTaperSuffix}`,
      series: 'taper',
      taper: 1 / 16,
      taperPlanes: {
        gaugeLengthMm,
        gaugeToleranceMm,
        usefulLengthMm,
        majorAtSmallEndMm: basicMajorMm - gaugeLengthMm / 16,
        pitchDiameterAtSmallEndMm: pitchDiameterMm - gaugeLengthMm / 16,
      },
      externalClass: 'DIN 158',
      internalClass: 'DIN 158',
      crests: { minMm: basicMajorMm - half, maxMm: basicMajorMm + half },
      source,
    };
  });
