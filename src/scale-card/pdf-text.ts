import type { PDFFont, PDFPage } from 'pdf-lib';

/** One line of text, made smaller where it would be wider than allowed.
 *  Frame: PDF page points, y up; `at` is the start of the baseline. */
export function drawFittedLine(
  page: PDFPage,
  font: PDFFont,
  {
    text,
    at: [x, y],
    sizePt,
    maxWidthPt,
  }: {
    readonly text: string;
    readonly at: readonly [number, number];
    readonly sizePt: number;
    readonly maxWidthPt: number;
  },
): void {
  const shown = printable(font, text);
  const size = sizePt * Math.min(1, maxWidthPt / font.widthOfTextAtSize(shown, sizePt) || 1);
  page.drawText(shown, { x, y, size, font });
}

/** The PDF standard fonts know Windows-1252 only (ISO 32000-1, Annex D); anything else prints as '?'. */
function printable(font: PDFFont, text: string): string {
  const known = knownCharacters(font);
  return Array.from(text.normalize('NFC'), (char) => {
    const code = char.codePointAt(0) ?? 0;
    if (code === 0x0a || code === 0x0d || code === 0x09) return ' ';
    if (code === 0x2212) return '-';
    if (code === 0x202f || code === 0x2009) return ' ';
    return known.has(code) ? char : '?';
  }).join('');
}

const cache = new WeakMap<PDFFont, Set<number>>();
function knownCharacters(font: PDFFont): Set<number> {
  let known = cache.get(font);
  if (!known) {
    known = new Set(font.getCharacterSet());
    cache.set(font, known);
  }
  return known;
}
