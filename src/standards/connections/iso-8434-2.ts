import { unifiedThread } from '../threads';
import { type Connection, connection, dashMm } from './connection';

/** 37° flare: outward cone of 37° half angle on the male end, flared tube or swivel seat on the
 *  female. From memory of ISO 8434-2:2007 Table 1 and SAE J514 Table 1. */
const source = 'ISO 8434-2:2007 / SAE J514 (from memory)';

/** dash, metric tubes, thread */
const sizes: readonly (readonly [number, readonly number[], string])[] = [
  [2, [], '5/16-24'],
  [3, [], '3/8-24'],
  [4, [6], '7/16-20'],
  [5, [8], '1/2-20'],
  [6, [10], '9/16-18'],
  [8, [12], '3/4-16'],
  [10, [14, 15, 16], '7/8-14'],
  [12, [18, 20], '1 1/16-12'],
  [14, [], '1 3/16-12'],
  [16, [22, 25], '1 5/16-12'],
  [20, [28, 30, 32], '1 5/8-12'],
  [24, [35, 38], '1 7/8-12'],
  [32, [50], '2 1/2-12'],
];

export const iso8434part2: readonly Connection[] = sizes.flatMap(([dash, tubes, thread]) =>
  (['male', 'female'] as const).map((end) =>
    connection({
      family: 'ISO 8434-2',
      tradeName: '37° flare',
      size: `-${dash}`,
      end,
      endTypes: end === 'male' ? ['fixed'] : ['swivel-nut', 'tube-nut'],
      dash,
      tubeOdMm: dashMm(dash),
      metricTubesMm: [...tubes],
      thread: unifiedThread(thread).designation,
      seat: 'cone-37',
      seatHalfAngleDeg: 37,
      coneOutwards: end === 'male',
      sealing: 'metal-cone',
      source,
    }),
  ),
);
