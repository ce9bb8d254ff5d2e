import * as portable from '../../quantity/portable-math';
import { cardMiddle } from '../../scale-card/geometry';
import { atHeight, posed } from '../2-card-pose/camera';
import { cameraParameters } from '../2-card-pose/camera-parameters';
import { flat } from '../2-card-pose/card-bow';
import { gaussianResponse } from '../2-card-pose/edge-response';
import type { PlanePoint, Reference } from './reference';
import type { RulePhoto } from './rule-photo';
import { stripCorners } from './rule-strip';

/** The reference when only a rule gives the scale: a camera straight above the middle of the photo, which is put at the
 *  middle of the card's frame, as far from the rule's face as it is thought to be. Later stages run on it as they are;
 *  what the real camera does besides is the business of ruler-uncertainty.ts, so nothing here has an uncertainty.
 *  `unitMm` is the length that takes the part of a millimetre: small threads are sought as if seen at another size. */
export function ruleReference(
  { grey, pxPerMm, distance, blurPx, strip }: RulePhoto,
  unitMm: number,
): Reference {
  const { width, height } = grey;
  const [x, y] = cardMiddle;
  const pxPerUnit = pxPerMm * unitMm;
  const fPx = pxPerMm * distance.mm;
  const cx = (width - 1) / 2;
  const cy = (height - 1) / 2;
  const parameters = new Float64Array(cameraParameters);
  parameters[7] = cx / 100;
  parameters[8] = cy / 100;
  parameters[9] = portable.log(pxPerUnit);
  const reachX = width / 2 / pxPerUnit;
  const reachY = height / 2 / pxPerUnit;
  const camera = posed({
    fPx,
    cx,
    cy,
    k1: 0,
    rotation: [0, 0, 0],
    translation: [-x, -y, fPx / pxPerUnit],
  });
  return {
    kind: 'rule',
    faceMm: 0,
    outline: [],
    brightInside: true,
    search: {
      polygon: [
        [x - reachX, y - reachY],
        [x + reachX, y - reachY],
        [x + reachX, y + reachY],
        [x - reachX, y + reachY],
      ],
      holes: [
        stripCorners(strip, grey).map((corner): PlanePoint => {
          const [xMm, yMm] = atHeight(camera, corner, 0);
          return [xMm, yMm];
        }),
      ],
      field: null,
    },
    camera,
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
