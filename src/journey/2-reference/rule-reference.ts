import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';
import { posed } from '../2-card-pose/camera';
import { cameraParameters } from '../2-card-pose/camera-parameters';
import { flat } from '../2-card-pose/card-bow';
import { gaussianResponse } from '../2-card-pose/edge-response';
import type { Ruler } from '../identification';
import type { Reference } from './reference';

/** Where the card frame's middle is put: at the centre of the photo. */
const middleXMm = 92;
const middleYMm = 68;

export const rulerPx = ({ from, to }: Ruler): number =>
  Math.hypot(to[0] - from[0], to[1] - from[1]);

/** The reference when only a rule gives the scale: a camera straight above the middle of
 *  the photo, `distanceMm` from the rule's face. Stages 3 to 5 run on it as they are; what the real
 *  camera does besides is the business of ruler-uncertainty.ts, so nothing here has an uncertainty.
 *  `unitMm` is the length that takes the part of a millimetre: small and large threads are sought
 *  as if they were seen at another size. */
export function ruleReference(
  grey: GreyImage,
  pxPerMm: number,
  distanceMm: number,
  unitMm: number,
  blurPx: number,
): Reference {
  const { width, height } = grey;
  const pxPerUnit = pxPerMm * unitMm;
  const fPx = pxPerMm * distanceMm;
  const cx = (width - 1) / 2;
  const cy = (height - 1) / 2;
  const parameters = new Float64Array(cameraParameters);
  parameters[7] = cx / 100;
  parameters[8] = cy / 100;
  parameters[9] = portable.log(pxPerUnit);
  const reachX = width / 2 / pxPerUnit;
  const reachY = height / 2 / pxPerUnit;
  return {
    kind: 'rule',
    faceMm: 0,
    outline: [],
    brightInside: true,
    search: {
      polygon: [
        [middleXMm - reachX, middleYMm - reachY],
        [middleXMm + reachX, middleYMm - reachY],
        [middleXMm + reachX, middleYMm + reachY],
        [middleXMm - reachX, middleYMm + reachY],
      ],
      holes: [],
      field: null,
    },
    camera: posed({
      fPx,
      cx,
      cy,
      k1: 0,
      rotation: [0, 0, 0],
      translation: [-middleXMm, -middleYMm, fPx / pxPerUnit],
    }),
    parameters,
    prior: { fPx, uLnF: 1, cx, cy, uCentrePx: 1, uK1: 1 },
    covariance: new Float64Array(cameraParameters * cameraParameters),
    scale: 1,
    cost: 0,
    blurPx,
    crispestPx: blurPx,
    response: gaussianResponse(blurPx),
    rmsPx: 0,
    sideRmsPx: 0,
    bow: flat,
    largestBow: { riseMm: 0, uMm: 0 },
    tiltRad: 0,
    notFlat: false,
    usedExif: false,
    detected: [],
  };
}
