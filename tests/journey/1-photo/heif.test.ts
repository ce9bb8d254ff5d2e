import { expect, test } from 'vitest';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import { readHeifHeader } from '../../../src/journey/1-photo/heif-header';
import { makeUpright } from '../../../src/journey/1-photo/upright';
import type { GreyImage } from '../../../src/vision/grey-image';
import { accepted, fixture, read } from './read-files';

/** d26.heic and d26.avif are d26.jpg stored as a telephone held upright does (fixtures/heif/make.py): coded by
 *  x265 and aom, which our decoders share no code with. */
function meanDifference(a: GreyImage, b: GreyImage): number {
  expect([a.width, a.height]).toEqual([b.width, b.height]);
  let sum = 0;
  for (let i = 0; i < a.data.length; i++) sum += Math.abs(a.data[i] - b.data[i]);
  return sum / a.data.length;
}

test.each(['heic', 'avif'])(
  '%s: upright, its grey that of the JPEG, its focal length kept',
  async (kind) => {
    const jpeg = await accepted(fixture('photos/d26.jpg'));
    const photo = await accepted(fixture(`heif/d26.${kind}`));
    // Coded anew with loss: a grey level or two on average; another turn or mirror image differs by dozens.
    expect(meanDifference(photo.grey, makeUpright(jpeg.grey, 6))).toBeLessThan(2);
    for (const wrong of [8, 5, 7])
      expect(meanDifference(photo.grey, makeUpright(jpeg.grey, wrong))).toBeGreaterThan(10);
    expect(photo.f35Mm).toBe(27);
    expect(photo.flashFired).toBe(false);
    expect(photo.originalSize).toEqual({ width: 1500, height: 2000 });
  },
);

test.each(['heic', 'avif'])(
  '%s: EXIF’s own orientation is not followed a second time',
  async (kind) => {
    const bytes = fixture(`heif/d26.${kind}`);
    expect(readHeifHeader(bytes)!.turns).toEqual([6]);
    const irot = bytes.findIndex(
      (_, i) => String.fromCharCode(...bytes.subarray(i, i + 4)) === 'irot',
    );
    const asStored = bytes.slice();
    asStored[irot + 4] = 0;
    expect(readHeifHeader(asStored)!.turns).toEqual([1]);
    const jpeg = await accepted(fixture('photos/d26.jpg'));
    const photo = await accepted(asStored);
    expect(meanDifference(photo.grey, jpeg.grey)).toBeLessThan(2);
  },
);

test.each([
  ['a mirror across the middle row', 0, 4],
  ['a mirror across the middle column', 1, 2],
] as const)('AVIF: %s', async (_what, axis, orientation) => {
  const bytes = fixture('heif/d26.avif');
  const at = bytes.findIndex((_, i) => String.fromCharCode(...bytes.subarray(i, i + 4)) === 'irot');
  bytes.set(new TextEncoder().encode('imir'), at);
  bytes[at + 4] = axis;
  const jpeg = await accepted(fixture('photos/d26.jpg'));
  const photo = await accepted(bytes);
  expect(meanDifference(photo.grey, makeUpright(jpeg.grey, orientation))).toBeLessThan(2);
});

test.each(['heic', 'avif'])('%s: refused wherever it ends too early', async (kind) => {
  const whole = fixture(`heif/d26.${kind}`);
  for (const share of [0.0005, 0.002, 0.01, 0.5, 0.9, 0.999]) {
    const result = await read(whole.subarray(0, Math.floor(whole.length * share)));
    expect(result).toMatchObject({ ok: false, reason: 'unreadable' });
  }
});

test('a header spoilt byte by byte gives a photo or a refusal, never a fault', async () => {
  const whole = fixture('heif/d26.heic');
  const noDecoder = { ...nodeDecoders, heic: () => Promise.reject(new Error('not asked for')) };
  for (let at = 0; at < 440; at++)
    for (const value of [0, 0xff]) {
      const spoilt = whole.slice();
      spoilt[at] = value;
      const result = await read(spoilt, noDecoder);
      if (!result.ok) expect(result.advice).toMatch(/^[A-Z].{20,}\.$/);
    }
});

test('without its decoder it is refused with the way on', async () => {
  const offline = { ...nodeDecoders, heic: () => Promise.reject(new Error('offline')) };
  expect(await read(fixture('heif/d26.heic'), offline)).toMatchObject({
    ok: false,
    reason: 'decoder-missing',
    advice: expect.stringContaining('JPEG'),
  });
});
