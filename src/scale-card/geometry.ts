/** The printed reference a photo is shot against, version 1.
 *  Card frame: origin at the card's top left corner, x right, y down, mm, seen from the printed side. */
export const card = {
  version: 1,
  widthMm: 184,
  heightMm: 136,
  /** OpenCV predefined dictionary of the markers. */
  dictionary: 'DICT_4X4_50',
  markerSideMm: 12,
  moduleMm: 2,
  /** Where the fitting lies; nothing is printed here but, on the dark field, solid black. */
  window: { xMm: 20, yMm: 20, widthMm: 144, heightMm: 96 },
  bars: {
    thicknessMm: 0.4,
    tickMm: 3,
    horizontal: { lengthMm: 150, yMm: 133, fromXMm: 17, toXMm: 167 },
    vertical: { lengthMm: 100, xMm: 181, fromYMm: 18, toYMm: 118 },
  },
} as const;

/** Of the length of a bar, by what it is measured with: half a millimetre is judged at both ends of a steel rule; a
 *  caliper reads closer (common practice). */
export const uOfBarsMm = { rule: 0.3, caliper: 0.05 } as const;

/** Of the card, and of its window. */
export const cardMiddle = [card.widthMm / 2, card.heightMm / 2] as const;

export type Field = 'light' | 'dark';

const spacingMm = 16;
const firstMm = 12;
const columns = 11;
const rows = 8;

export interface MarkerPlace {
  readonly id: number;
  readonly xMm: number;
  readonly yMm: number;
}

/** Centres of markers 0…33 on the border of an 11 × 8 grid, ids clockwise from the top left. */
export const markers: readonly MarkerPlace[] = ringCells().map(([column, row], id) => ({
  id,
  xMm: firstMm + spacingMm * column,
  yMm: firstMm + spacingMm * row,
}));

function ringCells(): [column: number, row: number][] {
  const cells: [number, number][] = [];
  for (let c = 0; c < columns; c++) cells.push([c, 0]);
  for (let r = 1; r < rows - 1; r++) cells.push([columns - 1, r]);
  for (let c = columns - 1; c >= 0; c--) cells.push([c, rows - 1]);
  for (let r = rows - 2; r >= 1; r--) cells.push([0, r]);
  return cells;
}
