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
import { fitRectangle, onRectangle, type RectangleFit, unitCorners } from './fit-rectangle';
import { type OutlineSides, outlineSides } from './outline-sides';
import { type RectangleKind, rectangles } from './rectangles';
import type { Reference } from './reference';
import { searchRegion } from './search-region';
import { edgeField, straightEdges } from './straight-edges';

/** Long side at which outlines are sought, px. */
const searchPx = 640;
const mostQuads = 4;
/** Below this probability of its name a rectangle is not taken for a reference unasked. */
const sureEnough = 0.9;
/** A fitting on a sheet takes up to 0.04 of it (renders); print takes more. */
const mostOnSheet = 0.07;
/** Sheets show all of their edges: 0.98 and more on renders; what is put together from other lines, 0.86 and
 *  less. Asked for, a sheet may do with less. */
const leastSheetScore = 0.9;

interface Outline {
  readonly sides: OutlineSides;
  readonly brightInside: boolean;
  /** Whether it may be a sheet of paper with at most a fitting on it. */
  readonly blank: boolean;
}

interface Named {
  readonly fit: RectangleFit;
  readonly probability: number;
  /** Of the best fit, per point: about 1/2 where it is one of the rectangles known. */
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
      (kind !== null || quad.score > leastSheetScore);
    const outline = { sides, brightInside: quad.brightInside, blank };
    const named = nameOf(photo, outline);
    if (isReference(named, kind)) return referenceFrom(photo, outline, named.fit);
    if (!stranger && named.misfit < mostMisfit) stranger = named;
  }
  return stranger ? notAReference(stranger, kind) : nothingFound;
}

/** The same from four corners shown by hand, clockwise as seen: within about 2 % of the photo's width. */
export function rectangleByHand(
  photo: Photo,
  corners: readonly PhotoPoint[],
  kind: RectangleKind,
): Result<Reference, RefusalReason> {
  const { grey } = photo;
  const reachPx = 0.02 * Math.max(grey.width, grey.height);
  let best: { outline: Outline; named: Named } | null = null;
  for (const brightInside of [true, false]) {
    const sides = outlineSides(grey, corners, brightInside, reachPx);
    if (!sides) continue;
    const outline = { sides, brightInside, blank: true };
    const named = nameOf(photo, outline, kind);
    if (!best || named.misfit < best.named.misfit) best = { outline, named };
  }
  if (!best) return nothingFound;
  if (best.named.misfit > mostMisfit) return notAReference(best.named, kind);
  return referenceFrom(photo, best.outline, best.named.fit);
}

/** Which rectangle an outline is: by how well each explains its sides and its corners, times how often it
 *  lies there. */
function nameOf(
  photo: Photo,
  { sides, brightInside, blank }: Outline,
  only: RectangleKind | null = null,
): Named {
  const fits = rectangles
    .filter(({ kind }) => only === null || kind === only)
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
  const [best] = fits;
  const sum = (list: typeof fits) =>
    list.reduce((s, f) => s + portable.exp(f.logEvidence - best.logEvidence), 0);
  const same = fits.filter((f) => f.fit.rectangle.name === best.fit.rectangle.name);
  return {
    fit: best.fit,
    probability: sum(same) / sum(fits),
    misfit: best.fit.fit.cost / sides.points.length,
  };
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

function isReference({ fit, probability, misfit }: Named, asked: RectangleKind | null): boolean {
  const { kind } = fit.rectangle;
  if (kind === null || misfit > mostMisfit) return false;
  return asked === null ? probability > sureEnough : kind === asked;
}

function referenceFrom(
  photo: Photo,
  { sides, brightInside }: Outline,
  told: RectangleFit,
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
  if (isTooBlurred(fit.camera, fit.blurPx)) return blurred;
  return ok({
    ...fit,
    kind: rectangle.kind ?? 'id1',
    faceMm: rectangle.faceMm,
    outline: outlineOf(fit.camera, rectangle),
    search: searchRegion(photo.grey, fit.camera, rectangle),
    edgePoints: told.points,
    response: gaussianResponse(fit.blurPx),
    tiltRad: tiltRad(fit.camera),
    notFlat: false,
    usedExif: exifWeight > 0.5,
    detected: [],
    brightInside,
  });
}

/** The face's corners in the photo. */
function outlineOf(camera: PosedCamera, rectangle: RectangleFit['rectangle']): PhotoPoint[] {
  return unitCorners.map(([u, v]) => project(camera, onRectangle(rectangle, u, v)));
}

const blurred = refuse(
  'too-blurred' as const,
  'Hold the camera still and let it focus: the edges of the card or sheet must be crisp.',
);

const nothingFound = refuse(
  'no-card' as const,
  'Show all four edges of the card or sheet, on a table of another brightness, with nothing lying over them.',
);

function notAReference({ fit, probability }: Named, asked: RectangleKind | null) {
  const { name, kind } = fit.rectangle;
  if (kind !== null && asked === null)
    return refuse(
      'no-card' as const,
      `This may be a ${name} or something else of nearly its shape: say which it is, or use the printed scale card.`,
    );
  const found =
    probability > sureEnough
      ? `The outline found has the proportions of a ${name}`
      : 'The outline found is of no rectangle whose size is known';
  return refuse(
    'no-card' as const,
    `${found}: use a bank or library card, a blank sheet of A4 or Letter, or the printed scale card.`,
  );
}
