import { type Connection, connection, dashMm } from './connection';

/** 30° seat (half angle): outward cone on the male end, with G threads, and the metric variant of
 *  construction machines. From memory of JIS B 8363 (G sizes); the metric sizes are common
 *  practice, in no standard we could name. */
const source = 'JIS B 8363 (from memory); hose dash: common practice';
const metricSource = 'metric variant of JIS B 8363: common practice (from memory)';

/** thread, size, hose dash */
const parallelPipe: readonly (readonly [string, number])[] = [
  ['1/4', 4],
  ['3/8', 6],
  ['1/2', 8],
  ['3/4', 12],
  ['1', 16],
  ['1 1/4', 20],
  ['1 1/2', 24],
  ['2', 32],
];

const metric: readonly (readonly [number, number])[] = [
  [14, 4],
  [18, 6],
  [22, 8],
  [24, 10],
  [30, 12],
  [33, 16],
  [36, 20],
  [42, 24],
];

const seat = { family: 'JIS B 8363', seat: 'cone-30', sealing: 'metal-cone' } as const;

export const jisB8363: readonly Connection[] = (['male', 'female'] as const).flatMap((end) => [
  ...parallelPipe.map(([size, dash]) =>
    connection({
      ...seat,
      tradeName: '30° seat, G thread',
      size,
      end,
      endTypes: end === 'male' ? ['fixed'] : ['swivel-nut'],
      dash,
      hoseBoreMm: dashMm(dash),
      thread: `G${size}`,
      seatHalfAngleDeg: 30,
      coneOutwards: end === 'male',
      source,
    }),
  ),
  ...metric.map(([d, dash]) =>
    connection({
      ...seat,
      tradeName: '30° seat, metric thread',
      size: `M${d}`,
      end,
      endTypes: end === 'male' ? ['fixed'] : ['swivel-nut'],
      dash,
      hoseBoreMm: dashMm(dash),
      thread: `M${d}x1.5`,
      seatHalfAngleDeg: 30,
      coneOutwards: end === 'male',
      source: metricSource,
    }),
  ),
]);
