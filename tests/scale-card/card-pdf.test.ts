import { beforeAll, describe, expect, test } from 'vitest';
import { cardOnPage, cardPdf, type Paper, papers } from '../../src/scale-card/card-pdf';
import { card, type Field, markers } from '../../src/scale-card/geometry';
import { en } from '../../src/ui/language/en';
import { stockOpenCv } from './opencv';
import { type Raster, rasterise } from './rasterise';

// A whole number for both papers, so that the page fills whole pixels; 0.05 mm is one pixel.
const pxPerMm = 20;

let cv: Awaited<ReturnType<typeof stockOpenCv>>;
beforeAll(async () => {
  cv = await stockOpenCv();
});

describe.each<[Field, Paper]>([
  ['light', 'a4'],
  ['dark', 'a4'],
  ['light', 'letter'],
  ['dark', 'letter'],
])('%s field on %s, drawn by PDFium', (field, paper) => {
  let raster: Raster;
  beforeAll(async () => {
    raster = await rasterise(await cardPdf(field, paper, en.cardWords), pxPerMm);
  }, 60_000);

  test('page has the size of the paper', () => {
    expect(raster.widthPx).toBe(Math.round(papers[paper].widthMm * pxPerMm));
    expect(raster.heightPx).toBe(Math.round(papers[paper].heightMm * pxPerMm));
  });

  test('OpenCV finds all 34 markers, centres within 0.05 mm, upright', () => {
    const found = detect(raster);
    expect([...found.keys()].sort((a, b) => a - b)).toEqual(markers.map((m) => m.id));
    const [left, top] = cardOnPage(paper);
    for (const { id, xMm, yMm } of markers) {
      const corners = found.get(id)!;
      const cx = mean(corners.map((c) => c[0])) - left;
      const cy = mean(corners.map((c) => c[1])) - top;
      expect(Math.hypot(cx - xMm, cy - yMm), `centre of marker ${id}`).toBeLessThan(0.05);
      expect(corners[0]![0] - left, `first corner of ${id}`).toBeCloseTo(xMm - 6, 0);
      expect(corners[0]![1] - top, `first corner of ${id}`).toBeCloseTo(yMm - 6, 0);
    }
  });

  test('print-check bars measure 150 and 100 mm between the middles of their ticks', () => {
    const { horizontal, vertical, tickMm } = card.bars;
    const off = tickMm / 2 - 0.5; // beside the bar, through the tick
    const h = [horizontal.fromXMm, horizontal.toXMm].map((x) =>
      middleOfInk(raster, paper, [x - 2, horizontal.yMm - off], [x + 2, horizontal.yMm - off]),
    );
    const v = [vertical.fromYMm, vertical.toYMm].map((y) =>
      middleOfInk(raster, paper, [vertical.xMm - off, y - 2], [vertical.xMm - off, y + 2]),
    );
    // PDFium snaps rectangles to whole pixels: half a pixel is 0.025 mm.
    expect(Math.abs(h[1]! - h[0]!)).toBeLessThan(0.03);
    expect(Math.abs(v[1]! - v[0]!)).toBeLessThan(0.03);
    expect(Math.abs(h[0]!)).toBeLessThan(0.03);
    expect(Math.abs(v[0]!)).toBeLessThan(0.03);
  });

  test('nothing else is printed inside the ring, and the window is bare or black', () => {
    const { xMm, yMm, widthMm, heightMm } = card.window;
    const inside = darkShare(raster, paper, [xMm + 0.2, yMm + 0.2, widthMm - 0.4, heightMm - 0.4]);
    expect(inside).toBe(field === 'dark' ? 1 : 0);
    const gaps = [
      darkShare(raster, paper, [18.2, 18.2, 147.6, 1.6]),
      darkShare(raster, paper, [18.2, 116.2, 147.6, 1.6]),
      darkShare(raster, paper, [18.2, 20, 1.6, 96]),
      darkShare(raster, paper, [164.2, 20, 1.6, 96]),
      // One module of bare paper around the ring, as the detector needs.
      darkShare(raster, paper, [4, 4.1, 176, 1.8]),
    ];
    expect(gaps).toEqual([0, 0, 0, 0, 0]);
  });
});

/** Corners by OpenCV's detector with sub-pixel refinement, mm on the page. */
function detect(raster: Raster): Map<number, [number, number][]> {
  const image = cv.matFromArray(raster.heightPx, raster.widthPx, cv.CV_8UC1, raster.grey);
  const parameters = new cv.aruco_DetectorParameters();
  parameters.cornerRefinementMethod = cv.CORNER_REFINE_SUBPIX;
  const refine = new cv.aruco_RefineParameters(10, 3, true);
  const dictionary = cv.getPredefinedDictionary(cv.DICT_4X4_50);
  const detector = new cv.aruco_ArucoDetector(dictionary, parameters, refine);
  const corners = new cv.MatVector();
  const ids = new cv.Mat();
  detector.detectMarkers(image, corners, ids);
  const found = new Map<number, [number, number][]>();
  for (let i = 0; i < ids.rows; i++) {
    const c = corners.get(i);
    // Pixel centres are at integers: the page's corner is at −0.5.
    const mm = (k: number) => (c.data32F[k]! + 0.5) / pxPerMm;
    found.set(ids.data32S[i]!, [
      [mm(0), mm(1)],
      [mm(2), mm(3)],
      [mm(4), mm(5)],
      [mm(6), mm(7)],
    ]);
    c.delete();
  }
  for (const item of [image, parameters, refine, dictionary, detector, corners, ids]) item.delete();
  return found;
}

/** Middle of the ink crossed on a straight way, mm from the way's middle. Card frame. */
function middleOfInk(
  raster: Raster,
  paper: Paper,
  from: [number, number],
  to: [number, number],
): number {
  const [left, top] = cardOnPage(paper);
  const lengthMm = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const horizontal = to[0] !== from[0];
  // Whole pixels along the way, so that no pixel is weighed twice.
  const startPx = (horizontal ? from[0] + left : from[1] + top) * pxPerMm;
  const endPx = startPx + lengthMm * pxPerMm;
  const acrossPx = Math.floor((horizontal ? from[1] + top : from[0] + left) * pxPerMm);
  let ink = 0;
  let moment = 0;
  for (let p = Math.ceil(startPx); p < Math.floor(endPx); p++) {
    const index = horizontal ? acrossPx * raster.widthPx + p : p * raster.widthPx + acrossPx;
    const dark = 255 - raster.grey[index]!;
    ink += dark;
    moment += dark * (p + 0.5);
  }
  return (moment / ink - (startPx + endPx) / 2) / pxPerMm;
}

/** Share of pixels darker than mid grey in a rectangle, card frame. */
function darkShare(
  raster: Raster,
  paper: Paper,
  [xMm, yMm, widthMm, heightMm]: readonly [number, number, number, number],
): number {
  const [left, top] = cardOnPage(paper);
  const px = (mm: number) => Math.round(mm * pxPerMm);
  let dark = 0;
  let all = 0;
  for (let y = px(top + yMm); y < px(top + yMm + heightMm); y++)
    for (let x = px(left + xMm); x < px(left + xMm + widthMm); x++) {
      all++;
      if (raster.grey[y * raster.widthPx + x]! < 128) dark++;
    }
  return dark / all;
}

function mean(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0) / values.length;
}
