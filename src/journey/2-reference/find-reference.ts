import { ok, type Result } from '../../quantity/result';
import { card } from '../../scale-card/geometry';
import type { Vision } from '../../vision/vision';
import type { Photo } from '../1-photo/photo';
import { project, type Vec3 } from '../2-card-pose/camera';
import { type FoundCard, findCard, searchPx } from '../2-card-pose/find-card';
import type { PrintScale } from '../2-card-pose/pose-from-markers';
import type { ReferenceAsked, RefusalReason } from '../identification';
import { findRectangle, nothingFound, rectangleByHand } from './find-rectangle';
import type { PlanePoint, Reference } from './reference';

/** With so many of the card's markers in the photo, it is the card that was meant. */
const fewestOfACard = 3;
/** The printed border of the dark field is an edge too. */
const insetMm = 1;

/** The reference in a photo: the scale card wherever it is seen, for it knows most; else, or when asked for,
 *  an ID-1 card or a sheet; with its corners where a person has shown them. */
export function findReference(
  photo: Photo,
  vision: Vision,
  print: PrintScale,
  { kind: wanted, corners }: ReferenceAsked,
): Result<Reference, RefusalReason> {
  const found = findCard(photo, vision, print);
  if (found.ok) return ok(cardReference(found.value, print));
  if (wanted === 'card' || found.reason === 'card-mirrored') return found;
  if (wanted === 'auto' && markersSeen(photo, vision) >= fewestOfACard) return found;
  const kind = wanted === 'auto' ? null : wanted;
  const outlined =
    corners && kind ? rectangleByHand(photo, corners, kind) : findRectangle(photo, vision, kind);
  if (outlined.ok || wanted !== 'auto') return outlined;
  // With nothing crisp, or nothing that could be meant, what the card would need says more.
  return outlined === nothingFound || found.reason === 'too-blurred' ? found : outlined;
}

function markersSeen({ grey }: Photo, vision: Vision): number {
  const factor = Math.min(1, searchPx / Math.max(grey.width, grey.height));
  const image = vision.resize(
    grey,
    Math.round(grey.width * factor),
    Math.round(grey.height * factor),
  );
  return vision.detectMarkers(image).markers.length;
}

function cardReference(found: FoundCard, print: PrintScale): Reference {
  const { xMm, yMm, widthMm, heightMm } = card.window;
  const rectangle = (x: number, y: number, w: number, h: number): PlanePoint[] =>
    [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
    ].map(([a, b]) => [a * print.x, b * print.y] as const);
  return {
    ...found,
    kind: 'card',
    faceMm: 0,
    outline: rectangle(0, 0, card.widthMm, card.heightMm).map(([x, y]) => {
      const at: Vec3 = [x, y, 0];
      return project(found.camera, at);
    }),
    brightInside: true,
    search: {
      polygon: rectangle(
        xMm + insetMm,
        yMm + insetMm,
        widthMm - 2 * insetMm,
        heightMm - 2 * insetMm,
      ),
      holes: [],
      field: null,
    },
  };
}
