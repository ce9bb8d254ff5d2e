import { type Connection, connection } from './connection';

/** Metric 60° cone (included angle): the cone opens inside the male end. Sizes from memory of
 *  DIN 7631; the nominal tube stands beside the thread. */
const source = 'DIN 7631 (from memory)';

/** nominal tube OD, diameter of the thread; the pitch is 1.5 throughout */
const sizes: readonly (readonly [number, number])[] = [
  [6, 12],
  [8, 14],
  [10, 16],
  [12, 18],
  [15, 22],
  [18, 26],
  [22, 30],
  [28, 38],
  [35, 45],
  [42, 52],
];

export const din7631: readonly Connection[] = sizes.flatMap(([tube, d]) =>
  (['male', 'female'] as const).map((end) =>
    connection({
      family: 'DIN 7631',
      tradeName: '60° cone, metric',
      size: `M${d}`,
      end,
      endTypes: end === 'male' ? ['fixed'] : ['swivel-nut'],
      tubeOdMm: tube,
      metricTubesMm: [tube],
      thread: `M${d}x1.5`,
      seat: 'cone-60',
      seatHalfAngleDeg: 30,
      coneOutwards: end === 'female',
      sealing: 'metal-cone',
      source,
    }),
  ),
);
