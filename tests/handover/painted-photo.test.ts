import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { readPhoto } from '../../src/journey/1-photo/read-photo';
import { findRectangle } from '../../src/journey/2-reference/find-rectangle';
import { paintFace } from '../../src/journey/2-reference/paint-face';
import { withCameraFacts } from '../../src/journey/8-sheet/jpeg-camera-facts';
import { decodeJpeg, encodeJpeg } from './node-jpeg';

const fixture = new URL('../../fixtures/references/gi011.jpg', import.meta.url);
const read = async (bytes: Uint8Array) => {
  const photo = await readPhoto(new AbortController().signal, bytes, nodeDecoders);
  if (!photo.ok) throw new Error(photo.reason);
  return photo.value;
};

/** gi011 is a render whose card bears a number; no photograph. It was stored turned, and is used as the
 *  upright picture that a canvas would hand out. */
async function uprightFixture() {
  const { grey } = await read(new Uint8Array(readFileSync(fixture)));
  const data = new Uint8ClampedArray(4 * grey.width * grey.height);
  grey.data.forEach((v, i) => {
    data.set([v, v, v, 255], 4 * i);
  });
  return { width: grey.width, height: grey.height, data };
}

describe('the face of a bank card', () => {
  it('is one flat colour in the bytes of the new file, and the card is still found there', async () => {
    const vision = await loadNodeVision();
    const picture = await uprightFixture();
    const before = await read(await encodeJpeg(picture, 95));
    const found = findRectangle(before, vision, null);
    if (!found.ok) throw new Error(found.advice);
    const lit = spread(picture, found.value.outline);
    const painted = paintFace(picture, found.value.outline, before.grey);
    expect(painted).toBeGreaterThan(20_000);
    const bytes = withCameraFacts(await encodeJpeg(picture, 95), {
      orientation: 1,
      focal35Mm: 70,
      flashFired: false,
    });

    const after = await decodeJpeg(bytes);
    expect(lit).toBeGreaterThan(40);
    expect(spread(after, found.value.outline)).toBeLessThan(4);

    const again = await read(bytes);
    expect(again.f35Mm).toBe(70);
    const second = findRectangle({ ...again, f35Mm: before.f35Mm }, vision, null);
    if (!second.ok) throw new Error(second.advice);
    expect(second.value.kind).toBe('id1');
    const scale = second.value.parameters[9]! - found.value.parameters[9]!;
    expect(Math.abs(scale)).toBeLessThan(0.001);
  });

  it('leaves every pixel beyond the card as it was', async () => {
    const picture = await uprightFixture();
    const original = picture.data.slice();
    const outline = [
      [400, 300],
      [800, 310],
      [790, 560],
      [395, 550],
    ] as const;
    paintFace(picture, outline, picture);
    let changed = 0;
    for (let y = 0; y < picture.height; y++)
      for (let x = 0; x < picture.width; x++) {
        const at = 4 * (y * picture.width + x);
        if (picture.data[at] === original[at]) continue;
        changed++;
        expect(x > 400 && x < 800 && y > 300 && y < 560).toBe(true);
      }
    expect(changed).toBeGreaterThan(10_000);
  });
});

/** Between the darkest and the brightest grey well inside an outline. */
function spread(
  { width, data }: { width: number; data: Uint8ClampedArray },
  [a, b, c, d]: readonly (readonly [number, number])[],
): number {
  let low = 255;
  let high = 0;
  for (let i = 0; i <= 60; i++)
    for (let j = 0; j <= 60; j++) {
      const [s, t] = [0.08 + (0.84 * i) / 60, 0.08 + (0.84 * j) / 60];
      const at = [0, 1].map(
        (k) =>
          (1 - s) * (1 - t) * a![k]! + s * (1 - t) * b![k]! + s * t * c![k]! + (1 - s) * t * d![k]!,
      );
      const v = data[4 * (Math.round(at[1]!) * width + Math.round(at[0]!))]!;
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
  return high - low;
}
