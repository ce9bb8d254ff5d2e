import { ok, type Result, refuse } from '../../quantity/result';
import type { Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { Vision } from '../../vision/vision';
import type { FoundCard } from '../2-card-pose/find-card';
import type { RefusalReason } from '../identification';
import { type Blob, fittingBlobs } from './fitting-blob';
import { type RoughAxis, roughAxes } from './rough-axis';
import { fieldOf, type WindowView, windowView } from './window-view';

export interface FoundFitting {
  readonly view: WindowView;
  readonly field: Field;
  readonly blob: Blob;
  /** Mirror lines, likeliest first. */
  readonly axes: readonly RoughAxis[];
}

const viewPxPerMm = 5;
/** A thread of M8 on a plug covers about this much, mm². */
const smallestMm2 = 90;

/** The one fitting in the card's window. */
export function findFitting(
  grey: GreyImage,
  card: FoundCard,
  vision: Vision,
  scale: { readonly x: number; readonly y: number },
): Result<FoundFitting, RefusalReason> {
  const view = windowView(grey, card.camera, scale, viewPxPerMm);
  const blobs = fittingBlobs(view, vision).filter((blob) => blob.hullAreaMm2 > smallestMm2);
  const [blob, second] = blobs;
  if (!blob)
    return refuse(
      'no-thread',
      'No fitting is seen in the card’s window: lay it inside the ring of squares, thread in full view.',
    );
  if (second && second.hullAreaMm2 > 0.35 * blob.hullAreaMm2 && second.hullAreaMm2 > 250)
    return refuse(
      'several-fittings',
      'More than one thing lies in the window: shoot one fitting at a time.',
    );
  return ok({
    view,
    field: fieldOf(view, paperLevel(card, grey)),
    blob,
    axes: roughAxes(blob),
  });
}

/** Grey level of the paper beside the markers. */
function paperLevel(card: FoundCard, grey: GreyImage): number {
  const levels = card.detected.flatMap(({ corners }) => {
    // Just outside a corner, along the marker's diagonal, lies paper.
    const [a, , c] = corners;
    const x = Math.round(a[0] + 0.09 * (a[0] - c[0]));
    const y = Math.round(a[1] + 0.09 * (a[1] - c[1]));
    return x >= 0 && y >= 0 && x < grey.width && y < grey.height
      ? [grey.data[y * grey.width + x]]
      : [];
  });
  levels.sort((p, q) => p - q);
  return levels[levels.length >> 1] ?? 200;
}
