import { card } from '../../scale-card/geometry';
/** Rectangles that lie about on tables: three that serve as references, and others that must not be taken for
 *  one of them. */
export interface Rectangle {
  readonly name: string;
  readonly kind: RectangleKind | null;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Radius of its corners, mm. */
  readonly cornerMm: number;
  /** Its face over the table that it lies on, mm: where the edges are seen. */
  readonly faceMm: number;
  /** Where one edge may lie off its nominal place, standard uncertainty, mm. */
  readonly uEdgeMm: number;
  /** How far it may lean at its ends, mm. */
  readonly uLeanMm: number;
  /** Prior of its rise at `bowAtMm`, mm. */
  readonly uBowMm: number;
  /** From which people photograph it (common practice): it fills a good part of the photo. */
  readonly distanceMm: number;
  /** How often, among rectangles that people lay beside a fitting when asked for a card or a sheet
   *  (common practice, roughly). */
  readonly share: number;
}

export type RectangleKind = 'id1' | 'a4' | 'letter';

/** Cut paper keeps to its nominal size within about ±0.5 mm (ISO 216 allows ±1.5 and ±2, from memory), and
 *  its edges curl. */
const paper = { cornerMm: 0, faceMm: 0, uEdgeMm: 0.2, uLeanMm: 0.1, uBowMm: 0.6, distanceMm: 400 };
/** A sharp-cornered card or note that is no reference: cut less exactly. */
const other = {
  kind: null,
  cornerMm: 0,
  faceMm: 0.2,
  uEdgeMm: 0.3,
  uLeanMm: 0.15,
  uBowMm: 1,
  distanceMm: 250,
};

export const rectangles: readonly Rectangle[] = [
  {
    name: 'ID-1 card',
    kind: 'id1',
    // ISO/IEC 7810:2019: 85.60 × 53.98 × 0.76, corners 3.18; unused 85.47 … 85.72 × 53.92 … 54.03.
    widthMm: 85.6,
    heightMm: 53.98,
    cornerMm: 3.18,
    faceMm: 0.76,
    // Rectangular within those bounds comes to 0.03 and 0.02 an edge; used edges are worn.
    uEdgeMm: 0.06,
    // Gloss and shadow change along a side, and shift its edge by a few tenths of a pixel (renders).
    uLeanMm: 0.03,
    // Cards warp by some tenths of a millimetre from end to end; at 90 mm that is four times as much.
    uBowMm: 1,
    distanceMm: 300,
    share: 0.4,
  },
  // ISO 216:2007.
  { name: 'A4 sheet', kind: 'a4', widthMm: 297, heightMm: 210, ...paper, share: 0.25 },
  // ANSI/ASME Y14.1, size A: 11 × 8.5 in.
  { name: 'Letter sheet', kind: 'letter', widthMm: 279.4, heightMm: 215.9, ...paper, share: 0.15 },
  // Our own card, seen without its markers.
  { name: 'scale card', widthMm: card.widthMm, heightMm: card.heightMm, ...other, share: 0.03 },
  // Usual sizes of business cards (common practice): Europe, most of Asia, Japan, North America.
  { name: 'business card', widthMm: 85, heightMm: 55, ...other, share: 0.03 },
  { name: 'business card', widthMm: 90, heightMm: 54, ...other, share: 0.02 },
  { name: 'business card', widthMm: 91, heightMm: 55, ...other, share: 0.02 },
  { name: 'business card', widthMm: 88.9, heightMm: 50.8, ...other, share: 0.02 },
  // Euro notes, Europa series (European Central Bank): 5, 10, 20, 50; US notes 6.14 × 2.61 in (US Bureau of
  // Engraving and Printing). Both from memory.
  { name: 'banknote', widthMm: 120, heightMm: 62, ...other, share: 0.01 },
  { name: 'banknote', widthMm: 127, heightMm: 67, ...other, share: 0.01 },
  { name: 'banknote', widthMm: 133, heightMm: 72, ...other, share: 0.01 },
  { name: 'banknote', widthMm: 140, heightMm: 77, ...other, share: 0.01 },
  { name: 'banknote', widthMm: 155.96, heightMm: 66.29, ...other, share: 0.01 },
  // 4 × 6 in prints.
  { name: 'photo print', widthMm: 152.4, heightMm: 101.6, ...other, share: 0.02 },
];
