import type { Shot } from '../journey/8-sheet/sheet-schema';
import { drawnSeats } from '../journey/drawn-seats';
import type { Coded } from './coded-schema';
import { digits, given } from './coded-values';

type Overlay = NonNullable<Shot['overlay']>;
type Point = readonly [number, number];

/** Overlay points travel as ten-thousandths of the upright photo's width. */
const pointUnit = 1e4;

export const foldPoint = ([x, y]: Point, widthPx: number): number[] =>
  [x, y].map((value) => Math.round((value / widthPx) * pointUnit));

export const unfoldPoints = (flat: readonly number[], widthPx: number): number[][] =>
  chunks(flat, 2).map((pair) => pair.map((v) => (v / pointUnit) * widthPx));

export function foldOverlay(overlay: Overlay, withCrests: boolean): NonNullable<Coded['l']> {
  const at = (point: Point) => foldPoint(point, overlay.widthPx);
  return {
    ...given('a', overlay.axis?.flatMap(at)),
    c: overlay.contactLines.slice(0, 4).flatMap((line) => line.flatMap(at)),
    k: withCrests
      ? overlay.crests
          .slice(0, 60)
          .flatMap((c) => [...at(c.at), c.side === 'left' ? 0 : 1, digits(c.axialMm, 3)])
      : [],
    ...given(
      'e',
      withCrests && overlay.ends?.length
        ? overlay.ends.map(({ seat, end, lines }): [number, number, number[][]] => [
            drawnSeats.indexOf(seat),
            end,
            lines.map((line) => line.flatMap(at)),
          ])
        : undefined,
    ),
  };
}

export function unfoldOverlay(
  coded: NonNullable<Coded['l']>,
  { widthPx, heightPx }: { widthPx: number; heightPx: number },
) {
  const all = (flat: readonly number[]) => unfoldPoints(flat, widthPx);
  return {
    widthPx,
    heightPx,
    markers: [],
    outline: [],
    axis: coded.a ? all(coded.a) : null,
    contactLines: chunks(all(coded.c), 2),
    crests: chunks(coded.k, 4).map(([x, y, side, axialMm]) => ({
      at: all([x ?? 0, y ?? 0])[0],
      side: side === 0 ? 'left' : 'right',
      axialMm,
    })),
    ...given(
      'ends',
      coded.e
        ?.filter(([seat]) => drawnSeats[seat] !== undefined)
        .map(([seat, end, lines]) => ({ seat: drawnSeats[seat], end, lines: lines.map(all) })),
    ),
  };
}

function chunks<T>(flat: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.floor(flat.length / size) }, (_, i) =>
    flat.slice(i * size, (i + 1) * size),
  );
}
