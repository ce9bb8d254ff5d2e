import { type Connection, connection, type EndType } from './connection';

/** Metric port with a flat spot face, and its studs: form E (soft profile ring in the shoulder,
 *  ISO 9974-2), form B (cutting edge, ISO 9974-3) and form A (loose sealing washer, DIN 3852-1). From
 *  memory of ISO 9974-1:1996 Table 1; M26 is from DIN 3852-1, which the ISO standard grew from. */
const source = 'ISO 9974-1:1996, -2, -3 (from memory)';
const din = 'DIN 3852-1:2002 (from memory)';

/** diameter, pitch */
const sizes: readonly (readonly [number, number])[] = [
  [8, 1],
  [10, 1],
  [12, 1.5],
  [14, 1.5],
  [16, 1.5],
  [18, 1.5],
  [20, 1.5],
  [22, 1.5],
  [26, 1.5],
  [27, 2],
  [33, 2],
  [42, 2],
  [48, 2],
];

export const iso9974: readonly Connection[] = sizes.flatMap(([d, pitch]) => {
  const common = {
    family: 'ISO 9974',
    size: `M${d}`,
    thread: `M${d}x${pitch}`,
    seat: 'flat-washer-face',
    source: d === 26 ? din : source,
  } as const;
  const male = {
    ...common,
    end: 'male',
    endTypes: ['stud'] as EndType[],
    tradeName: 'flat-face stud end, metric',
  } as const;
  return [
    connection({ ...male, form: 'E', sealing: 'face-ring' }),
    connection({ ...male, form: 'B', sealing: 'metal-edge' }),
    connection({ ...male, form: 'A', sealing: 'washer', source: din }),
    connection({
      ...common,
      end: 'female',
      endTypes: ['port'],
      tradeName: 'flat-face port, metric',
      sealing: 'face-ring',
    }),
  ];
});
