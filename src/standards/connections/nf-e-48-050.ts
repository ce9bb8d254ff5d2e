import { type Connection, connection } from './connection';

/** 24° cone of the French gas series: tubes by gas pipe, threads of 1.5 mm pitch throughout. From
 *  memory of NF E 48-050. Two threads are those of the heavy series of ISO 8434-1 (12S, 16S) and
 *  two those of its light series (35L at 2 mm is another): the bore for the tube tells. */
const source = 'NF E 48-050, gas series (from memory)';

/** tube OD, diameter of the thread */
const sizes: readonly (readonly [number, number])[] = [
  [13.25, 20],
  [16.75, 24],
  [21.25, 30],
  [26.75, 36],
  [33.5, 45],
  [42.25, 52],
];

export const nfE48050: readonly Connection[] = sizes.flatMap(([tube, d]) =>
  (['male', 'female'] as const).map((end) =>
    connection({
      family: 'NF E 48-050',
      tradeName: '24° cone, French gas series',
      size: `${tube}`,
      end,
      endTypes: end === 'male' ? ['fixed'] : ['tube-nut', 'swivel-nut'],
      tubeOdMm: tube,
      metricTubesMm: [tube],
      thread: `M${d}x1.5`,
      seat: 'cone-24',
      seatHalfAngleDeg: 12,
      coneOutwards: end === 'female',
      sealing: 'metal-cone',
      source,
    }),
  ),
);
