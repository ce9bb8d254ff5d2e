import { cardMiddle } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import { posed, type Vec3 } from '../2-card-pose/camera';
import type { LensPrior } from '../2-card-pose/camera-parameters';
import { type CameraFit, fitCamera } from '../2-card-pose/fit-camera';
import { lensPriors, overLenses } from '../2-card-pose/focal-length';
import { homography, poseFromHomography, scaleAt } from '../2-card-pose/homography';
import { type EdgePoint, outward } from '../2-card-pose/marker-edges';
import type { PhotoPoint } from '../overlay';
import { type OutlineSides, unitCorners } from './outline-sides';
import type { Rectangle } from './rectangles';

export interface RectangleFit {
  readonly rectangle: Rectangle;
  readonly fit: CameraFit;
  readonly points: readonly EdgePoint[];
}

/** Places on a rectangle in the card frame: table at z = 0, the face above it, its middle where the scale card's
 *  would be, so that what measures over a card measures over it. */
export function onRectangle({ widthMm, heightMm, faceMm }: Rectangle, u: number, v: number): Vec3 {
  return [cardMiddle[0] + (u - 0.5) * widthMm, cardMiddle[1] + (v - 0.5) * heightMm, -faceMm];
}

/** Camera over a rectangle whose outline is seen, once for each way that it may lie; x to the right in
 *  the photo, as far as that goes. Once told of EXIF's focal length, where there is one, or not. */
export function fitRectangle(
  photo: { readonly grey: GreyImage; readonly f35Mm: number | null },
  rectangle: Rectangle,
  sides: OutlineSides,
  told = true,
): RectangleFit[] {
  return waysToLie(sides.corners).map((turn) => {
    // The side that becomes the top one: of two opposite sides, that which runs more to the right.
    const top = runsRight(sides.corners, turn) ? turn : turn + 2;
    const points: EdgePoint[] = sides.points.map(({ side, along, measured, uPx, blurPx }) => {
      const own = (side - top + 8) % 4;
      const [a, b] = [unitCorners[own], unitCorners[(own + 1) % 4]];
      const u = a[0] + along * (b[0] - a[0]);
      const v = a[1] + along * (b[1] - a[1]);
      const onCard = onRectangle(rectangle, u, v);
      return {
        markerId: own,
        side: own,
        onCard,
        outward: outward[own],
        alongEdge: 2 * along - 1,
        measured,
        uPx,
        blurPx,
      };
    });
    const H = homography(
      unitCorners.map(([u, v], i) => {
        const [x, y] = onRectangle(rectangle, u, v);
        return { card: [x, y] as const, photo: sides.corners[(i + top) % 4] };
      }),
    );
    if (!H) throw new Error('four corners in general position have a homography');
    const pxPerMm = scaleAt(H, cardMiddle[0], cardMiddle[1]);
    const { stated, open, usual } = lensPriors(
      photo.grey,
      photo.f35Mm,
      pxPerMm,
      rectangle.distanceMm,
    );
    const prior = (told && stated) || open;
    const start = posed(poseFromHomography(H, prior.fPx, prior.cx, prior.cy));
    const shape = {
      scaleX: 1,
      scaleY: 1,
      uAspect: 1e-5,
      uBowMm: rectangle.uBowMm,
      edges: { count: 4, uMm: rectangle.uEdgeMm, uLeanMm: rectangle.uLeanMm },
    };
    // The points' u is their scatter.
    const fitWith = (lens: LensPrior) =>
      fitCamera(points, start, { ...lens, uK1: uK1OfPhones }, shape, 1);
    const fit = stated ? fitWith(prior) : overLenses(usual, fitWith);
    return { rectangle, fit, points };
  });
}

/** Phones straighten their photos to about 1 % at the corner, 0.8 of the focal length off the middle at 26 mm
 *  (common practice): 0.01 / 0.8². Four edges that gloss and shadow bend do not tell it better; what the lens
 *  prior of the scale card leaves open, they would fill. */
const uK1OfPhones = 0.016;

/** Which sides may be the long ones: foreshortening up to 35° shrinks a length by a fifth, and no rectangle
 *  known is nearer to a square than Letter's 1.29. */
function waysToLie(corners: readonly PhotoPoint[]): number[] {
  const length = (i: number) => {
    const [a, b] = [corners[i % 4], corners[(i + 1) % 4]];
    return Math.hypot(b[0] - a[0], b[1] - a[1]);
  };
  const ratio = (length(0) + length(2)) / (length(1) + length(3));
  if (ratio > 1.1) return [0];
  return ratio < 1 / 1.1 ? [1] : [0, 1];
}

function runsRight(corners: readonly PhotoPoint[], side: number): boolean {
  const [a, b] = [corners[side], corners[(side + 1) % 4]];
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  return dx > 0 || (dx === 0 && dy > 0);
}
