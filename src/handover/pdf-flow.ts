import { type PDFFont, type PDFPage, rgb } from 'pdf-lib';
import { printable, wrapText } from '../scale-card/pdf-text';

/** What stands in a column of the result page, already in the reader's words. */
export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'row'; readonly label: string; readonly value: string }
  | { readonly kind: 'list'; readonly items: readonly string[]; readonly numbered: boolean };

export interface Fonts {
  readonly plain: PDFFont;
  readonly bold: PDFFont;
}

/** Frame: PDF page points, y up; `topPt` is where the first line starts. */
export interface Column {
  readonly xPt: number;
  readonly topPt: number;
  readonly widthPt: number;
  readonly heightPt: number;
}

interface Line {
  readonly text: string;
  readonly bold: boolean;
  readonly indentPt: number;
  /** Set beside `text`, at the column's start. */
  readonly mark: string;
  readonly beforePt: number;
}

const leading = 1.28;
const labelShare = 0.4;

/** Largest of the sizes at which all columns fit, or the smallest. */
export function fittingSize(
  columns: readonly { readonly column: Column; readonly blocks: readonly Block[] }[],
  fonts: Fonts,
  sizes: readonly number[] = [9.5, 9, 8.5, 8, 7.5, 7, 6.5, 6],
): number {
  const fits = (size: number) =>
    columns.every(
      ({ column, blocks }) =>
        heightOf(setLines(blocks, fonts, size, column.widthPt), size) <= column.heightPt,
    );
  return sizes.find(fits) ?? sizes.at(-1)!;
}

/** Sets the blocks from the top; what does not fit is left out and marked by '…'. */
export function drawColumn(
  page: PDFPage,
  fonts: Fonts,
  column: Column,
  blocks: readonly Block[],
  sizePt: number,
): void {
  const lines = setLines(blocks, fonts, sizePt, column.widthPt);
  let count = lines.length;
  while (count > 0 && heightOf(lines.slice(0, count), sizePt) > column.heightPt) count--;
  let y = column.topPt;
  for (const [i, line] of lines.slice(0, count).entries()) {
    y -= line.beforePt + leading * sizePt;
    const cutHere = i === count - 1 && count < lines.length;
    const font = line.bold ? fonts.bold : fonts.plain;
    const text = cutHere ? `${line.text} …` : line.text;
    page.drawText(text, { x: column.xPt + line.indentPt, y, size: sizePt, font });
    if (line.mark)
      page.drawText(line.mark, {
        x: column.xPt,
        y,
        size: sizePt,
        font: fonts.plain,
        color: rgb(0.3, 0.3, 0.3),
      });
  }
}

function heightOf(lines: readonly Line[], sizePt: number): number {
  return lines.reduce((sum, line) => sum + line.beforePt + leading * sizePt, 0);
}

function setLines(blocks: readonly Block[], fonts: Fonts, sizePt: number, widthPt: number): Line[] {
  return blocks.flatMap((block, i) => {
    const gap = block.kind === 'heading' ? sizePt * 0.9 : sizePt * 0.25;
    return setBlock(block, fonts, sizePt, widthPt, i === 0 ? 0 : gap);
  });
}

function setBlock(
  block: Block,
  { plain, bold }: Fonts,
  sizePt: number,
  widthPt: number,
  gapPt: number,
): Line[] {
  const set = (text: string, font: PDFFont, indentPt: number, mark: string): Line[] =>
    wrapText(font, text, sizePt, widthPt - indentPt).map((line, k) => ({
      text: line,
      bold: font === bold,
      indentPt,
      mark: k === 0 ? mark : '',
      beforePt: k === 0 ? gapPt : 0,
    }));
  switch (block.kind) {
    case 'heading':
      return set(block.text, bold, 0, '');
    case 'text':
      return set(block.text, plain, 0, '');
    case 'row': {
      const labelPt = widthPt * labelShare;
      const label = fitted(plain, printable(plain, block.label), sizePt, labelPt - sizePt * 0.5);
      return set(block.value, plain, labelPt, label);
    }
    case 'list':
      return block.items.flatMap((item, k) =>
        set(item, plain, sizePt * 1.4, block.numbered ? `${k + 1}` : '•'),
      );
  }
}

/** A label in one line, cut where it must be. */
function fitted(font: PDFFont, text: string, sizePt: number, widthPt: number): string {
  if (font.widthOfTextAtSize(text, sizePt) <= widthPt) return text;
  let cut = text.length;
  while (cut > 1 && font.widthOfTextAtSize(`${text.slice(0, cut)}…`, sizePt) > widthPt) cut--;
  return `${text.slice(0, cut)}…`;
}
