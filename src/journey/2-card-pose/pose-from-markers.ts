import * as portable from '../../quantity/portable-math';
import { card, markers } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import { diagonal35Mm } from '../1-photo/photo';
import type { PhotoPoint } from '../overlay';
import { posed, tiltRad, type Vec3 } from './camera';
import { type EdgeResponse, edgeResponse } from './edge-response';
import { type CameraFit, type CardShape, fitCamera, type LensPrior } from './fit-camera';
import { homography, poseFromHomography } from './homography';
import { type EdgePoint, markerEdges } from './marker-edges';

export interface DetectedMarker {
  readonly id: number;
  /** Clockwise from the marker's own top left, photo frame. */
  readonly corners: readonly PhotoPoint[];
}

export interface PosedCard extends CameraFit {
  readonly edgePoints: readonly EdgePoint[];
  readonly response: EdgeResponse;
  readonly tiltRad: number;
  readonly notFlat: boolean;
  /** Whether the focal length stated by the photo was believed. */
  readonly usedExif: boolean;
}

/** Stated whole millimetres and rounded marketing values are good to about 3 % (design, section 3): taken as
 *  bounds, any place between them as likely (JCGM 100:2008, 4.3.7). */
const uLnExif = 0.03 / Math.sqrt(3);
/** Phones from 13 to 120 mm equivalent, most near 26 or 50. */
const typicalF35Mm = 38;
const uLnUnknown = 0.5;

/** By how much printers stretch one way more than the other, apart from any scaling of the page
 *  (common practice: about a tenth of a per cent). */
const uPrinterAspect = 0.001;

export interface PrintScale {
  readonly x: number;
  readonly y: number;
  /** Of y, the shorter bar's, relative. */
  readonly u: number;
}

/** Two bars read by rule say less of how x and y differ than what printers are like does: both
 *  together. The longer bar, known better, gives way less. */
export function withPrinterAspect({ x, y, u }: PrintScale): PrintScale & { uAspect: number } {
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

/** Whether the card, asked alone, might find another focal length than the one stated. Were the fit
 *  linear, its own answer would lie from the stated one by z = Δ/√(u² − v), Δ and v the shift and
 *  variance with the statement (J. Hausman, Econometrica 46, 1978). Most photos are far from the 4
 *  that counts, and the fit without the statement is the longest of all. */
function mayContradict({ parameters, covariance }: CameraFit): boolean {
  const variance = Math.max(0, uLnExif * uLnExif - covariance[0]);
  return Math.abs(parameters[0]) > 2 * Math.sqrt(variance);
}

export function poseFromMarkers(
  grey: GreyImage,
  detected: readonly DetectedMarker[],
  f35Mm: number | null,
  print: PrintScale,
): PosedCard | null {
  const scale = withPrinterAspect(print);
  const corners = detected.flatMap(({ id, corners }) => {
    const { xMm, yMm } = markers[id];
    return corners.map((photo, i) => ({
      card: [
        (xMm + (i === 1 || i === 2 ? 6 : -6)) * scale.x,
        (yMm + (i >= 2 ? 6 : -6)) * scale.y,
      ] as const,
      photo,
    }));
  });
  const H = homography(corners);
  if (!H) return null;
  const diagonalPx = Math.hypot(grey.width, grey.height);
  const cx = (grey.width - 1) / 2;
  const cy = (grey.height - 1) / 2;
  const lens = (f35: number, uLnF: number): LensPrior => ({
    fPx: (f35 / diagonal35Mm) * diagonalPx,
    uLnF,
    cx,
    cy,
    uCentrePx: 0.003 * Math.max(grey.width, grey.height),
    uK1: 0.05,
  });
  const stated = f35Mm === null ? null : lens(f35Mm, uLnExif);
  const open = lens(typicalF35Mm, uLnUnknown);
  const flat: CardShape = { scaleX: scale.x, scaleY: scale.y, uAspect: scale.uAspect, uBowMm: 0 };
  const ids = detected.map((m) => m.id);

  const solve = (prior: LensPrior): { fit: CameraFit; points: EdgePoint[] } | null => {
    // A wrong focal length bends the first pose; the corners straighten it before sides are sought.
    const start = posed(poseFromHomography(H, prior.fPx, cx, cy));
    let camera = fitCamera(cornerPoints(detected), start, prior, flat).camera;
    let points: EdgePoint[] = [];
    let fit: CameraFit | null = null;
    for (const reachMm of [1.9, 1.5]) {
      points = markerEdges(grey, camera, ids, reachMm, scale);
      if (points.length < 40) return null;
      fit = fitCamera(points, camera, prior, flat);
      camera = fit.camera;
    }
    return fit && { fit, points };
  };

  let solved = solve(stated ?? open);
  if (!solved) return null;
  let prior = stated ?? open;
  let usedExif = stated !== null;
  if (stated && mayContradict(solved.fit)) {
    // A crop changes the angle of view behind EXIF's back: where the card alone says so, believe it.
    const alone = fitCamera(solved.points, solved.fit.camera, open, flat);
    const z =
      portable.log(alone.camera.fPx / stated.fPx) /
      Math.hypot(Math.sqrt(alone.covariance[0]), uLnExif);
    if (Math.abs(z) > 4) {
      solved = { fit: alone, points: solved.points };
      prior = open;
      usedExif = false;
    }
  }
  const bowed = fitCamera(solved.points, solved.fit.camera, prior, { ...flat, uBowMm: 1 });
  const notFlat = bowed.bowMm.some(
    (b, i) => Math.abs(b) > 0.25 && Math.abs(b) > 4 * bowed.uBowMm[i],
  );
  const fit = notFlat ? bowed : solved.fit;
  return {
    ...fit,
    edgePoints: solved.points,
    response: edgeResponse(grey, fit.camera, ids, scale, fit.blurPx),
    tiltRad: tiltRad(fit.camera),
    notFlat,
    usedExif,
  };
}
