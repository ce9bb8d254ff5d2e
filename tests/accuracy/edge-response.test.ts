import { describe, expect, it } from 'vitest';
import { drawCamera } from '../../fixtures/synthetic/camera';
import { idealCard } from '../../fixtures/synthetic/ideal-edge';
import { gaussianBlur } from '../../fixtures/synthetic/sensor';
import { flat as level } from '../../src/journey/2-card-pose/card-bow';
import {
  edgeResponse,
  gaussianResponse,
  responseAt,
  responseStepPx,
} from '../../src/journey/2-card-pose/edge-response';
import { seededRandom } from '../../src/quantity/random';
import { markers } from '../../src/scale-card/geometry';
import { posedFromSynthetic } from './posed-from-synthetic';

const width = 1600;
const height = 1200;
const flat = { x: 1, y: 1 };
const ids = markers.map((m) => m.id);

function photo(sigmaPx: number, afterwards: number) {
  const random = seededRandom(5);
  const camera = drawCamera({ widthPx: width, tiltRad: 0.1, heightMm: 250, fill: 0.97 }, random);
  const look = { ink: 0.05, paper: 0.75, sigmaPx, noise: 2 };
  let data = idealCard(camera, look, random);
  if (afterwards > 0) {
    // What a phone does to coded values, whatever its purpose: another blur, on the wrong scale.
    const soft = gaussianBlur(Float32Array.from(data), width, height, afterwards);
    data = Uint8Array.from(soft, (v) => Math.round(v));
  }
  const grey = { width, height, data };
  return edgeResponse(
    { grey, camera: posedFromSynthetic(camera), bow: level, printScale: flat },
    ids,
    0.9,
  );
}
const at = (values: ArrayLike<number>, px: number) =>
  values[(values.length - 1) / 2 + px / responseStepPx]!;

describe('how a photo draws the edges of its card', () => {
  it('blur in linear light: the edge lies at half the light', () => {
    const { values } = photo(0.9, 0);
    expect(at(values, 0)).toBeCloseTo(0.5, 1.7);
    const plain = gaussianResponse(Math.hypot(0.9, 0.45)).values;
    for (const px of [-2, -1, -0.5, 0.5, 1, 2])
      expect(Math.abs(at(values, px) - at(plain, px))).toBeLessThan(0.03);
  });

  it('blur of coded values: the edge lies below half the light, as the tone curve has it', () => {
    const { values } = photo(0.4, 1.2);
    // Halfway in sRGB codes between 0.05 and 0.75 is 0.283 of light, a third of the step.
    expect(at(values, 0)).toBeGreaterThan(0.3);
    expect(at(values, 0)).toBeLessThan(0.42);
    // Against less contrast it would be nearer to half, and half against none.
    const seen = (ratio: number) => responseAt({ blurPx: 1, values }, ratio)(0);
    expect(seen(0.06)).toBeCloseTo(at(values, 0), 2);
    expect(seen(0.3)).toBeGreaterThan(seen(0.06) + 0.03);
    expect(seen(0.9)).toBeGreaterThan(0.47);
    expect(seen(0.9)).toBeLessThan(0.51);
  });

  it('modules too narrow to tell: a Gaussian of the blur', () => {
    const random = seededRandom(8);
    const camera = drawCamera({ widthPx: 500, tiltRad: 0, heightMm: 300, fill: 0.9 }, random);
    const look = { ink: 0.05, paper: 0.75, sigmaPx: 0.6, noise: 1 };
    const grey = { width: 500, height: 375, data: idealCard(camera, look, random) };
    const { values } = edgeResponse(
      { grey, camera: posedFromSynthetic(camera), bow: level, printScale: flat },
      ids,
      0.7,
    );
    expect([...values]).toEqual([...gaussianResponse(0.7).values]);
  });
});
