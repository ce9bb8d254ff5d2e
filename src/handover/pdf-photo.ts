import {
  closePath,
  concatTransformationMatrix,
  drawObject,
  lineTo,
  moveTo,
  type PDFDocument,
  type PDFPage,
  popGraphicsState,
  pushGraphicsState,
  rgb,
  setDashPattern,
  setLineWidth,
  setStrokingColor,
  stroke,
} from 'pdf-lib';
import type { Overlay, PhotoPoint } from '../journey/overlay';

export interface PrintedPhoto {
  /** As stored; printed upright by its orientation. */
  readonly jpeg: Uint8Array;
  /** EXIF orientation, 1…8. */
  readonly orientation: number;
  readonly overlay: Overlay | null;
}

/** Frame: PDF page points, y up, from the lower left corner. */
export interface Box {
  readonly xPt: number;
  readonly yPt: number;
  readonly widthPt: number;
  readonly heightPt: number;
}

/** Draws a photo upright and whole into a box, with what was found on it. Gives back the part of
 *  the box that it fills, top left. */
export async function drawPhoto(
  doc: PDFDocument,
  page: PDFPage,
  { jpeg, orientation, overlay }: PrintedPhoto,
  box: Box,
): Promise<Box> {
  const image = await doc.embedJpg(jpeg);
  const turned = orientation >= 5;
  const width = turned ? image.height : image.width;
  const height = turned ? image.width : image.height;
  const scale = Math.min(box.widthPt / width, box.heightPt / height);
  const filled: Box = {
    xPt: box.xPt,
    yPt: box.yPt + box.heightPt - height * scale,
    widthPt: width * scale,
    heightPt: height * scale,
  };
  // Corners of the image's unit square on the page (ISO 32000-1, 8.3.4): its origin, and the ends
  // of its lower and left edges.
  const corner = (u: number, v: number): [number, number] => {
    const [x, y] = uprightShare(orientation, u, 1 - v);
    return [filled.xPt + x * filled.widthPt, filled.yPt + (1 - y) * filled.heightPt];
  };
  const [ox, oy] = corner(0, 0);
  const [ux, uy] = corner(1, 0);
  const [vx, vy] = corner(0, 1);
  const name = page.node.newXObject('Photo', image.ref);
  page.pushOperators(
    pushGraphicsState(),
    concatTransformationMatrix(ux - ox, uy - oy, vx - ox, vy - oy, ox, oy),
    drawObject(name),
    popGraphicsState(),
  );
  if (overlay) drawOverlay(page, overlay, filled);
  return filled;
}

/** Where a point of the stored image lies upright; both as shares of width and height from the
 *  top left. CIPA DC-008 (Exif 2.32), Orientation. */
function uprightShare(orientation: number, x: number, y: number): readonly [number, number] {
  switch (orientation) {
    case 2:
      return [1 - x, y];
    case 3:
      return [1 - x, 1 - y];
    case 4:
      return [x, 1 - y];
    case 5:
      return [y, x];
    case 6:
      return [1 - y, x];
    case 7:
      return [1 - y, 1 - x];
    case 8:
      return [y, 1 - x];
    default:
      return [x, y];
  }
}

const ink = {
  outline: rgb(0, 0.45, 0.7),
  found: rgb(0.8, 0.3, 0),
} as const;

function drawOverlay(page: PDFPage, overlay: Overlay, box: Box): void {
  const at = ([x, y]: PhotoPoint): [number, number] => [
    box.xPt + ((x + 0.5) / overlay.widthPx) * box.widthPt,
    box.yPt + (1 - (y + 0.5) / overlay.heightPx) * box.heightPt,
  ];
  const line = (points: readonly PhotoPoint[], closed = false) =>
    points.length < 2
      ? []
      : [
          ...points.map((point, i) => (i === 0 ? moveTo : lineTo)(...at(point))),
          ...(closed ? [closePath()] : []),
          stroke(),
        ];
  const tickPt = 1.6;
  const cross = (point: PhotoPoint) => {
    const [x, y] = at(point);
    return [
      moveTo(x - tickPt, y - tickPt),
      lineTo(x + tickPt, y + tickPt),
      moveTo(x - tickPt, y + tickPt),
      lineTo(x + tickPt, y - tickPt),
      stroke(),
    ];
  };
  page.pushOperators(
    pushGraphicsState(),
    setLineWidth(0.5),
    setStrokingColor(ink.outline),
    ...overlay.markers.flatMap(({ corners }) => line(corners, true)),
    ...overlay.outline.flatMap((points) => line(points)),
    setStrokingColor(ink.found),
    ...overlay.contactLines.flatMap((points) => line(points)),
    ...overlay.crests.flatMap(({ at: point }) => cross(point)),
    // Chain line for an axis (ISO 128-2).
    setDashPattern([6, 1.5, 1, 1.5], 0),
    ...(overlay.axis ? line(overlay.axis) : []),
    popGraphicsState(),
  );
}
