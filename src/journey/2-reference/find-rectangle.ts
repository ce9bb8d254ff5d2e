import * as portable from '../../quantity/portable-math';
import { ok, type Result, refuse } from '../../quantity/result';
import { rescaleCoordinate } from '../../vision/pixel-scale';
import type { Vision } from '../../vision/vision';
import type { Photo } from '../1-photo/photo';
import { type PosedCamera, project, tiltRad } from '../2-card-pose/camera';
import { gaussianResponse } from '../2-card-pose/edge-response';
import { mayContradict, mixed, weightOfStatement } from '../2-card-pose/focal-length';
import { isTooBlurred } from '../2-card-pose/sharpness';
import type { RefusalReason } from '../identification';
import type { PhotoPoint } from '../overlay';
import { cornerCutsMm } from './corner-cut';
import { findQuads } from './find-quads';
import { fitRectangle, onRectangle, type RectangleFit } from './fit-rectangle';
import { type OutlineSides, outlineSides, unitCorners } from './outline-sides';
import { type RectangleKind, rectangles } from './rectangles';
import type { Reference } from './reference';
import { searchRegion } from './search-region';
import { edgeField, straightEdges } from './straight-edges';

/** Long side at which outlines are sought, px. */
const searchPx = 640;
const mostQuads = 4;
/** Below this probability of its name a rectangle is not taken for a reference unasked. */
const sureEnough = 0.9;
/** Above it, the user's word for what it is counts. */
const possible = 0.02;
/** A fitting on a sheet takes up to 0.04 of it (renders); print takes more. */
const mostOnSheet = 0.07;
/** What lies there whole shows all of its edges: 0.98 and more on renders of sheets; what is put together
 *  from other lines, 0.86 and less. Asked for, a sheet may do with less. */
const leastWhole = 0.9;

interface Outline {
  readonly sides: OutlineSides;
  readonly brightInside: boolean;
  /** Whether it may be a sheet of paper with at most a fitting on it. */
  readonly blank: boolean;
}

/** One rectangle that an outline may be. */
interface Named {
  readonly fit: RectangleFit;
  readonly probability: number;
  /** Cost per point: about 1/2 where it is this rectangle. */
  readonly misfit: number;
}

/** A card or sheet whose size everybody knows, found by its outline. `kind` where the user says which it
 *  is; otherwise the outline's own proportions and corners must say so clearly. */
export function findRectangle(
  photo: Photo,
  vision: Vision,
  kind: RectangleKind | null,
): Result<Reference, RefusalReason> {
  const { grey } = photo;
  const factor = Math.min(1, searchPx / Math.max(grey.width, grey.height));
  const width = Math.round(grey.width * factor);
  const height = Math.round(grey.height * factor);
  const field = edgeField(factor < 1 ? vision.resize(grey, width, height) : grey);
  let stranger: Named | null = null;
  for (const quad of findQuads(field, straightEdges(field), mostQuads)) {
    const corners = quad.corners.map(
      ([x, y]) =>
        [
          rescaleCoordinate(x, width, grey.width),
          rescaleCoordinate(y, height, grey.height),
        ] as const,
    );
    const sides = outlineSides(grey, corners, quad.brightInside, 2.5 / factor + 3);
    if (!sides) continue;
    const blank =
      quad.brightInside &&
      quad.steepShare < mostOnSheet &&
      (kind !== null || quad.score > leastWhole);
    const outline = { sides, brightInside: quad.brightInside, blank };
    const names = namesOf(photo, outline);
    const seen = referenceAmong(names, kind);
    if (seen) return referenceFrom(photo, outline, seen.fit, seen.kind);
    // A stranger gets its name only when it is seen whole.
    const whole = kind !== null || quad.score > leastWhole;
    if (!stranger && whole && names[0].misfit < mostMisfit) stranger = names[0];
  }
  return stranger ? notAReference(stranger, kind) : nothingFound;
}

/** The same from four corners shown by hand, one after the other round the outline: within about 2 % of
 *  the photo's width. */
export function rectangleByHand(
  photo: Photo,
  shown: readonly PhotoPoint[],
  kind: RectangleKind,
): Result<Reference, RefusalReason> {
  const { grey } = photo;
  const corners = isClockwise(shown) ? shown : [...shown].reverse();
  const reachPx = 0.02 * Math.max(grey.width, grey.height);
  let best: { outline: Outline; names: Named[] } | null = null;
  for (const brightInside of [true, false]) {
    const sides = outlineSides(grey, corners, brightInside, reachPx);
    if (!sides) continue;
    const outline = { sides, brightInside, blank: true };
    const names = namesOf(photo, outline);
    if (!best || names[0].misfit < best.names[0].misfit) best = { outline, names };
  }
  if (!best) return nothingFound;
  const seen = referenceAmong(best.names, kind);
  if (!seen) return notAReference(best.names[0], kind);
  return referenceFrom(photo, best.outline, seen.fit, kind);
}

/** Which rectangles an outline may be, likeliest first: by how well each explains its sides and its
 *  corners, times how often it lies there. */
