import { type Connection, connection, dashMm } from './connection';
import { as568Ring } from './o-rings';

/** Split flange heads: no thread; told apart by head diameter and thickness. From memory of
 *  ISO 6162-1:2012 and -2:2018 / SAE J518 (code 61 and 62). Split flanges clamp the head; the
 *  O-ring sits in the head's face. */
const source = (part: 1 | 2) =>
  `ISO 6162-${part} / SAE J518-${part} (from memory); 90 durometer: common practice`;

/** dash, head diameter, head thickness, AS568 ring, bolt spacing along and across */
const standard: readonly (readonly [number, number, number, string, number, number])[] = [
  [8, 30.2, 6.7, '210', 38.1, 17.5],
  [12, 38.1, 6.7, '214', 47.6, 22.2],
  [16, 44.4, 8, '219', 52.4, 26.2],
  [20, 50.8, 8, '222', 58.7, 30.2],
  [24, 60.3, 8, '225', 69.9, 35.7],
  [32, 71.4, 9.5, '228', 77.8, 42.9],
  [40, 84.1, 9.5, '232', 88.9, 50.8],
  [48, 101.6, 9.5, '237', 106.4, 61.9],
];

const high: readonly (readonly [number, number, number, string, number, number])[] = [
  [8, 31.8, 7.8, '210', 40.5, 18.2],
  [12, 41.3, 8.8, '214', 50.8, 23.8],
  [16, 47.6, 9.5, '219', 57.2, 27.8],
  [20, 54, 10.3, '222', 66.7, 31.8],
  [24, 63.5, 12.6, '225', 79.4, 36.5],
  [32, 79.4, 12.6, '228', 96.8, 44.4],
];

function heads(part: 1 | 2, rows: typeof standard): Connection[] {
  return rows.map(([dash, diameterMm, thicknessMm, ring, along, across]) =>
    connection({
      family: `ISO 6162-${part}`,
      tradeName: part === 1 ? 'split flange head, code 61' : 'split flange head, code 62',
      size: `-${dash}`,
      end: 'male',
      endTypes: ['flange-head'],
      dash,
      hoseBoreMm: dashMm(dash),
      flangeHead: { diameterMm, thicknessMm, boltsMm: [along, across] },
      seat: 'flat-face-o-ring',
      sealing: 'o-ring',
      oRing: as568Ring(ring, 90),
      source: source(part),
    }),
  );
}

export const iso6162: readonly Connection[] = [...heads(1, standard), ...heads(2, high)];
