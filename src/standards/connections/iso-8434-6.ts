import { type Connection, connection, dashMm } from './connection';

/** 60° cone (included angle) with G threads: the cone opens inside the male end; the nut's nipple
 *  has the outward cone, with or without an O-ring. Sizes from memory of ISO 8434-6:2009 and
 *  BS 5200; hose bore by dash: common practice. */
const source = 'ISO 8434-6:2009 / BS 5200 (from memory); hose dash: common practice';

/** thread size, hose dash */
const sizes: readonly (readonly [string, number])[] = [
  ['1/8', 2],
  ['1/4', 4],
  ['3/8', 6],
  ['1/2', 8],
  ['5/8', 10],
  ['3/4', 12],
  ['1', 16],
  ['1 1/4', 20],
  ['1 1/2', 24],
  ['2', 32],
];

export const iso8434part6: readonly Connection[] = sizes.flatMap(([size, dash]) =>
  (['male', 'female'] as const).map((end) =>
    connection({
      family: 'ISO 8434-6',
      tradeName: '60° cone, G thread (BSPP)',
      size,
      end,
      endTypes: end === 'male' ? ['fixed'] : ['swivel-nut'],
      dash,
      hoseBoreMm: dashMm(dash),
      thread: `G${size}`,
      seat: 'cone-60',
      seatHalfAngleDeg: 30,
      coneOutwards: end === 'female',
      sealing: 'metal-cone',
      source,
    }),
  ),
);
