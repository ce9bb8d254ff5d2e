import type { GreyImage } from '../../vision/grey-image';
import { project } from '../2-card-pose/camera';
import { steepest } from '../2-card-pose/edge-profile';
import { sampleLinear } from '../2-card-pose/sampling';
import { onRectangle, type RectangleFit } from './fit-rectangle';

const stepMm = 0.1;
const insideMm = 4;
const outsideMm = 2;

/** How far inside the point where the sides meet each corner of a rectangle ends, mm along its diagonal;
 *  r(√2 − 1) for a corner of radius r. Corners that are not seen are left out. */
export function cornerCutsMm(
  grey: GreyImage,
  { rectangle, fit: { camera } }: RectangleFit,
  brightInside: boolean,
): number[] {
  const count = Math.round((insideMm + outsideMm) / stepMm) + 1;
  const { widthMm, heightMm } = rectangle;
  const profile = new Float64Array(count);
  const cuts: number[] = [];
  for (const u of [0, 1])
    for (const v of [0, 1]) {
      for (let i = 0; i < count; i++) {
        const d = (i * stepMm - outsideMm) * Math.SQRT1_2;
        const at = onRectangle(
          rectangle,
          u + ((1 - 2 * u) * d) / widthMm,
          v + ((1 - 2 * v) * d) / heightMm,
        );
        const [x, y] = project(camera, at);
        profile[i] = sampleLinear(grey, x, y);
      }
      if (!profile.every(Number.isFinite)) continue;
      const at = steepest(profile, 3, brightInside ? 1 : -1);
      if (at >= 0) cuts.push(at * stepMm - outsideMm);
    }
  return cuts;
}
