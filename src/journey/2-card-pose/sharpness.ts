import { quantile } from '../../quantity/order';
import { cardMiddle } from '../../scale-card/geometry';
import type { GreyImage } from '../../vision/grey-image';
import { type PosedCamera, project } from './camera';

/** Beyond this σ a thread of 1.4 mm pitch keeps half of its relief: measured on blurred renders,
 *  pitch is still right at 0.2 mm, off by 3 % at 0.36 mm, and another period at 0.5 mm. */
const mostBlurMm = 0.22;

/** Whether edges of this σ are too soft for a thread lying among them. */
export function isTooBlurred(camera: PosedCamera, blurPx: number): boolean {
  const [x, y] = cardMiddle;
  const [x0, y0] = project(camera, [x - 4, y, 0]);
  const [x1, y1] = project(camera, [x + 4, y, 0]);
  const pxPerMm = Math.hypot(x1 - x0, y1 - y0) / 8;
  return blurPx / pxPerMm > mostBlurMm;
}

/** Whether a photo without a readable card has contrast, but no edge at all that is crisp. An edge
 *  of height c blurred by σ has a slope of c/(σ√(2π)): renders as taken come to 0.7 … 0.9 px at
 *  1200 px, blurred until no marker can be read to 4 and more. */
export function hasNoCrispEdge({ width, height, data }: GreyImage): boolean {
  const slopes = new Float32Array(width * height);
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      slopes[i] = Math.hypot(data[i + 1] - data[i - 1], data[i + width] - data[i - width]) / 2;
    }
  }
  const levels = data.slice().sort();
  const contrast = quantile(levels, 0.98) - quantile(levels, 0.02);
  const steep = quantile(slopes.sort(), 0.995);
  return contrast > 60 && contrast / (Math.sqrt(2 * Math.PI) * steep) > 3;
}
