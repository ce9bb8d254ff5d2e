import type { Thread } from './thread';

/** ISO metric threads. Combinations: ISO 261:1998 Table 2, 4 to 64 mm, all three choices (from
 *  memory; the coarse pitch stands first). Diameters by ISO 724, limits 6g and 6H by the formulas
 *  of ISO 965-1 clause 13 (unrounded: the standard's own tables round to preferred numbers). */
const source = 'ISO 261:1998 Table 2 (from memory); ISO 724 and ISO 965-1 formulas';

/** diameter: pitches; a diameter in `fineOnly` has no coarse pitch. */
const combinations: Record<string, readonly number[]> = {
  '4': [0.7, 0.5],
  '4.5': [0.75, 0.5],
  '5': [0.8, 0.5],
  '5.5': [0.5],
  '6': [1, 0.75],
  '7': [1, 0.75],
  '8': [1.25, 1, 0.75],
  '9': [1.25, 1, 0.75],
  '10': [1.5, 1.25, 1, 0.75],
  '11': [1.5, 1, 0.75],
  '12': [1.75, 1.5, 1.25, 1],
  '14': [2, 1.5, 1.25, 1],
  '15': [1.5, 1],
  '16': [2, 1.5, 1],
  '17': [1.5, 1],
  '18': [2.5, 2, 1.5, 1],
  '20': [2.5, 2, 1.5, 1],
  '22': [2.5, 2, 1.5, 1],
  '24': [3, 2, 1.5, 1],
  '25': [2, 1.5, 1],
  '26': [1.5],
  '27': [3, 2, 1.5, 1],
  '28': [2, 1.5, 1],
  '30': [3.5, 3, 2, 1.5, 1],
  '32': [2, 1.5],
  '33': [3.5, 3, 2, 1.5],
  '35': [1.5],
  '36': [4, 3, 2, 1.5],
  '38': [1.5],
  '39': [4, 3, 2, 1.5],
  '40': [3, 2, 1.5],
  '42': [4.5, 4, 3, 2, 1.5],
  '45': [4.5, 4, 3, 2, 1.5],
  '48': [5, 4, 3, 2, 1.5],
  '50': [3, 2, 1.5],
  '52': [5, 4, 3, 2, 1.5],
  '55': [4, 3, 2, 1.5],
  '56': [5.5, 4, 3, 2, 1.5],
  '58': [4, 3, 2, 1.5],
  '60': [5.5, 4, 3, 2, 1.5],
  '62': [4, 3, 2, 1.5],
  '64': [6, 4, 3, 2, 1.5],
};

const fineOnly = new Set([
  '5.5',
  '15',
  '17',
  '25',
  '26',
  '28',
  '32',
  '35',
  '38',
  '40',
  '50',
  '55',
  '58',
  '62',
]);

export const metricThreads: readonly Thread[] = Object.entries(combinations)
  .flatMap(([d, pitches]) =>
    pitches.map((p, i) => metric(Number(d), p, i === 0 && !fineOnly.has(d) ? 'coarse' : 'fine')),
  )
  .sort((a, b) => a.basicMajorMm - b.basicMajorMm || a.pitchMm - b.pitchMm);

function metric(d: number, p: number, series: 'coarse' | 'fine'): Thread {
  const height = (Math.sqrt(3) / 2) * p;
  const minor = d - 1.25 * height;
  const allowance = (15 + 11 * p) / 1000; // es of position g
  const majorTolerance = (180 * p ** (2 / 3) - 3.15 / Math.sqrt(p)) / 1000; // Td, grade 6
  const minorTolerance = (p < 1 ? 433 * p - 190 * p ** 1.22 : 230 * p ** 0.7) / 1000; // TD1, grade 6
  return {
    system: 'M',
    designation: `M${d}x${p}`,
    series,
    tpi: null,
    pitchMm: p,
    basicMajorMm: d,
    pitchDiameterMm: d - 0.75 * height,
    minorInternalMm: minor,
    flankAngleDeg: 60,
    taper: 0,
    taperPlanes: null,
    externalClass: '6g',
    internalClass: '6H',
    crests: { minMm: d - allowance - majorTolerance, maxMm: d - allowance },
    bore: { minMm: minor, maxMm: minor + minorTolerance },
    source,
    separable: true,
  };
}
