import { type PosedCamera, posed, rotationVector } from '../../../src/journey/2-card-pose/camera';
import { erf } from '../../../src/quantity/erf';
import { seededRandom } from '../../../src/quantity/random';
import type { GreyImage } from '../../../src/vision/grey-image';

export interface DrawnRectangle {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly cornerMm: number;
  readonly faceMm: number;
  /** Reflected share of light. */
  readonly inside: number;
  readonly outside: number;
  /** By what the light inside is multiplied at its right side's lower end, as gloss or shade do; it goes over from
   *  1 at the upper left. */
  readonly shade?: number;
  readonly cameraMm: number;
  readonly tiltRad: number;
  /** Of the camera about its axis. */
  readonly turnRad: number;
  readonly fPx: number;
}

const width = 1600;
const height = 1200;
const blurPx = 0.6;

/** A rectangle with rounded corners on an even table, its middle where the scale card's would be, seen by a
 *  pinhole: edges are error functions of the distance to the outline, with noise. */
export function drawnRectangle(scene: DrawnRectangle): GreyImage {
  const camera = cameraOver(scene);
  const data = new Uint8Array(width * height);
  const { widthMm, heightMm, cornerMm, faceMm, inside, outside, shade = 1 } = scene;
  const [cx, cy, cz] = camera.centre;
  const { R } = camera;
  // Most pixels are as light as the one before.
  let coded = { light: Number.NaN, level: 0 };
  const noise = noiseOfAll();
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      // The ray's direction in the card frame, times f.
      const [px, py, f] = [x - camera.cx, y - camera.cy, camera.fPx];
      const k = (-faceMm - cz) / (R[2]! * px + R[5]! * py + R[8]! * f);
      const [x0, y0] = [
        cx + k * (R[0]! * px + R[3]! * py + R[6]! * f) - 92,
        cy + k * (R[1]! * px + R[4]! * py + R[7]! * f) - 68,
      ];
      const [u, v] = [Math.abs(x0), Math.abs(y0)];
      const across = Math.max(0, Math.min(1, (x0 / widthMm + 0.5) * (y0 / heightMm + 0.5)));
      const [a, b] = [u - widthMm / 2 + cornerMm, v - heightMm / 2 + cornerMm];
      const beyond = Math.hypot(Math.max(a, 0), Math.max(b, 0)) + Math.min(Math.max(a, b), 0);
      const distancePx = (beyond - cornerMm) / k;
      const share = 0.5 * (1 - erf((distancePx * Math.SQRT1_2) / blurPx));
      const light = outside + (inside * (1 + (shade - 1) * across) - outside) * share;
      if (light !== coded.light) coded = { light, level: levelOf(light) };
      const code = coded.level + noise[y * width + x]!;
      data[y * width + x] = Math.max(0, Math.min(255, Math.round(code)));
    }
  return { width, height, data };
}

/** IEC 61966-2-1. */
const levelOf = (light: number) => 255 * (1.055 * light ** (1 / 2.4) - 0.055);

let drawnNoise: Float64Array | undefined;

/** The same in every drawing. */
function noiseOfAll(): Float64Array {
  if (!drawnNoise) {
    const random = seededRandom(9);
    drawnNoise = Float64Array.from({ length: width * height }, () => 2 * random.normal());
  }
  return drawnNoise;
}

export function cameraOver({ cameraMm, tiltRad, turnRad, fPx }: DrawnRectangle): PosedCamera {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  const [ct, st] = [Math.cos(tiltRad), Math.sin(tiltRad)];
  // Tilt about x, then turn about the optical axis.
  const R = [c, -s * ct, s * st, s, c * ct, -c * st, 0, st, ct];
  const at = [0, 1, 2].map((i) => R[3 * i]! * 92 + R[3 * i + 1]! * 68);
  const camera = posed({
    fPx,
    cx: (width - 1) / 2,
    cy: (height - 1) / 2,
    k1: 0,
    rotation: rotationVector(R),
    translation: [-at[0]!, -at[1]!, cameraMm / ct - at[2]!],
  });
  return camera;
}
