import { type Connection, connection, dashMm } from './connection';
import { as568Ring } from './o-rings';

/** Split flange heads: no thread; told apart by head diameter and thickness. From memory of
 *  ISO 6162-1:2012 and -2:2018 / SAE J518 (code 61 and 62). Split flanges clamp the head; the
 *  O-ring sits in the head's face. */
const source = (part: 1 | 2) =>
  `ISO 6162-${part} / SAE J518-${part} (from memory); 90 durometer: common practice`;

/** dash, head diameter, head thickness, AS568 ring */
const standard: readonly (readonly [number, number, number, string])[] = [
  [8, 30.2, 6.7, '210'],
  [12, 38.1, 6.7, '214'],
  [16, 44.4, 8, '219'],
  [20, 50.8, 8, '222'],
  [24, 60.3, 8, '225'],
  [32, 71.4, 9.5, '228'],
  [40, 84.1, 9.5, '232'],
  [48, 101.6, 9.5, '237'],
];

const high: readonly (readonly [number, number, number, string])[] = [
  [8, 31.8, 7.8, '210'],
  [12, 41.3, 8.8, '214'],
  [16, 47.6, 9.5, '219'],
  [20, 54, 10.3, '222'],
  [24, 63.5, 12.6, '225'],
  [32, 79.4, 12.6, '228'],
];

function heads(part: 1 | 2, rows: typeof standard): Connection[] {
  return rows.map(([dash, diameterMm, thicknessMm, ring]) =>
    connection({
      family: `ISO 6162-${part}`,
      tradeName: part === 1 ? 'split flange head, code 61' : 'split flange head, code 62',
      size: `-${dash}`,
      end: 'male',
      endType: 'flange-head',
      dash,
      hoseBoreMm: dashMm(dash),
      flangeHead: { diameterMm, thicknessMm },
      seat: 'flat-face-o-ring',
      sealing: 'o-ring',
      oRing: as568Ring(ring, 90),
      source: source(part),
    }),
  );
}

export const iso6162: readonly Connection[] = [...heads(1, standard), ...heads(2, high)];
