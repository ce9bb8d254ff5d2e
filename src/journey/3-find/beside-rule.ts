import { middleValue } from '../../quantity/order';
import * as portable from '../../quantity/portable-math';
import type { Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import { rescaleCoordinate } from '../../vision/pixel-scale';
import type { Vision } from '../../vision/vision';
import type { PosedCamera } from '../2-card-pose/camera';
import { atHeight } from '../2-card-pose/camera';
import { type Blob, fittingBlobs } from './fitting-blob';
import { type RoughAxis, roughAxes } from './rough-axis';
import { isOnStrip, type RuleStrip } from './rule-strip';
import type { WindowView } from './window-view';

/** Something on the photo that may carry a thread. */
export interface Suspect {
  readonly blob: Blob;
  readonly axes: readonly RoughAxis[];
  readonly field: Field;
  /** Narrower side of the blob, mm. */
  readonly widthMm: number;
}

const viewPxPerMm = 5;
const mostViewPx = 8e5;
const mostSuspects = 10;
/** An M3 shows about this much of itself, mm² and mm. */
const smallestMm2 = 15;
const narrowestMm = 2;
/** No listed thread is as wide; a cloth or a desk full of things is. */
const widestMm = 75;

/** The whole photo reduced, as stage 3 wants it; `camera` looks straight down on the rule's plane. */
export function photoView(
  grey: GreyImage,
  camera: PosedCamera,
  pxPerMm: number,
  vision: Vision,
): WindowView {
  const areaMm2 = (grey.width * grey.height) / pxPerMm ** 2;
  const wanted = Math.min(viewPxPerMm, pxPerMm, Math.sqrt(mostViewPx / areaMm2));
  const width = Math.round((grey.width * wanted) / pxPerMm);
  const height = Math.round((grey.height * wanted) / pxPerMm);
  const { data } = width < grey.width ? vision.resize(grey, width, height) : grey;
  return {
    width,
    height,
    data,
    pxPerMm: (pxPerMm * width) / grey.width,
    outside: null,
    ...originOf(width, height, grey, camera),
  };
}

/** Groups of crisp edges anywhere but on the rule's graduations, largest first. */
export function suspects(
  view: WindowView,
  grey: GreyImage,
  strip: RuleStrip,
  vision: Vision,
  gapMm: number,
): Suspect[] {
  const ignored = new Uint8Array(view.data.length);
  for (let j = 0; j < view.height; j++) {
    for (let i = 0; i < view.width; i++) {
      const x = rescaleCoordinate(i, view.width, grey.width);
      const y = rescaleCoordinate(j, view.height, grey.height);
      if (isOnStrip(strip, [x, y])) ignored[j * view.width + i] = 1;
    }
  }
  return fittingBlobs(view, vision, { ignored, gapMm, most: 2 * mostSuspects })
    .map((blob) => ({ blob, widthMm: narrowest(blob) / view.pxPerMm }))
    .filter(
      ({ blob, widthMm }) =>
        blob.hullAreaMm2 > smallestMm2 && widthMm > narrowestMm && widthMm < widestMm,
    )
    .slice(0, mostSuspects)
    .map(({ blob, widthMm }) => ({
      blob,
      widthMm,
      axes: roughAxes(blob),
      field: fieldAround(view, blob),
    }));
}

/** The same view in another unit of length, over the card frame of that unit's camera. */
export function viewIn(
  view: WindowView,
  grey: GreyImage,
  camera: PosedCamera,
  unitMm: number,
): WindowView {
  const { width, height, data, pxPerMm } = view;
  return {
    width,
    height,
    data,
    pxPerMm: pxPerMm * unitMm,
    outside: null,
    ...originOf(width, height, grey, camera),
  };
}

function originOf(width: number, height: number, grey: GreyImage, camera: PosedCamera) {
  const [originXMm, originYMm] = atHeight(
    camera,
    [rescaleCoordinate(0, width, grey.width), rescaleCoordinate(0, height, grey.height)],
    0,
  );
  return { originXMm, originYMm };
}

function narrowest({ hull }: Blob): number {
  let best = Number.POSITIVE_INFINITY;
  for (let a = 0; a < Math.PI; a += Math.PI / 36) {
    const across = hull.map(([x, y]) => -x * portable.sin(a) + y * portable.cos(a));
    best = Math.min(best, Math.max(...across) - Math.min(...across));
  }
  return best;
}

/** On a background nearly black, metal is the brighter one; on any other it may be either. */
function fieldAround(view: WindowView, { hull, centroid }: Blob): Field {
  const at = (x: number, y: number) => {
    const i = Math.round(x);
    const j = Math.round(y);
    return i >= 0 && j >= 0 && i < view.width && j < view.height
      ? [view.data[j * view.width + i]]
      : [];
  };
  const levels = (factor: number, outMm: number) => {
    const list = hull.flatMap(([x, y]) => {
      const dx = x - centroid[0];
      const dy = y - centroid[1];
      const k = factor + (outMm * view.pxPerMm) / Math.max(1, Math.hypot(dx, dy));
      return at(centroid[0] + k * dx, centroid[1] + k * dy);
    });
    return middleValue(list) ?? 255;
  };
  const outside = levels(1, 2);
  return outside < 60 && levels(0.6, 0) > outside + 15 ? 'dark' : 'light';
}
