import { unifiedThread } from '../threads';
import { type Connection, connection, dashMm } from './connection';
import { as568Ring } from './o-rings';

/** O-ring port (female) and stud (male): straight UN thread, O-ring between thread and hex in the
 *  port's chamfer. From memory of ISO 11926-1/-2:1995 and SAE J1926-1/-2. */
const source = 'ISO 11926-1:1995 and -2 / SAE J1926 (from memory); 90 durometer: common practice';

/** dash, thread; the AS568 ring is 9nn with nn the dash */
const sizes: readonly (readonly [number, string])[] = [
  [2, '5/16-24'],
  [3, '3/8-24'],
  [4, '7/16-20'],
  [5, '1/2-20'],
  [6, '9/16-18'],
  [8, '3/4-16'],
  [10, '7/8-14'],
  [12, '1 1/16-12'],
  [14, '1 3/16-12'],
  [16, '1 5/16-12'],
  [20, '1 5/8-12'],
  [24, '1 7/8-12'],
  [32, '2 1/2-12'],
];

export const iso11926: readonly Connection[] = sizes.flatMap(([dash, thread]) =>
  (['male', 'female'] as const).map((end) =>
    connection({
      family: 'ISO 11926',
      tradeName: end === 'male' ? 'O-ring stud end, inch' : 'O-ring port, inch',
      size: `-${dash}`,
      end,
      endTypes: [end === 'male' ? 'stud' : 'port'],
      dash,
      tubeOdMm: dashMm(dash),
      thread: unifiedThread(thread).designation,
      seat: 'o-ring-at-hex',
      sealing: 'o-ring',
      oRing: as568Ring(`9${String(dash).padStart(2, '0')}`, 90),
      oRingOn: end === 'male' ? 'this-end' : 'mate',
      source,
    }),
  ),
);
