import { type Connection, connection, type EndType } from './connection';

/** G thread port with a flat spot face, and its studs: form E (soft profile ring, ISO 1179-2),
 *  forms G and H (O-ring with a retaining ring, ISO 1179-3), form B (cutting edge, ISO 1179-4),
 *  form A (loose sealing washer, DIN 3852-2). From memory of ISO 1179-1:2013 Table 1. Ring sizes: see
 *  the maker's data. */
const source = 'ISO 1179-1:2013, -2, -3, -4 (from memory)';

const din = 'DIN 3852-2:2000 (from memory)';

const sizes = ['1/8', '1/4', '3/8', '1/2', '3/4', '1', '1 1/4', '1 1/2', '2'] as const;

export const iso1179: readonly Connection[] = sizes.flatMap((size) => {
  const common = { family: 'ISO 1179', size, thread: `G${size}`, source } as const;
  const male = {
    ...common,
    end: 'male',
    endTypes: ['stud'] as EndType[],
    tradeName: 'G stud end (BSPP)',
  } as const;
  return [
    connection({ ...male, form: 'E', seat: 'flat-washer-face', sealing: 'face-ring' }),
    connection({ ...male, form: 'G or H', seat: 'o-ring-at-hex', sealing: 'o-ring' }),
    connection({ ...male, form: 'B', seat: 'flat-washer-face', sealing: 'metal-edge' }),
    connection({ ...male, form: 'A', seat: 'flat-washer-face', sealing: 'washer', source: din }),
    connection({
      ...common,
      end: 'female',
      endTypes: ['port'],
      tradeName: 'G port (BSPP)',
      seat: 'flat-washer-face',
      sealing: 'face-ring',
    }),
  ];
});
