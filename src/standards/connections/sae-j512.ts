import { unifiedThread } from '../threads';
import { type Connection, connection, dashMm } from './connection';

/** 45° flare and inverted flare of automotive tube fittings, from memory of SAE J512 (1997)
 *  Tables 1 and 8. The inverted flare's male end is a nut that pushes on the tube's own flare:
 *  it shows no seat; its female end is a port with the cone standing at the bottom. */
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

export const saeJ512: readonly Connection[] = [
  ...flare.flatMap(([dash, thread]) =>
    (['male', 'female'] as const).map((end) =>
      connection({
        family: 'SAE J512',
        tradeName: '45° flare',
        size: `-${dash}`,
        end,
        endType: end === 'male' ? 'fixed' : 'swivel-nut',
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
        endType: end === 'male' ? 'tube-nut' : 'port',
        dash,
        tubeOdMm: dashMm(dash),
        thread: unifiedThread(thread).designation,
        seat: end === 'male' ? 'none' : 'cone-45',
        seatHalfAngleDeg: end === 'male' ? null : 42,
        coneOutwards: end === 'female',
        sealing: 'metal-cone',
        source,
      }),
    ),
  ),
];
