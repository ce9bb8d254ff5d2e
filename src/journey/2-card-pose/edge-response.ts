import { erf } from '../../quantity/erf';
import * as portable from '../../quantity/portable-math';
import { card, markers } from '../../scale-card/geometry';
import { project } from './camera';
import { bowHeightMm } from './card-bow';
import { outward, type PrintView } from './marker-edges';
import { sampleLinear } from './sampling';

/** How this photo draws a sharp edge: linear light across it, 0 well on the dark side and 1 well on the
 *  bright one. Lens and focus blur it evenly; what the phone does to coded values afterwards (noise
 *  reduction, sharpening, scaling) does not: the edge itself lies below half of the light. */
export interface EdgeResponse {
  /** Standard deviation of the Gaussian that comes closest. */
  readonly blurPx: number;
  /** At −5 … 5 px across the edge in steps of `responseStepPx`, the bright side last. */
  readonly values: Float64Array;
}

export const responseStepPx = 0.25;
export const responseReachPx = 5;
const middle = responseReachPx / responseStepPx;

export function gaussianResponse(blurPx: number): EdgeResponse {
  const values = Float64Array.from(
    { length: 2 * middle + 1 },
    (_, i) => 0.5 * (1 + erf(((i - middle) * responseStepPx * Math.SQRT1_2) / blurPx)),
  );
  return { blurPx, values };
}

const cutsPerSide = 24;
/** The corners' rounding by blur stays out of the middle of a side. */
const span = 0.76 * card.markerSideMm;
/** Ink and paper on either side of a marker's edge are a module wide. */
const freeShare = 0.9;

/** From all sides of the markers seen, cut where the fitted camera puts the print's edges. A Gaussian
 *  where modules are too narrow in the photo, or too few cuts are clean. */
export function edgeResponse(
  { grey, camera, bow, printScale }: PrintView,
  ids: readonly number[],
  blurPx: number,
): EdgeResponse {
  const sum = new Float64Array(2 * middle + 1);
  const cut = new Float64Array(2 * middle + 1);
  let cuts = 0;
  for (const id of ids)
    for (const [nx, ny] of outward)
      for (let k = 0; k < cutsPerSide; k++) {
        const along = span * ((k + 0.5) / cutsPerSide - 0.5);
        const out = card.markerSideMm / 2;
        const x = markers[id].xMm + nx * out - ny * along;
        const y = markers[id].yMm + ny * out + nx * along;
        const at = (mm: number) => {
          const [qx, qy] = [(x + nx * mm) * printScale.x, (y + ny * mm) * printScale.y];
          return project(camera, [qx, qy, -bowHeightMm(bow, qx, qy)]);
        };
        const here = at(0);
        const beyond = at(0.1);
        const pxPerMm = Math.hypot(beyond[0] - here[0], beyond[1] - here[1]) / 0.1;
        if (freeShare * card.moduleMm * pxPerMm < responseReachPx) return gaussianResponse(blurPx);
        const u = (beyond[0] - here[0]) / (0.1 * pxPerMm);
        const v = (beyond[1] - here[1]) / (0.1 * pxPerMm);
        for (let i = 0; i < cut.length; i++) {
          const d = (i - middle) * responseStepPx;
          cut[i] = sampleLinear(grey, here[0] + d * u, here[1] + d * v);
        }
        const dark = mean(cut, 0, 5);
        const bright = mean(cut, cut.length - 5, cut.length);
        if (!(bright > 2 * dark + 4)) continue;
        for (let i = 0; i < cut.length; i++) sum[i] += (cut[i] - dark) / (bright - dark);
        cuts++;
      }
  if (cuts < 4 * cutsPerSide) return gaussianResponse(blurPx);
  return { blurPx, values: sum.map((v) => v / cuts) };
}

function mean(values: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += values[i];
  return sum / (to - from);
}

/** Coded values are close to this power of light (sRGB, IEC 61966-2-1). */
const gamma = 2.2;

/** Ink over paper, as cards are printed (common practice). */
const inkOverPaper = 0.06;

/** By how much of the step an edge lies below half the light where coded values were blurred. */
function lowering(darkOverBright: number): number {
  const dark = Math.min(0.95, Math.max(0.01, darkOverBright));
  const halfway = portable.pow((portable.pow(dark, 1 / gamma) + 1) / 2, gamma);
  return 0.5 - (halfway - dark) / (1 - dark);
}

/** The response to an edge of another contrast than the card's: the less of it, the more even. Share of
 *  the step's light at a distance from the edge, px, towards the bright side. */
export function responseAt(
  { values }: EdgeResponse,
  darkOverBright: number,
): (distancePx: number) => number {
  const share = lowering(darkOverBright) / lowering(inkOverPaper);
  const last = values.length - 1;
  const mixed = values.map((v, i) => {
    const even = (v + 1 - values[last - i]) / 2;
    return even + share * (v - even);
  });
  return (distancePx) => {
    const x = distancePx / responseStepPx + middle;
    if (x <= 1) return 0;
    if (x >= last - 1) return 1;
    const i = Math.floor(x);
    const f = x - i;
    const [a, b, c, d] = [mixed[i - 1], mixed[i], mixed[i + 1], mixed[i + 2]];
    // Catmull–Rom.
    return b + 0.5 * f * (c - a + f * (2 * a - 5 * b + 4 * c - d + f * (3 * (b - c) + d - a)));
  };
}
