import { middleValue } from '../../quantity/order';
import type { GreyImage } from '../../vision/grey-image';
import type { Reference } from '../2-reference/reference';

/** How far beyond a marker's border its edge's blur reaches, as a share of its half diagonal. */
const beyond = 1.14;

/** The photo with the card's markers painted over in the paper's grey: round about them, rings are found by chance. */
export function withoutMarkers(grey: GreyImage, { detected }: Reference): GreyImage {
  const { width, height } = grey;
  const data = grey.data.slice();
  for (const { corners } of detected) {
    const cx = corners.reduce((sum, [x]) => sum + x, 0) / 4;
    const cy = corners.reduce((sum, [, y]) => sum + y, 0) / 4;
    const out = corners.map(([x, y]) => [cx + beyond * (x - cx), cy + beyond * (y - cy)] as const);
    const levels = out
      .map(([x, y]) => grey.data[Math.round(y) * width + Math.round(x)])
      .filter((v) => v !== undefined);
    if (levels.length === 0) continue;
    const paper = middleValue(levels);
    const ys = out.map(([, y]) => y);
    const from = Math.max(0, Math.ceil(Math.min(...ys)));
    const to = Math.min(height - 1, Math.floor(Math.max(...ys)));
    for (let y = from; y <= to; y++) {
      const xs: number[] = [];
      out.forEach(([x0, y0], k) => {
        const [x1, y1] = out[(k + 1) % 4];
        if (y0 <= y !== y1 <= y) xs.push(x0 + ((y - y0) / (y1 - y0)) * (x1 - x0));
      });
      if (xs.length < 2) continue;
      const a = Math.max(0, Math.ceil(Math.min(...xs)));
      const b = Math.min(width - 1, Math.floor(Math.max(...xs)));
      if (b >= a) data.fill(paper, y * width + a, y * width + b + 1);
    }
  }
  return { width, height, data };
}
