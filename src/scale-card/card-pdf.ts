import {
  closePath,
  lineTo,
  moveTo,
  PDFDocument,
  PDFOperator,
  PDFOperatorNames,
  type PDFPage,
  PrintScaling,
  popGraphicsState,
  pushGraphicsState,
  StandardFonts,
  setFillingGrayscaleColor,
  setLineWidth,
  setStrokingGrayscaleColor,
  stroke,
} from 'pdf-lib';
import { type Area, type CardWords, cardAreas, cardLine } from './card-drawing';
import { card, type Field } from './geometry';
import type { MmPoint } from './marker-outline';
import { drawFittedLine } from './pdf-text';

/** ISO 216 A4; US Letter 8.5 × 11 in (ANSI/ASME Y14.1 size A). */
export const papers = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
} as const;
export type Paper = keyof typeof papers;

const ptPerMm = 72 / 25.4;
const topMarginMm = 20;

/** Where the card's top left corner lies on the page, mm from the page's top left corner. */
export function cardOnPage(paper: Paper): MmPoint {
  return [(papers[paper].widthMm - card.widthMm) / 2, topMarginMm];
}

/** The card at true size on one page. Vector outlines throughout; the file asks the viewer
 *  not to scale when printing. */
export async function cardPdf(field: Field, paper: Paper, words: CardWords): Promise<Uint8Array> {
  const doc = await PDFDocument.create();
  doc.setTitle(`${words.title}, ${words.field[field]}`);
  doc.setProducer('Crestwise');
  doc.setCreator('Crestwise');
  doc.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  const { widthMm, heightMm } = papers[paper];
  const page = doc.addPage([widthMm * ptPerMm, heightMm * ptPerMm]);
  const font = await doc.embedFont(StandardFonts.Helvetica);

  const [left, top] = cardOnPage(paper);
  const toPage = ([x, y]: MmPoint): [number, number] => [
    (left + x) * ptPerMm,
    (heightMm - top - y) * ptPerMm,
  ];
  page.pushOperators(
    pushGraphicsState(),
    setFillingGrayscaleColor(0),
    ...cardAreas(field).flatMap((area) => fillArea(area, toPage)),
    popGraphicsState(),
  );
  drawCornerMarks(page, toPage);
  const line = (text: string, at: MmPoint, sizeMm: number, maxWidthMm: number) =>
    drawFittedLine(page, font, {
      text,
      at: toPage(at),
      sizePt: sizeMm * ptPerMm,
      maxWidthPt: maxWidthMm * ptPerMm,
    });
  line(
    cardLine.text(field, words),
    [cardLine.xMm, cardLine.baselineMm],
    cardLine.sizeMm,
    cardLine.widthMm,
  );
  words.instructions.forEach((text, i) => {
    line(text, [0, card.heightMm + 16 + 6 * i], 3.4, card.widthMm);
  });
  return doc.save();
}

function fillArea(area: Area, toPage: (p: MmPoint) => [number, number]): PDFOperator[] {
  const path = area.flatMap((outline) => [
    ...outline.map((point, i) => (i === 0 ? moveTo : lineTo)(...toPage(point))),
    closePath(),
  ]);
  return [...path, PDFOperator.of(PDFOperatorNames.FillEvenOdd)];
}

/** Short hairlines outside the corners, for cutting; they end 2 mm before the card. */
function drawCornerMarks(page: PDFPage, toPage: (p: MmPoint) => [number, number]): void {
  const { widthMm, heightMm } = card;
  const strokeFrom = (a: MmPoint, b: MmPoint) => [
    moveTo(...toPage(a)),
    lineTo(...toPage(b)),
    stroke(),
  ];
  page.pushOperators(
    pushGraphicsState(),
    setStrokingGrayscaleColor(0.5),
    setLineWidth(0.1 * ptPerMm),
    ...[0, widthMm].flatMap((x) =>
      [0, heightMm].flatMap((y) => {
        const outX = x === 0 ? -1 : 1;
        const outY = y === 0 ? -1 : 1;
        return [
          ...strokeFrom([x + 2 * outX, y], [x + 5 * outX, y]),
          ...strokeFrom([x, y + 2 * outY], [x, y + 5 * outY]),
        ];
      }),
    ),
    popGraphicsState(),
  );
}
