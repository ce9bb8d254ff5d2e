import { type Connection, connection } from './connection';
import { metricRing } from './o-rings';

/** 24° cone (included angle), light and heavy series: the cone opens inside the male end; the nut
 *  carries a cutting ring, a welding nipple or an O-ring cone. From memory of ISO 8434-1:2018
 *  Tables 3 and 4; 14S is from DIN 3861. The O-ring is that of the O-ring cone (ISO 8434-4). */
const source = 'ISO 8434-1:2018; O-ring: ISO 8434-4 (from memory)';

/** tube OD, thread, O-ring of the O-ring cone: inside diameter and section */
const light: readonly (readonly [number, string, number, number])[] = [
  [6, 'M12x1.5', 4, 1.5],
  [8, 'M14x1.5', 6, 1.5],
  [10, 'M16x1.5', 7.5, 1.5],
  [12, 'M18x1.5', 9, 1.5],
  [15, 'M22x1.5', 12, 2],
  [18, 'M26x1.5', 15, 2],
  [22, 'M30x2', 20, 2],
  [28, 'M36x2', 26, 2],
  [35, 'M45x2', 32, 2.5],
  [42, 'M52x2', 38, 2.5],
];

const heavy: readonly (readonly [number, string, number, number])[] = [
  [6, 'M14x1.5', 4, 1.5],
  [8, 'M16x1.5', 6, 1.5],
  [10, 'M18x1.5', 7.5, 1.5],
  [12, 'M20x1.5', 9, 1.5],
  [14, 'M22x1.5', 10, 2],
  [16, 'M24x1.5', 12, 2],
  [20, 'M30x2', 16.3, 2.4],
  [25, 'M36x2', 20.3, 2.4],
  [30, 'M42x2', 25.3, 2.4],
  [38, 'M52x2', 33.3, 2.4],
];

/** Very light series, mostly brass, cutting ring only; from memory of DIN 3861 (LL). */
const veryLight: readonly (readonly [number, string])[] = [
  [4, 'M8x1'],
  [6, 'M10x1'],
  [8, 'M12x1'],
];

const veryLightRows = veryLight.flatMap(([tube, thread]) =>
  (['male', 'female'] as const).map((end) =>
    connection({
      family: 'ISO 8434-1',
      tradeName: '24° cone, very light series',
      size: `${tube}LL`,
      end,
      endTypes: [end === 'male' ? 'fixed' : 'tube-nut'],
      tubeOdMm: tube,
      metricTubesMm: [tube],
      thread,
      seat: 'cone-24',
      seatHalfAngleDeg: 12,
      coneOutwards: end === 'female',
      sealing: 'metal-cone',
      source: 'DIN 3861:2002, LL (from memory)',
    }),
  ),
);

function rows(series: 'L' | 'S', sizes: typeof light): Connection[] {
  return sizes.flatMap(([tube, thread, inner, section]) => {
    const oRing = metricRing(inner, section, 90);
    const common = {
      family: 'ISO 8434-1',
      tradeName: `24° cone, ${series === 'L' ? 'light' : 'heavy'} series`,
      size: `${tube}${series}`,
      tubeOdMm: tube,
      metricTubesMm: [tube],
      thread,
      seat: 'cone-24',
      seatHalfAngleDeg: 12,
      source: series === 'S' && tube === 14 ? 'DIN 3861:2002 (from memory)' : source,
    } as const;
    return [
      connection({ ...common, end: 'male', endTypes: ['fixed'], sealing: 'metal-cone' }),
      connection({
        ...common,
        end: 'female',
        endTypes: ['tube-nut', 'swivel-nut'],
        coneOutwards: true,
        sealing: 'metal-cone',
        oRing,
      }),
    ];
  });
}

export const iso8434part1: readonly Connection[] = [
  ...rows('L', light),
  ...rows('S', heavy),
  ...veryLightRows,
];
