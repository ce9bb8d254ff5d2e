import { middleValue, quantile } from '../quantity/order';
import { card, markers } from '../scale-card/geometry';
import type { GreyImage } from '../vision/grey-image';
import { rescaleCoordinate } from '../vision/pixel-scale';
import type { Vision } from '../vision/vision';
import { posed, tiltRad } from './2-card-pose/camera';
import { homography, poseFromHomography } from './2-card-pose/homography';
import type { RectangleKind } from './2-reference/rectangles';
import { seenOutline } from './guidance-outline';
import { type GuidedEnd, tiltFault } from './guided-tilt';
import type { PhotoPoint } from './overlay';

/** What the live view tells the person who holds the camera. Quick and rough: nothing here is
 *  measured with, and the photo itself is judged anew. */
export interface Guidance {
  /** The card, with enough of its markers, or the outline that was asked for. */
  readonly referenceSeen: boolean;
  /** Good to a few degrees: the focal length is a phone's usual one. */
  readonly tiltDeg: number | null;
  readonly tooNear: boolean;
  readonly tooDark: boolean;
  readonly moving: boolean;
  readonly lowContrast: boolean;
  /** Of the printed card: nobody is told to use the field that lies there. */
  readonly field: 'light' | 'dark' | null;
  /** Nothing lies in the window. */
  readonly fittingOutside: boolean;
  readonly ready: boolean;
}

/** One frame's markers, kept to see whether the next one has moved. */
export interface SeenFrame {
  readonly corners: ReadonlyMap<number, readonly PhotoPoint[]>;
}

/** Common practice throughout: limits that a person can meet by hand, well inside what measures. */
const limits = {
  detectionWidthPx: 800,
  leastMarkers: 12,
  /** Nearer than this, height counts for too much. */
  leastDistanceMm: 150,
  /** White paper, grey levels. */
  darkestPaper: 90,
  /** On the card, from frame to frame. */
  mostMotionMm: 0.5,
  /** An outline's corners are found to a pixel of a small picture. */
  mostOutlineMotionMm: 2,
  /** Pixels of the window view on a fitting's edges and ridges. */
  fewestEdgePixels: 150,
  /** Grey levels per pixel of the window view, on the stronger of those edges. */
  faintestEdge: 14,
};

/** Of a phone's main camera in video, 35 mm equivalent over the diagonal of 43.27 mm. */
const usualFocalShare = 27 / 43.27;
const usualFocalPx = ({ width, height }: { width: number; height: number }) =>
  usualFocalShare * Math.hypot(width, height);

export function judgeFrame(
  frame: GreyImage,
  before: SeenFrame | null,
  vision: Vision,
  outline: RectangleKind | null = null,
  end: GuidedEnd = 'male',
): { readonly guidance: Guidance; readonly seen: SeenFrame } {
  const corners = findCorners(frame, vision);
  if (outline && corners.size < fewestOfACard)
    return judgeOutline(frame, before, vision, outline, end);
  const seen = { corners };
  const H = corners.size >= 4 ? homography(correspondences(corners)) : null;
  const pxPerMm = H && Math.sqrt(Math.abs(H[0] * H[4] - H[1] * H[3]));
  const moved = pxPerMm && before ? motionPx(corners, before.corners) / pxPerMm : null;
  const pose = H && poseOf(frame, H);
  const window = H && windowEdges(frame, H);
  const judged = {
    referenceSeen: corners.size >= limits.leastMarkers,
    tiltDeg: pose?.tiltDeg ?? null,
    tooNear: pose !== null && pose.distanceMm < limits.leastDistanceMm,
    tooDark: (window?.paperLevel ?? brightest(frame.data, 31)) < limits.darkestPaper,
    moving: moved !== null && moved > limits.mostMotionMm,
    field: window?.field ?? null,
    lowContrast: window !== null && window.count > 0 && window.strength < limits.faintestEdge,
    fittingOutside: window !== null && window.count < limits.fewestEdgePixels,
  };
  const tilted = judged.tiltDeg !== null && tiltFault(judged.tiltDeg, end) !== null;
  const ready =
    judged.referenceSeen &&
    moved !== null &&
    !(judged.moving || judged.tooNear || judged.tooDark || tilted) &&
    !(judged.lowContrast || judged.fittingOutside);
  return { guidance: { ...judged, ready }, seen };
}

/** The card is meant wherever some of it is seen. */
const fewestOfACard = 4;

/** The same beside a bank card or on a sheet. Where the fitting lies, and how it stands out, is left to the
 *  photo. */
