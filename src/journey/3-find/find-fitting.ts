import { middleValue } from '../../quantity/order';
import { ok, type Result, refuse } from '../../quantity/result';
import type { Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { Vision } from '../../vision/vision';
import type { Reference } from '../2-reference/reference';
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
const mostViewPx = 2.5e6;
const mostBlobs = 20;
const coarser = 0.6;
/** A thread of M8 on a plug covers about this much, mm². */
const smallestMm2 = 90;

/** The one fitting where the reference says that it may lie. */
export function findFitting(
  grey: GreyImage,
  reference: Reference,
  vision: Vision,
): Result<FoundFitting, RefusalReason> {
  const scale = viewScale(reference);
  const fine = blobsAt(grey, reference, vision, scale);
  // In the noise of a dark photo a coarser view shows edges that a fine one does not.
  const coarse = fine.count === 1 ? null : blobsAt(grey, reference, vision, coarser * scale);
  const { view, blob, count } = coarse && coarse.count > 0 ? coarse : fine;
  if (!blob)
    return refuse(
      'no-thread',
      reference.kind === 'card'
        ? 'No fitting is seen in the card’s window: lay it inside the ring of squares, thread in full view.'
        : 'No fitting is seen: lay it on the sheet, or on the table right beside the card, thread in full view.',
    );
  if (count > 1)
    return refuse(
      'several-fittings',
      'More than one thing lies in the window: shoot one fitting at a time.',
    );
  return ok({
    view,
    field: reference.search.field ?? fieldOf(view, paperLevel(reference, grey)),
    blob,
    axes: roughAxes(blob),
  });
}

/** The window as seen at a scale, the largest thing in it, and how many fittings there seem to be: parts of one may show
 *  no edge between them, two of them lie apart. */
function blobsAt(grey: GreyImage, reference: Reference, vision: Vision, pxPerMm: number) {
  const view = windowView(grey, reference, pxPerMm);
  const look = view.outside ? { ignored: view.outside, most: mostBlobs } : {};
  const [blob, second] = fittingBlobs(view, vision, look).filter(
    (one) => one.hullAreaMm2 > smallestMm2,
  );
  const another =
    second && second.hullAreaMm2 > 0.35 * blob.hullAreaMm2 && second.hullAreaMm2 > 250;
  return { view, blob, count: another ? 2 : blob ? 1 : 0 };
}

/** What the fitting lies on, wherever it lies. */
export function fieldAround(grey: GreyImage, reference: Reference): Field {
  if (reference.search.field) return reference.search.field;
  const view = windowView(grey, reference, viewScale(reference));
  return fieldOf(view, paperLevel(reference, grey));
}

/** A table around a bank card is larger than the scale card's window. */
function viewScale({ search: { polygon } }: Reference): number {
  const extent = (k: 0 | 1) =>
    Math.max(...polygon.map((p) => p[k])) - Math.min(...polygon.map((p) => p[k]));
  return Math.min(viewPxPerMm, Math.sqrt(mostViewPx / (extent(0) * extent(1))));
}

/** Grey level of the paper beside the markers. */
function paperLevel({ detected }: Reference, grey: GreyImage): number {
  const levels = detected.flatMap(({ corners }) => {
    // Just outside a corner, along the marker's diagonal, lies paper.
    const [a, , c] = corners;
    const x = Math.round(a[0] + 0.09 * (a[0] - c[0]));
    const y = Math.round(a[1] + 0.09 * (a[1] - c[1]));
    return x >= 0 && y >= 0 && x < grey.width && y < grey.height
      ? [grey.data[y * grey.width + x]]
      : [];
  });
  return middleValue(levels) ?? 200;
}
