import { card, type Field, markers } from './geometry';
import { type MmPoint, markerOutlines } from './marker-outline';

/** One black area of the card: outlines in card mm, filled even-odd. */
export type Area = readonly (readonly MmPoint[])[];

/** Text on and around the card, so that the page can print it in its own language. */
export interface CardWords {
  /** On the card, above the ring. */
  readonly title: string;
  readonly field: Readonly<Record<Field, string>>;
  readonly printAtFullSize: string;
  readonly longBar: string;
  readonly shortBar: string;
  /** On the sheet below the card, one paragraph a line; a PDF only. */
  readonly instructions: readonly string[];
}

/** Everything printed black on the card. Card frame, mm. */
export function cardAreas(field: Field): Area[] {
  const areas: Area[] = markers.map((marker) =>
    markerOutlines(marker.id).map((outline) =>
      outline.map(
        ([x, y]): MmPoint => [
          marker.xMm - card.markerSideMm / 2 + x * card.moduleMm,
          marker.yMm - card.markerSideMm / 2 + y * card.moduleMm,
        ],
      ),
    ),
  );
  if (field === 'dark') {
    const { xMm, yMm, widthMm, heightMm } = card.window;
    areas.push([rectangle(xMm, yMm, xMm + widthMm, yMm + heightMm)]);
  }
  areas.push(...barAreas());
  return areas;
}

/** Bars run between the middles of their end ticks. */
function barAreas(): Area[] {
  const { thicknessMm, tickMm, horizontal, vertical } = card.bars;
  const t = thicknessMm / 2;
  const k = tickMm / 2;
  const { yMm, fromXMm, toXMm } = horizontal;
  const { xMm, fromYMm, toYMm } = vertical;
  return [
    [rectangle(fromXMm, yMm - t, toXMm, yMm + t)],
    [rectangle(fromXMm - t, yMm - k, fromXMm + t, yMm + k)],
    [rectangle(toXMm - t, yMm - k, toXMm + t, yMm + k)],
    [rectangle(xMm - t, fromYMm, xMm + t, toYMm)],
    [rectangle(xMm - k, fromYMm - t, xMm + k, fromYMm + t)],
    [rectangle(xMm - k, toYMm - t, xMm + k, toYMm + t)],
  ];
}

function rectangle(x0: number, y0: number, x1: number, y1: number): MmPoint[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/** The one line of text on the card, in the strip above the ring. */
export const cardLine = {
  xMm: 6,
  baselineMm: 3.4,
  sizeMm: 2.4,
  widthMm: card.widthMm - 12,
  text: (field: Field, words: CardWords): string =>
    [
      words.title,
      words.field[field],
      words.printAtFullSize,
      `${words.longBar} ____________ mm, ${words.shortBar} ____________ mm`,
    ].join('  ·  '),
} as const;
