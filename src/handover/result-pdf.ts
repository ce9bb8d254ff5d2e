import { PDFDocument, type PDFPage, rgb, StandardFonts } from 'pdf-lib';
import { type Paper, papers } from '../scale-card/card-pdf';
import { drawFittedLine } from '../scale-card/pdf-text';
import { type Block, type Column, drawColumn, type Fonts, fittingSize } from './pdf-flow';
import { drawPhoto, type PrintedPhoto } from './pdf-photo';

/** One printed page for one identification, in the reader's words and number format. */
export interface ResultPage {
  readonly paper: Paper;
  /** What it is, large: the connection, or the thread while that is open. */
  readonly heading: string;
  readonly subheading: string;
  readonly photo: PrintedPhoto | null;
  /** Beside the photo: numbers, readings. */
  readonly beside: readonly Block[];
  /** Below, in two columns: candidates and mating end; assembly and the counter's answer. */
  readonly left: readonly Block[];
  readonly right: readonly Block[];
  /** Across the page, framed; always there. */
  readonly cautions: { readonly title: string; readonly items: readonly string[] };
  /** Title block, four cells a row: label and value. */
  readonly titleBlock: readonly { readonly label: string; readonly value: string }[];
}

const ptPerMm = 72 / 25.4;
const mm = (value: number) => value * ptPerMm;
const marginPt = mm(10);
const innerPt = mm(5);
const cellHeightPt = mm(9);
const cellsPerRow = 4;
const grey = rgb(0.35, 0.35, 0.35);
const black = rgb(0, 0, 0);

export async function resultPdf(result: ResultPage): Promise<Uint8Array> {
  const doc = await PDFDocument.create();
  doc.setTitle(result.heading);
  doc.setProducer('Crestwise');
  doc.setCreator('Crestwise');
  const paper = papers[result.paper];
  const page = doc.addPage([mm(paper.widthMm), mm(paper.heightMm)]);
  const fonts: Fonts = {
    plain: await doc.embedFont(StandardFonts.Helvetica),
    bold: await doc.embedFont(StandardFonts.HelveticaBold),
  };
  const widthPt = mm(paper.widthMm) - 2 * marginPt;
  const heightPt = mm(paper.heightMm) - 2 * marginPt;
  frame(page, marginPt, marginPt, widthPt, heightPt, 1);

  const x = marginPt + innerPt;
  const contentPt = widthPt - 2 * innerPt;
  let top = marginPt + heightPt - innerPt;
  drawFittedLine(page, fonts.bold, result.heading, [x, top - 15], 17, contentPt);
  drawFittedLine(page, fonts.plain, result.subheading, [x, top - 29], 10.5, contentPt);
  top -= 38;

  const blockTopPt = marginPt + drawTitleBlock(page, fonts, result.titleBlock, widthPt);
  const cautionsTopPt = drawCautions(
    page,
    fonts,
    result.cautions,
    x,
    blockTopPt + innerPt,
    contentPt,
  );

  const photoWidthPt = contentPt * 0.58;
  const photoHeightPt = Math.min(photoWidthPt * 0.75, heightPt * 0.34);
  const gapPt = mm(5);
  let besideX = x;
  let rowPt = 0;
  if (result.photo) {
    const box = {
      xPt: x,
      yPt: top - photoHeightPt,
      widthPt: photoWidthPt,
      heightPt: photoHeightPt,
    };
    const filled = await drawPhoto(doc, page, result.photo, box);
    frame(page, filled.xPt, filled.yPt, filled.widthPt, filled.heightPt, 0.5);
    besideX = x + filled.widthPt + gapPt;
    rowPt = photoHeightPt;
  } else rowPt = Math.min(photoHeightPt, 16 * (result.beside.length + 1));

  const lowerTop = top - rowPt - gapPt;
  const lowerHeight = lowerTop - cautionsTopPt - innerPt;
  const halfPt = (contentPt - gapPt) / 2;
  const columns: { column: Column; blocks: readonly Block[] }[] = [
    {
      column: { xPt: besideX, topPt: top, widthPt: x + contentPt - besideX, heightPt: rowPt },
      blocks: result.beside,
    },
    {
      column: { xPt: x, topPt: lowerTop, widthPt: halfPt, heightPt: lowerHeight },
      blocks: result.left,
    },
    {
      column: { xPt: x + halfPt + gapPt, topPt: lowerTop, widthPt: halfPt, heightPt: lowerHeight },
      blocks: result.right,
    },
  ];
  for (const { column, blocks } of columns)
    drawColumn(page, fonts, column, blocks, fittingSize([{ column, blocks }], fonts));
  return doc.save();
}

/** Cells along the bottom edge, as on a drawing; gives back their height. */
function drawTitleBlock(
  page: PDFPage,
  fonts: Fonts,
  cells: ResultPage['titleBlock'],
  widthPt: number,
): number {
  const rows = Math.max(1, Math.ceil(cells.length / cellsPerRow));
  const cellWidthPt = widthPt / cellsPerRow;
  for (const [i, { label, value }] of cells.entries()) {
    const row = Math.floor(i / cellsPerRow);
    const x = marginPt + (i % cellsPerRow) * cellWidthPt;
    const y = marginPt + (rows - 1 - row) * cellHeightPt;
    frame(page, x, y, cellWidthPt, cellHeightPt, 0.5);
    const inside = cellWidthPt - mm(3);
    drawFittedLine(page, fonts.plain, label, [x + mm(1.5), y + mm(5.9)], 6.5, inside);
    drawFittedLine(page, fonts.plain, value, [x + mm(1.5), y + mm(1.9)], 9, inside);
  }
  return rows * cellHeightPt;
}

/** Framed, above the title block; gives back the frame's upper edge. */
function drawCautions(
  page: PDFPage,
  fonts: Fonts,
  cautions: ResultPage['cautions'],
  xPt: number,
  bottomPt: number,
  widthPt: number,
): number {
  const blocks: Block[] = [
    { kind: 'heading', text: cautions.title },
    { kind: 'list', items: cautions.items, numbered: false },
  ];
  const heightPt = mm(30);
  const padPt = mm(2);
  frame(page, xPt, bottomPt, widthPt, heightPt, 1);
  const column: Column = {
    xPt: xPt + padPt,
    topPt: bottomPt + heightPt - padPt + 2,
    widthPt: widthPt - 2 * padPt,
    heightPt: heightPt - padPt,
  };
  drawColumn(page, fonts, column, blocks, fittingSize([{ column, blocks }], fonts));
  return bottomPt + heightPt;
}

function frame(
  page: PDFPage,
  x: number,
  y: number,
  width: number,
  height: number,
  borderWidth: number,
): void {
  page.drawRectangle({
    x,
    y,
    width,
    height,
    borderWidth,
    borderColor: borderWidth < 1 ? grey : black,
  });
}