function judgeOutline(
  frame: GreyImage,
  before: SeenFrame | null,
  vision: Vision,
  kind: RectangleKind,
  end: GuidedEnd,
): { readonly guidance: Guidance; readonly seen: SeenFrame } {
  const found = seenOutline(frame, usualFocalPx(frame), kind, vision);
  const corners = new Map<number, readonly PhotoPoint[]>(found ? [[0, found.corners]] : []);
  const moved = found && before ? motionPx(corners, before.corners) / found.pxPerMm : null;
  const judged = {
    referenceSeen: found !== null,
    tiltDeg: found?.tiltDeg ?? null,
    tooNear: found !== null && found.distanceMm < limits.leastDistanceMm,
    tooDark: brightest(frame.data, 31) < limits.darkestPaper,
    moving: moved !== null && moved > limits.mostOutlineMotionMm,
    lowContrast: false,
    field: null,
    fittingOutside: false,
  };
  const tilted = judged.tiltDeg !== null && tiltFault(judged.tiltDeg, end) !== null;
  const ready =
    judged.referenceSeen &&
    moved !== null &&
    !(judged.moving || judged.tooNear || judged.tooDark || tilted);
  return { guidance: { ...judged, ready }, seen: { corners } };
}

function findCorners(frame: GreyImage, vision: Vision): Map<number, PhotoPoint[]> {
  const width = Math.min(limits.detectionWidthPx, frame.width);
  const height = Math.round((frame.height * width) / frame.width);
  const small = vision.resize(frame, width, height);
  return new Map(
    vision
      .detectMarkers(small)
      .markers.filter(({ id }) => id < markers.length)
      .map(({ id, corners }) => [
        id,
        corners.map(
          ([x, y]): PhotoPoint => [
            rescaleCoordinate(x, width, frame.width),
            rescaleCoordinate(y, height, frame.height),
          ],
        ),
      ]),
  );
}

function correspondences(corners: ReadonlyMap<number, readonly PhotoPoint[]>) {
  const half = card.markerSideMm / 2;
  return [...corners].flatMap(([id, found]) =>
    found.map((photo, i) => ({
      card: [
        markers[id].xMm + (i === 1 || i === 2 ? half : -half),
        markers[id].yMm + (i >= 2 ? half : -half),
      ] as const,
      photo,
    })),
  );
}

function motionPx(now: SeenFrame['corners'], before: SeenFrame['corners']): number {
  let sum = 0;
  let count = 0;
  for (const [id, corners] of now) {
    before.get(id)?.forEach(([x, y], i) => {
      sum += Math.hypot(corners[i][0] - x, corners[i][1] - y);
      count++;
    });
  }
  return count > 0 ? sum / count : Number.POSITIVE_INFINITY;
}

function poseOf({ width, height }: GreyImage, H: Float64Array) {
  const fPx = usualFocalPx({ width, height });
  const camera = posed(poseFromHomography(H, fPx, (width - 1) / 2, (height - 1) / 2));
  return {
    tiltDeg: (tiltRad(camera) * 180) / Math.PI,
    distanceMm: Math.hypot(...camera.translation),
  };
}

/** Edges inside the card's window, seen square-on at 2 px/mm. */
function windowEdges(frame: GreyImage, H: Float64Array) {
  const { xMm, yMm, widthMm, heightMm } = card.window;
  const insetMm = 2;
  const width = 2 * (widthMm - 2 * insetMm);
  const height = 2 * (heightMm - 2 * insetMm);
  const at = (x: number, y: number) => greyAt(frame, H, x, y);
  const view = new Uint8Array(width * height);
  for (let j = 0; j < height; j++) {
    for (let i = 0; i < width; i++) {
      view[j * width + i] = at(xMm + insetMm + i / 2, yMm + insetMm + j / 2);
    }
  }
  const slopes: number[] = [];
  for (let j = 1; j < height - 1; j++) {
    for (let i = 1; i < width - 1; i++) {
      const k = j * width + i;
      slopes.push(Math.hypot(view[k + 1] - view[k - 1], view[k + width] - view[k - width]) / 2);
    }
  }
  const sorted = Float32Array.from(slopes).sort();
  // Most of the window is empty: half of its slopes are noise.
  const level = Math.max(5, 5 * quantile(sorted, 0.5));
  const edges = sorted.subarray(sorted.findIndex((slope) => slope > level));
  const strong = sorted[sorted.length - 1] > level;
  const paper = paperLevel(at);
  const ground = quantile(view.slice().sort(), 0.5);
  return {
    count: strong ? edges.length : 0,
    strength: strong ? quantile(edges, 0.75) : 0,
    paperLevel: paper,
    field: ground < paper / 2 ? ('dark' as const) : ('light' as const),
  };
}

/** The gaps between neighbouring markers of the top and bottom row are bare paper. */
function paperLevel(at: (xMm: number, yMm: number) => number): number {
  const levels = markers.flatMap(({ xMm, yMm }, i) => {
    const next = markers[i + 1];
    return next?.yMm === yMm ? [at((xMm + next.xMm) / 2, yMm)] : [];
  });
  return middleValue(levels);
}

function greyAt({ width, height, data }: GreyImage, H: Float64Array, x: number, y: number): number {
  const w = H[6] * x + H[7] * y + H[8];
  const u = Math.round((H[0] * x + H[1] * y + H[2]) / w);
  const v = Math.round((H[3] * x + H[4] * y + H[5]) / w);
  return u >= 0 && v >= 0 && u < width && v < height ? data[v * width + u] : 0;
}

/** 95th percentile of every `step`th value. */
function brightest(data: Uint8Array, step: number): number {
  const sample = data.filter((_, i) => i % step === 0).sort();
  return quantile(sample, 0.95);
}
