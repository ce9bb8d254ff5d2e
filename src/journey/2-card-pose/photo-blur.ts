import { middleValue } from '../../quantity/order';
import type { GreyImage } from '../../vision/grey-image';
import { fitEdge, steepest } from './edge-profile';
import { sampleLinear } from './sampling';

const tries = 400;
const halfPx = 7;
const stepPx = 0.5;
/** Where no edge can be fitted: a sharp photo after demosaicing and sharpening. */
const ordinaryPx = 1;

/** Gaussian blur of the photo's crisper edges, px. Without markers there is no edge that is known to
 *  be sharp; the middle one of the steepest places is taken for it. */
export function photoBlur(grey: GreyImage): number {
  const { width, height, data } = grey;
  const places: { x: number; y: number; gx: number; gy: number; size: number }[] = [];
  // The steepest pixel of each cell, so that one glaring edge does not speak for the photo.
  const cell = Math.max(8, Math.round(Math.sqrt((width * height) / (12 * tries))));
  for (let y0 = halfPx + 1; y0 + cell < height - halfPx - 1; y0 += cell) {
    for (let x0 = halfPx + 1; x0 + cell < width - halfPx - 1; x0 += cell) {
      let best = { x: x0, y: y0, gx: 0, gy: 0, size: 0 };
      for (let y = y0; y < y0 + cell; y++) {
        for (let x = x0; x < x0 + cell; x++) {
          const i = y * width + x;
          const gx = data[i + 1] - data[i - 1];
          const gy = data[i + width] - data[i - width];
          const size = Math.sqrt(gx * gx + gy * gy);
          if (size > best.size) best = { x, y, gx, gy, size };
        }
      }
      if (best.size > 8) places.push(best);
    }
  }
  const sigmas = places
    .sort((a, b) => b.size - a.size)
    .slice(0, tries)
    .flatMap(({ x, y, gx, gy, size }) => {
      const profile = Float64Array.from({ length: (2 * halfPx) / stepPx + 1 }, (_, i) => {
        const d = i * stepPx - halfPx;
        return sampleLinear(grey, x + (d * gx) / size, y + (d * gy) / size);
      });
      const at = steepest(profile, 2, 1);
      // Only what is near the steepest place: other edges lie beyond.
      const part = profile.subarray(Math.max(0, at - 9), Math.min(profile.length, at + 10));
      const fit = part.every(Number.isFinite) ? fitEdge(part, at - Math.max(0, at - 9), 2) : null;
      return fit && fit.contrastToNoise > 12 ? [fit.sigma * stepPx] : [];
    });
  return sigmas.length < 20 ? ordinaryPx : middleValue(sigmas);
}
