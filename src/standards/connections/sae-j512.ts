import { unifiedThread } from '../threads';
import { type Connection, connection, dashMm } from './connection';

/** 45° flare and inverted flare of automotive tube fittings, from memory of SAE J512 (1997)
 *  Tables 1 and 8. The inverted flare's male end is a nut that pushes on the tube's own flare; its
 *  female end has a cone standing up at the bottom. Compression: a sleeve on a plain tube. */
const source = 'SAE J512-1997 (from memory)';

const flare: readonly (readonly [number, string])[] = [
  [2, '5/16-24'],
  [3, '3/8-24'],
  [4, '7/16-20'],
  [5, '1/2-20'],
  [6, '5/8-18'],
  [7, '11/16-16'],
  [8, '3/4-16'],
  [10, '7/8-14'],
  [12, '1 1/16-14'],
  [14, '1 1/4-12'],
  [16, '1 3/8-12'],
];

const inverted: readonly (readonly [number, string])[] = [
  [2, '5/16-28'],
  [3, '3/8-24'],
  [4, '7/16-24'],
  [5, '1/2-20'],
  [6, '5/8-18'],
  [7, '11/16-18'],
  [8, '3/4-18'],
  [10, '7/8-18'],
  [12, '1 1/16-16'],
  [14, '1 3/16-16'],
  [16, '1 5/16-16'],
];

/** Compression ends: tube in sixteenths, thread. */
const compression: readonly (readonly [number, string])[] = [
  [2, '5/16-24'],
  [3, '3/8-24'],
  [4, '7/16-24'],
  [5, '1/2-24'],
  [6, '9/16-24'],
  [7, '5/8-24'],
  [8, '11/16-20'],
  [10, '13/16-18'],
  [12, '1-18'],
];

export const saeJ512: readonly Connection[] = [
  ...flare.flatMap(([dash, thread]) =>
    (['male', 'female'] as const).map((end) =>
      connection({
        family: 'SAE J512',
        tradeName: '45° flare',
        size: `-${dash}`,
        end,
        endTypes: end === 'male' ? ['fixed'] : ['tube-nut', 'swivel-nut'],
        dash,
        tubeOdMm: dashMm(dash),
        thread: unifiedThread(thread).designation,
        seat: 'cone-45',
        seatHalfAngleDeg: 45,
        coneOutwards: end === 'male',
        sealing: 'metal-cone',
        source,
      }),
    ),
  ),
  ...inverted.flatMap(([dash, thread]) =>
    (['male', 'female'] as const).map((end) =>
      connection({
        family: 'SAE J512 inverted',
        tradeName: 'inverted flare',
        size: `-${dash}`,
        end,
        endTypes: [end === 'male' ? 'tube-nut' : 'fixed'],
        dash,
        tubeOdMm: dashMm(dash),
        thread: unifiedThread(thread).designation,
        seat: 'cone-inverted',
        seatHalfAngleDeg: 42,
        coneOutwards: end === 'female',
        sealing: 'metal-cone',
        source,
      }),
    ),
  ),
  ...compression.flatMap(([dash, thread]) =>
    (['male', 'female'] as const).map((end) =>
      connection({
        family: 'SAE J512 compression',
        tradeName: 'compression fitting, inch',
        size: `-${dash}`,
        end,
        endTypes: [end === 'male' ? 'fixed' : 'tube-nut'],
        dash,
        tubeOdMm: dashMm(dash),
        thread: unifiedThread(thread).designation,
        seat: 'none',
        sealing: 'metal-cone',
        source,
      }),
    ),
  ),
];
