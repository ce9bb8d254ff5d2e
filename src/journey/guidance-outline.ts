import type { GreyImage } from '../vision/grey-image';
import { rescaleCoordinate } from '../vision/pixel-scale';
import type { Vision } from '../vision/vision';
import { posed, tiltRad } from './2-card-pose/camera';
import { homography, poseFromHomography } from './2-card-pose/homography';
import { findQuads } from './2-reference/find-quads';
import { type RectangleKind, rectangles } from './2-reference/rectangles';
import { edgeField, straightEdges } from './2-reference/straight-edges';
import type { PhotoPoint } from './overlay';

/** A card or sheet in one frame of the live view, roughly. */
export interface SeenOutline {
  /** From the one nearest to the frame's top left corner on, clockwise. */
  readonly corners: readonly PhotoPoint[];
  readonly tiltDeg: number;
  readonly distanceMm: number;
  readonly pxPerMm: number;
}

/** Frames come several times a second: half of what a photo is searched at. */
const searchPx = 400;
/** Nobody is guided to a photo with a corner outside, or with a side that gloss or shadow turns over, though one may
 *  be measured. Lines meet two pixels beyond a rounded corner. */
const plain = { outside: 2 / searchPx, turnedSides: 0 };
/** By how much the sides may be in another proportion than the rectangle's, seen with a usual focal length. */
const mostOutOfShape = 0.08;

export function seenOutline(
  frame: GreyImage,
  fPx: number,
  kind: RectangleKind,
  vision: Vision,
): SeenOutline | null {
  const rectangle = rectangles.find((one) => one.kind === kind);
  if (!rectangle) return null;
  const factor = Math.min(1, searchPx / Math.max(frame.width, frame.height));
  const width = Math.round(frame.width * factor);
  const height = Math.round(frame.height * factor);
  const field = edgeField(vision.resize(frame, width, height));
  for (const quad of findQuads(field, straightEdges(field), 2, plain)) {
    const corners = fromTopLeft(
      quad.corners.map(
        ([x, y]): PhotoPoint => [
          rescaleCoordinate(x, width, frame.width),
          rescaleCoordinate(y, height, frame.height),
        ],
      ),
    );
    for (const upright of [false, true]) {
      const [w, h] = upright
        ? [rectangle.heightMm, rectangle.widthMm]
        : [rectangle.widthMm, rectangle.heightMm];
      const seen = seenAs(corners, w, h, frame, fPx);
      if (seen) return seen;
    }
  }
  return null;
}

function seenAs(
  corners: readonly PhotoPoint[],
  w: number,
  h: number,
  { width, height }: GreyImage,
  fPx: number,
): SeenOutline | null {
  const places = [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ] as const;
  const H = homography(places.map((card, i) => ({ card, photo: corners[i] })));
  if (!H) return null;
  const [cx, cy] = [(width - 1) / 2, (height - 1) / 2];
  // Of a true rectangle both columns are as long: they are a rotation's.
  const length = (j: 0 | 1) =>
    Math.hypot((H[j] - cx * H[6 + j]) / fPx, (H[3 + j] - cy * H[6 + j]) / fPx, H[6 + j]);
  if (Math.abs(length(0) / length(1) - 1) > mostOutOfShape) return null;
  const camera = posed(poseFromHomography(H, fPx, cx, cy));
  const distanceMm = Math.hypot(...camera.translation);
  return {
    corners,
    tiltDeg: (tiltRad(camera) * 180) / Math.PI,
    distanceMm,
    pxPerMm: fPx / distanceMm,
  };
}

function fromTopLeft(corners: readonly PhotoPoint[]): PhotoPoint[] {
  const first = corners.reduce(
    (best, [x, y], i) => (x + y < corners[best][0] + corners[best][1] ? i : best),
    0,
  );
  return [0, 1, 2, 3].map((i) => corners[(first + i) % 4]);
}
