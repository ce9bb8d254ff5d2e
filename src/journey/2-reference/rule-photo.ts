import { ok, type Result, refuse } from '../../quantity/result';
import type { GreyImage } from '../../vision/grey-image';
import { rescaleCoordinate } from '../../vision/pixel-scale';
import type { Vision } from '../../vision/vision';
import { diagonal35Mm, type Photo } from '../1-photo/photo';
import { photoBlur } from '../2-card-pose/photo-blur';
import type { RefusalReason, Ruler } from '../identification';
import type { PhotoPoint } from '../overlay';
import { type Distance, statedDistance, unknownDistance } from './rule-parallax';
import { type RuleStrip, ruleStrip } from './rule-strip';

/** A photo with a rule, no larger than a thread needs. */
export interface RulePhoto {
  readonly grey: GreyImage;
  readonly pxPerMm: number;
  /** The two marks, px of `grey`. */
  readonly from: PhotoPoint;
  readonly to: PhotoPoint;
  /** From the photo as it came to this one, and back, px. */
  readonly here: (point: PhotoPoint) => PhotoPoint;
  readonly back: (point: PhotoPoint) => PhotoPoint;
  readonly blurPx: number;
  /** From the rule's face to the camera, if it looked straight down. */
  readonly distance: Distance;
  readonly strip: RuleStrip;
}

const fewestPx = 20;
/** A thread of 1 mm pitch needs about this, as with the card. */
const coarsestPxPerMm = 4;
const finestPxPerMm = 1000;
/** More pixels per millimetre than this say nothing new of a thread; the photo is reduced to it. */
const plentyPxPerMm = 28;

/** The photo as its rule measures it, or why the two marks give no scale. */
export function rulePhoto(
  photo: Photo,
  ruler: Ruler,
  vision: Vision,
): Result<RulePhoto, RefusalReason> {
  const { grey } = photo;
  const scale = scaleOf(grey, ruler);
  if (!scale.ok) return scale;
  const factor = Math.min(1, plentyPxPerMm / scale.value);
  const width = Math.round(grey.width * factor);
  const height = Math.round(grey.height * factor);
  const small = factor < 1 ? vision.resize(grey, width, height) : grey;
  const here = ([x, y]: PhotoPoint): PhotoPoint => [
    rescaleCoordinate(x, grey.width, width),
    rescaleCoordinate(y, grey.height, height),
  ];
  const back = ([x, y]: PhotoPoint): PhotoPoint => [
    rescaleCoordinate(x, width, grey.width),
    rescaleCoordinate(y, height, grey.height),
  ];
  const from = here(ruler.from);
  const to = here(ruler.to);
  const pxPerMm = Math.hypot(to[0] - from[0], to[1] - from[1]) / ruler.mm;
  return ok({
    grey: small,
    pxPerMm,
    from,
    to,
    here,
    back,
    blurPx: photoBlur(small),
    distance: distanceOf(photo, scale.value),
    strip: ruleStrip(small, from, to, pxPerMm),
  });
}

/** Pixels per mm, if the two marks can give a scale at all. */
function scaleOf({ width, height }: GreyImage, ruler: Ruler): Result<number, RefusalReason> {
  const inside = ([x, y]: PhotoPoint) => x >= -0.5 && y >= -0.5 && x < width && y < height;
  if (!inside(ruler.from) || !inside(ruler.to))
    return refuse(
      'no-card',
      'Mark both points of the rule inside the photo, in its full-size pixels.',
    );
  const px = Math.hypot(ruler.to[0] - ruler.from[0], ruler.to[1] - ruler.from[1]);
  if (px < fewestPx)
    return refuse(
      'no-card',
      'Mark two graduations farther apart: best over the whole rule in view.',
    );
  const pxPerMm = px / ruler.mm;
  if (!(ruler.mm > 0) || pxPerMm > finestPxPerMm || pxPerMm * 2000 < Math.max(width, height))
    return refuse(
      'no-card',
      'The distance does not fit the photo: give the millimetres between the two marked graduations.',
    );
  if (pxPerMm < coarsestPxPerMm)
    return refuse(
      'too-coarse',
      'The thread has too few pixels: go nearer, or send the photo in full size.',
    );
  return ok(pxPerMm);
}

/** A crop behind EXIF's back makes the camera seem nearer than it was. */
function distanceOf({ grey, f35Mm }: Photo, pxPerMm: number): Distance {
  if (f35Mm === null) return unknownDistance;
  return statedDistance(((f35Mm / diagonal35Mm) * Math.hypot(grey.width, grey.height)) / pxPerMm);
}
