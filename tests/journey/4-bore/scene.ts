import { type PosedCamera, posed } from '../../../src/journey/2-card-pose/camera';
import type { FacePlane } from '../../../src/journey/4-bore/face-plane';

/** A camera that looks at the card's middle at a slant. */
export function slantedCamera(tiltRad: number): PosedCamera {
  return posed({
    fPx: 1400,
    cx: 500,
    cy: 400,
    k1: 0,
    rotation: [tiltRad, 0, 0],
    translation: [-92, -68 * Math.cos(tiltRad), 300 - 68 * Math.sin(tiltRad)],
  });
}

export const cardPlane: FacePlane = {
  origin: [0, 0, 0],
  right: [1, 0, 0],
  down: [0, 1, 0],
  inwards: [0, 0, 1],
};

/** Beliefs as a network would have them of a line at such a row of each sector: two rows share it. */
export function believed(rows: readonly number[], of: number): Float64Array {
  const shares = new Float64Array(rows.length * of);
  rows.forEach((row, s) => {
    const i = Math.max(0, Math.min(of - 2, Math.floor(row)));
    shares[s * of + i] = Math.max(0, Math.min(1, 1 - (row - i)));
    shares[s * of + i + 1] = 1 - shares[s * of + i];
  });
  return shares;
}
