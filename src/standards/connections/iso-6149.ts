import { type Connection, connection } from './connection';
import { metricRing } from './o-rings';

/** Metric O-ring port and stud: as ISO 11926, and the port carries a raised ring around its mouth.
 *  From memory of ISO 6149-1:2019 Table 1 and -2 Table 2. M20 is for cartridge cavities only. */
const source = 'ISO 6149-1:2019 and -2 / SAE J2244 (from memory); 90 durometer: common practice';

/** diameter, pitch, O-ring inside diameter and section, mm */
const sizes: readonly (readonly [number, number, number, number])[] = [
  [8, 1, 6.1, 1.6],
  [10, 1, 8.1, 1.6],
  [12, 1.5, 9.3, 2.2],
  [14, 1.5, 11.3, 2.2],
  [16, 1.5, 13.3, 2.2],
  [18, 1.5, 15.3, 2.2],
  [20, 1.5, 17.3, 2.2],
  [22, 1.5, 19.3, 2.2],
  [27, 2, 23.6, 2.9],
  [30, 2, 26.6, 2.9],
  [33, 2, 29.6, 2.9],
  [42, 2, 38.6, 2.9],
  [48, 2, 44.6, 2.9],
  [60, 2, 56.6, 2.9],
];

export const iso6149: readonly Connection[] = sizes.flatMap(([d, pitch, inner, section]) =>
  (['male', 'female'] as const).map((end) =>
    connection({
      family: 'ISO 6149',
      tradeName: end === 'male' ? 'O-ring stud end, metric' : 'O-ring port, metric',
      size: `M${d}`,
      end,
      endTypes: [end === 'male' ? 'stud' : 'port'],
      thread: `M${d}x${pitch}`,
      seat: 'o-ring-at-hex',
      sealing: 'o-ring',
      oRing: metricRing(inner, section, 90),
      oRingOn: end === 'male' ? 'this-end' : 'mate',
      source,
    }),
  ),
);
