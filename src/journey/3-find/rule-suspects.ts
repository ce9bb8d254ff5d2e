import * as portable from '../../quantity/portable-math';
import { cardMiddle } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { Vision } from '../../vision/vision';
import type { Reference } from '../2-reference/reference';
import type { Part } from './find-fitting';
import { type Blob, fittingBlobs } from './fitting-blob';
import { roughAxes } from './rough-axis';
import { type WindowView, windowView } from './window-view';

/** Something beside a rule that may carry a thread. */
export interface Suspect extends Part {
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

/** The whole photo, reduced, in the rule's plane; `inMm`: the reference whose unit is a millimetre. */
export function besideRuleView(grey: GreyImage, inMm: Reference, pxPerMm: number): WindowView {
  const areaMm2 = (grey.width * grey.height) / pxPerMm ** 2;
  return windowView(grey, inMm, Math.min(viewPxPerMm, pxPerMm, Math.sqrt(mostViewPx / areaMm2)));
}

/** Groups of crisp edges anywhere but on the rule's graduations, largest first; edges within `gapMm` belong to one. */
export function suspects(view: WindowView, vision: Vision, gapMm: number): Suspect[] {
  const look = view.outside ? { ignored: view.outside } : {};
  return fittingBlobs(view, vision, { ...look, gapMm, most: 2 * mostSuspects })
    .map((blob) => ({ blob, widthMm: narrowest(blob) / view.pxPerMm }))
    .filter(
      ({ blob, widthMm }) =>
        blob.hullAreaMm2 > smallestMm2 && widthMm > narrowestMm && widthMm < widestMm,
    )
    .slice(0, mostSuspects)
    .map(({ blob, widthMm }) => ({
      view,
      blob,
      widthMm,
      axes: roughAxes(blob),
    }));
}

/** The same in another unit of length, in the frame of that unit's reference. */
export function inUnit(suspect: Suspect, unitMm: number): Suspect {
  const { view } = suspect;
  const [x, y] = cardMiddle;
  return {
    ...suspect,
    view: {
      ...view,
      pxPerMm: view.pxPerMm * unitMm,
      originXMm: x + (view.originXMm - x) / unitMm,
      originYMm: y + (view.originYMm - y) / unitMm,
    },
  };
}

function narrowest({ hull }: Blob): number {
  let best = Number.POSITIVE_INFINITY;
  for (let a = 0; a < Math.PI; a += Math.PI / 36) {
    const across = hull.map(([x, y]) => -x * portable.sin(a) + y * portable.cos(a));
    best = Math.min(best, Math.max(...across) - Math.min(...across));
  }
  return best;
}