function namesOf(photo: Photo, { sides, brightInside, blank }: Outline): Named[] {
  const fits = rectangles
    .filter(({ kind }) => blank || (kind !== 'a4' && kind !== 'letter'))
    .flatMap((rectangle) => fitRectangle(photo, rectangle, sides))
    .map((fit) => ({
      fit,
      logEvidence:
        portable.log(fit.rectangle.share) -
        fit.fit.cost +
        cornerEvidence(cornerCutsMm(photo.grey, fit, brightInside), fit),
    }))
    .sort((a, b) => b.logEvidence - a.logEvidence);
  const weights = fits.map((f) => portable.exp(f.logEvidence - fits[0].logEvidence));
  const all = weights.reduce((s, w) => s + w, 0);
  const ofName = new Map<string, number>();
  fits.forEach(({ fit: { rectangle } }, i) => {
    ofName.set(rectangle.name, (ofName.get(rectangle.name) ?? 0) + weights[i] / all);
  });
  return fits.map(({ fit }) => ({
    fit,
    probability: ofName.get(fit.rectangle.name) ?? 0,
    misfit: fit.fit.cost / sides.points.length,
  }));
}

/** A corner ends where the sides meet, or inside by what its radius takes away; folded, worn or covered
 *  ones do neither. */
function cornerEvidence(cutsMm: readonly number[], { rectangle, fit }: RectangleFit): number {
  const expected = rectangle.cornerMm * (Math.SQRT2 - 1);
  const pxPerMm = portable.exp(fit.parameters[9]);
  const u = Math.hypot(0.3, 1 / pxPerMm);
  return cutsMm.reduce((s, cut) => s - portable.log1p(((cut - expected) / u) ** 2), 0);
}

/** Sides that no rectangle known explains: half a squared deviation a point is what scatter does. */
const mostMisfit = 4;

/** Unasked, the likeliest name must be sure; asked for, it is enough that it may be. */
function referenceAmong(
  names: readonly Named[],
  asked: RectangleKind | null,
): { readonly fit: RectangleFit; readonly kind: RectangleKind } | null {
  const named = asked === null ? names[0] : names.find((n) => n.fit.rectangle.kind === asked);
  const kind = named?.fit.rectangle.kind;
  if (!named || !kind || named.misfit > mostMisfit) return null;
  return named.probability > (asked === null ? sureEnough : possible)
    ? { fit: named.fit, kind }
    : null;
}

function referenceFrom(
  photo: Photo,
  { sides, brightInside }: Outline,
  told: RectangleFit,
  kind: RectangleKind,
): Result<Reference, RefusalReason> {
  const { rectangle } = told;
  let fit = told.fit;
  let exifWeight = photo.f35Mm === null ? 0 : 1;
  if (exifWeight > 0 && mayContradict(fit)) {
    const [alone] = fitRectangle(photo, rectangle, sides, false).sort(
      (a, b) => a.fit.cost - b.fit.cost,
    );
    exifWeight = weightOfStatement(fit, alone.fit);
    fit = mixed(fit, alone.fit, exifWeight);
  }
  if (isTooBlurred(fit.camera, fit.blurPx)) return fit.blurPx < crispPx ? tooSmall : blurred;
  return ok({
    ...fit,
    kind,
    faceMm: rectangle.faceMm,
    outline: outlineOf(fit.camera, rectangle),
    search: searchRegion(photo.grey, fit.camera, rectangle),
    response: gaussianResponse(fit.blurPx),
    tiltRad: tiltRad(fit.camera),
    notFlat: false,
    usedExif: exifWeight > 0.5,
    detected: [],
    brightInside,
  });
}

function isClockwise([a, b, c, d]: readonly PhotoPoint[]): boolean {
  return (c[0] - a[0]) * (d[1] - b[1]) - (d[0] - b[0]) * (c[1] - a[1]) > 0;
}

/** The face's corners in the photo. */
function outlineOf(camera: PosedCamera, rectangle: RectangleFit['rectangle']): PhotoPoint[] {
  return unitCorners.map(([u, v]) => project(camera, onRectangle(rectangle, u, v)));
}

const blurred = refuse(
  'too-blurred' as const,
  'Hold the camera still and let it focus: the edges of the card or sheet must be crisp.',
);

/** A sharp photo after demosaicing has edges of up to about a pixel: what is too soft then is too small. */
const crispPx = 1.3;

const tooSmall = refuse(
  'too-coarse' as const,
  'The fitting is too small in this photo: go nearer, at full resolution, or lay a bank card or the printed card beside it in place of the sheet.',
);

export const nothingFound = refuse(
  'no-card' as const,
  'Show all four edges of the card or sheet, on a table of another brightness, with nothing lying over them.',
);

function notAReference({ fit, probability }: Named, asked: RectangleKind | null) {
  const { name, kind } = fit.rectangle;
  if (kind !== null && asked === null)
    return refuse(
      'which-reference' as const,
      `This may be a ${name} or something else of nearly its shape: say which it is, or use the printed scale card.`,
    );
  if (probability < sureEnough)
    return refuse(
      'other-rectangle' as const,
      'The outline found is of no rectangle whose size is known: use a bank or library card, a blank sheet of A4 or Letter, or the printed scale card.',
    );
  if (kind !== null)
    return refuse(
      'which-reference' as const,
      `The outline found is a ${name}: say so, or show what you meant.`,
    );
  return refuse(
    name === 'business card' ? 'business-card' : name === 'banknote' ? name : 'other-rectangle',
    `The outline found has the proportions of a ${name}: use a bank or library card, a blank sheet of A4 or Letter, or the printed scale card.`,
  );
}
