import * as portable from '../../quantity/portable-math';
import type { GreyImage } from '../../vision/grey-image';

/** Relative luminance (0…255) of an sRGB-coded grey level, IEC 61966-2-1.
 *  Edges are located in linear light: coded values shift a blurred edge towards its dark side. */
const linearLight: Float64Array = Float64Array.from({ length: 256 }, (_, v) => {
  const c = v / 255;
  return 255 * (c <= 0.04045 ? c / 12.92 : portable.pow((c + 0.055) / 1.055, 2.4));
});

/** Bilinear sample in linear light; NaN outside the photo. */
export function sampleLinear(grey: GreyImage, x: number, y: number): number {
  const x0 = Math.floor(x);
  const y0 = Math.floor(y);
  if (x0 < 0 || y0 < 0 || x0 >= grey.width - 1 || y0 >= grey.height - 1) return Number.NaN;
  const fx = x - x0;
  const fy = y - y0;
  const { data, width } = grey;
  const i = y0 * width + x0;
  return (
    (linearLight[data[i]] * (1 - fx) + linearLight[data[i + 1]] * fx) * (1 - fy) +
    (linearLight[data[i + width]] * (1 - fx) + linearLight[data[i + width + 1]] * fx) * fy
  );
}
