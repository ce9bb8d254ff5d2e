import { unifiedThread } from '../threads';
import { type Connection, connection, dashMm } from './connection';
import { as568Ring } from './o-rings';

/** O-ring face seal: flat face with the O-ring groove on the male end, flat sleeve under the nut
 *  on the female. Threads, tubes and rings from memory of ISO 8434-3:2005 Tables 1 to 3 and SAE
 *  J1453-1. Pressure ratings: see the maker's data. */
const source = 'ISO 8434-3:2005 / SAE J1453-1 (from memory); 90 durometer ring: common practice';

/** dash, metric tubes, thread, AS568 ring. Grooves come plain and captive, with one ring. */
const sizes: readonly (readonly [number, readonly number[], string, string])[] = [
  [4, [6], '9/16-18', '011'],
  [6, [8, 10], '11/16-16', '012'],
  [8, [12], '13/16-16', '014'],
  [10, [14, 15, 16], '1-14', '016'],
  [12, [18, 20], '1 3/16-12', '018'],
  [16, [22, 25], '1 7/16-12', '021'],
  [20, [28, 30, 32], '1 11/16-12', '025'],
  [24, [35, 38], '2-12', '029'],
];

export const iso8434part3: readonly Connection[] = sizes.flatMap(([dash, tubes, thread, ring]) =>
  (['male', 'female'] as const).map((end) =>
    connection({
      family: 'ISO 8434-3',
      tradeName: 'O-ring face seal',
      size: `-${dash}`,
      end,
      endTypes: end === 'male' ? ['fixed'] : ['swivel-nut', 'tube-nut'],
      dash,
      tubeOdMm: dashMm(dash),
      metricTubesMm: [...tubes],
      thread: unifiedThread(thread).designation,
      seat: 'flat-face-o-ring',
      sealing: 'o-ring',
      oRing: as568Ring(ring, 90),
      oRingOn: end === 'male' ? 'this-end' : 'mate',
      source,
    }),
  ),
);
