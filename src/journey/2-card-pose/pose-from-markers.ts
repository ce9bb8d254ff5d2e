import * as portable from '../../quantity/portable-math';
import { card, markers } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { PhotoPoint } from '../overlay';
import { posed, tiltRad, type Vec3 } from './camera';
import type { CardShape } from './camera-problem';
import { type EdgeResponse, edgeResponse } from './edge-response';
import { type CameraFit, fitCamera } from './fit-camera';
import { lensPriors, mayContradict, mixed, overLenses, weightOfStatement } from './focal-length';
import { homography, poseFromHomography, scaleAt } from './homography';
import { type EdgePoint, markerEdges, type PrintView } from './marker-edges';

export interface DetectedMarker {
  readonly id: number;
  /** Clockwise from the marker's own top left, photo frame. */
  readonly corners: readonly PhotoPoint[];
}

export interface PosedCard extends CameraFit {
  readonly response: EdgeResponse;
  readonly tiltRad: number;
  readonly notFlat: boolean;
  /** Whether the focal length stated by the photo was believed. */
  readonly usedExif: boolean;
}

/** By how much printers stretch one way more than the other, apart from any scaling of the page
 *  (common practice: about a tenth of a per cent). */
const uPrinterAspect = 0.001;

/** Rise of a sheet at `bowAtMm`, standard deviation: 0.3 to 0.4 mm is usual (common practice); wider, since
 *  three independent numbers count the one rise of a cylinder twice over. */
const uSheetBowMm = 0.6;

/** From which the card fills most of a photo (common practice). */
const usualDistanceMm = 300;

export interface PrintScale {
  readonly x: number;
  readonly y: number;
  /** Of y, the shorter bar's, relative. */
  readonly u: number;
}

/** Two bars read by rule say less of how x and y differ than what printers are like does: both
 *  together. The longer bar, known better, gives way less. */
function withPrinterAspect({ x, y, u }: PrintScale): PrintScale & { uAspect: number } {
  const ux = (u * card.bars.vertical.lengthMm) / card.bars.horizontal.lengthMm;
  const variance = ux * ux + u * u;
  const share = variance / (variance + uPrinterAspect ** 2);
  const excess = share * portable.log(y / x);
  return {
    x: x * portable.exp((excess * ux * ux) / variance),
    y: y * portable.exp((-excess * u * u) / variance),
    u,
    uAspect: uPrinterAspect * Math.sqrt(share),
  };
}

/** Detected corners as points on the two sides that meet in them. */
function cornerPoints(detected: readonly DetectedMarker[]): EdgePoint[] {
  const half = card.markerSideMm / 2;
  return detected.flatMap(({ id, corners }) =>
    corners.flatMap((measured, i) => {
      const right = i === 1 || i === 2 ? 1 : -1;
      const down = i >= 2 ? 1 : -1;
      const onCard: Vec3 = [markers[id].xMm + right * half, markers[id].yMm + down * half, 0];
      const common = { markerId: id, onCard, measured, uPx: 0.5, blurPx: 1 };
      return [
        { ...common, side: 4 * id + (right > 0 ? 1 : 3), outward: [right, 0, 0] as const },
        { ...common, side: 4 * id + (down > 0 ? 2 : 0), outward: [0, down, 0] as const },
      ];
    }),
  );
}

export function poseFromMarkers(
  grey: GreyImage,
  detected: readonly DetectedMarker[],
  f35Mm: number | null,
  print: PrintScale,
): PosedCard | null {
  const scale = withPrinterAspect(print);
  const half = card.markerSideMm / 2;
  const corners = detected.flatMap(({ id, corners }) => {
    const { xMm, yMm } = markers[id];
    return corners.map((photo, i) => ({
      card: [
        (xMm + (i === 1 || i === 2 ? half : -half)) * scale.x,
        (yMm + (i >= 2 ? half : -half)) * scale.y,
      ] as const,
      photo,
    }));
  });
  const H = homography(corners);
  if (!H) return null;
  const pxPerMm = scaleAt(H, card.widthMm / 2, card.heightMm / 2);
  const { stated, open, usual } = lensPriors(grey, f35Mm, pxPerMm, usualDistanceMm);
  const shape: CardShape = {
    scaleX: scale.x,
    scaleY: scale.y,
    uAspect: scale.uAspect,
    uBowMm: uSheetBowMm,
  };
  const ids = detected.map((m) => m.id);

  // A wrong focal length bends the first pose; the corners straighten it before sides are sought.
  const first = stated ?? open;
  const start = posed(poseFromHomography(H, first.fPx, first.cx, first.cy));
  let fit = fitCamera(cornerPoints(detected), start, first, shape);
  const viewBy = ({ camera, bow }: CameraFit): PrintView => ({
    grey,
    camera,
    bow,
    printScale: scale,
  });
  let points: EdgePoint[] = [];
  for (const reachMm of [1.9, 1.5]) {
    points = markerEdges(viewBy(fit), ids, reachMm);
    if (points.length < 40) return null;
    fit = fitCamera(points, fit.camera, first, shape);
  }
  let exifWeight = stated ? 1 : 0;
  if (!stated) {
    const { camera, scale: noise } = fit;
    fit = overLenses(usual, (prior) => fitCamera(points, camera, prior, shape, noise));
  } else if (mayContradict(fit)) {
    const alone = fitCamera(points, fit.camera, open, shape, fit.scale);
    exifWeight = weightOfStatement(fit, alone);
    if (exifWeight < 0.9)
      fit = mixed(fit, fitCamera(points, alone.camera, open, shape), exifWeight);
  }
  return {
    ...fit,
    response: edgeResponse(viewBy(fit), ids, fit.blurPx),
    tiltRad: tiltRad(fit.camera),
    notFlat: isBowed(fit),
    usedExif: exifWeight > 0.5,
  };
}

/** Beyond this the sheet is worth laying flat, and the fit is sure of it. */
const isBowed = ({ largestBow: { riseMm, uMm } }: CameraFit): boolean =>
  Math.abs(riseMm) > 0.25 && Math.abs(riseMm) > 4 * uMm;
