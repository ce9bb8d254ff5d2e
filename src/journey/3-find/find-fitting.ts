import { middleValue } from '../../quantity/order';
import { ok, type Result, refuse } from '../../quantity/result';
import type { Field } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import type { Vision } from '../../vision/vision';
import type { Reference } from '../2-reference/reference';
import type { RefusalReason } from '../identification';
import { type Blob, fittingBlobs, together } from './fitting-blob';
import { type RoughAxis, roughAxes } from './rough-axis';
import { fieldOf, type WindowView, windowView } from './window-view';

/** Something that lies by itself in the window. */
export interface Part {
  readonly view: WindowView;
  readonly blob: Blob;
  /** Mirror lines, likeliest first. */
  readonly axes: readonly RoughAxis[];
}

/** All that lies in the window, as one thing. */
export interface FoundFitting extends Part {
  readonly field: Field;
  /** Where it is in pieces, each of them: of one fitting between which no edge is seen, or fittings side by side. */
  readonly pieces: readonly Part[];
}

const viewPxPerMm = 5;
const mostViewPx = 2.5e6;
const mostBlobs = 20;
const coarser = 0.6;
/** A thread of M8 on a plug covers about this much, mm². */
const smallestMm2 = 90;
/** What may be a fitting beside the largest thing: as large as an M12 plug, and not small against that. */
const anotherMm2 = 250;
const anotherShare = 0.35;

/** What may be the fitting where the reference says that it lies. */
export function findFitting(
  grey: GreyImage,
  reference: Reference,
  vision: Vision,
): Result<FoundFitting, RefusalReason> {
  const scale = viewScale(reference);
  const fine = blobsAt(grey, reference, vision, scale);
  // In the noise of a dark photo a coarser view shows edges that a fine one does not.
  const coarse = fine.blobs.length === 1 ? null : blobsAt(grey, reference, vision, coarser * scale);
  const { view, blobs } = coarse && coarse.blobs.length > 0 ? coarse : fine;
  if (blobs.length === 0)
    return refuse(
      'no-thread',
      reference.kind === 'card'
        ? 'No fitting is seen in the card’s window: lay it inside the ring of squares, thread in full view.'
        : 'No fitting is seen: lay it on the sheet, or on the table right beside the card, thread in full view.',
    );
  const part = (one: Blob): Part => ({ view, blob: one, axes: roughAxes(one) });
  return ok({
    ...part(together(blobs)),
    field: reference.search.field ?? fieldOf(view, paperLevel(reference, grey)),
    pieces: blobs.length > 1 ? blobs.map(part) : [],
  });
}

/** The window as seen at a scale, and what in it is as large as fittings are: parts of one may show no edge between
 *  them, two of them lie apart. */
function blobsAt(grey: GreyImage, reference: Reference, vision: Vision, pxPerMm: number) {
  const view = windowView(grey, reference, pxPerMm);
  const look = view.outside ? { ignored: view.outside, most: mostBlobs } : {};
  const [blob, ...rest] = fittingBlobs(view, vision, look).filter(
    (one) => one.hullAreaMm2 > smallestMm2,
  );
  if (!blob) return { view, blobs: [] };
  const others = rest.filter(
    ({ hullAreaMm2 }) => hullAreaMm2 > anotherMm2 && hullAreaMm2 > anotherShare * blob.hullAreaMm2,
  );
  return { view, blobs: [blob, ...others] };
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
