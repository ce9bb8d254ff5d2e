import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import { decodeJpeg } from '../../../src/journey/1-photo/decode-jpeg';
import { readPhoto } from '../../../src/journey/1-photo/read-photo';
import type { GreyImage } from '../../../src/vision/grey-image';
import {
  makeExif,
  makeFlatJpeg,
  makeJpeg,
  makePng,
  makeWebp,
  withExif,
  withoutExif,
} from './make-files';
import { accepted, read } from './read-files';

async function reasonFor(bytes: Uint8Array): Promise<string> {
  const result = await read(bytes);
  if (result.ok) return 'accepted';
  expect(result.advice).toMatch(/^[A-Z].{20,}\.$/);
  return result.reason;
}

const fixture = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../../fixtures/photos/${name}`, import.meta.url)));

function draw(width: number, height: number, at: (x: number, y: number) => number): GreyImage {
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) data[y * width + x] = at(x, y);
  }
  return { width, height, data };
}

/** No symmetry of any kind. */
const scene = draw(640, 480, (x, y) => ((x * x) / 97 + y * 3 + (x > 400 && y < 99 ? 80 : 0)) & 255);

/** Where the scene's pixel (x, y) is stored, from the words of CIPA DC-008 4.6.4:
 *  which side of the scene the file's row 0 and column 0 show. */
const storedAs: Record<number, { row0: string; column0: string }> = {
  1: { row0: 'top', column0: 'left' },
  2: { row0: 'top', column0: 'right' },
  3: { row0: 'bottom', column0: 'right' },
  4: { row0: 'bottom', column0: 'left' },
  5: { row0: 'left', column0: 'top' },
  6: { row0: 'right', column0: 'top' },
  7: { row0: 'right', column0: 'bottom' },
  8: { row0: 'left', column0: 'bottom' },
};

function store({ width, height, data }: GreyImage, orientation: number): GreyImage {
  const { row0, column0 } = storedAs[orientation];
  const turned = row0 === 'left' || row0 === 'right';
  const distance = (side: string, x: number, y: number) =>
    ({ top: y, bottom: height - 1 - y, left: x, right: width - 1 - x })[side]!;
  const stored = new Uint8Array(data.length);
  const storedWidth = turned ? height : width;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const row = distance(row0, x, y);
      const column = distance(column0, x, y);
      stored[row * storedWidth + column] = data[y * width + x];
    }
  }
  return { width: storedWidth, height: turned ? width : height, data: stored };
}

test.each([1, 2, 3, 4, 5, 6, 7, 8])('orientation %i is undone', async (orientation) => {
  const exif = makeExif({ orientation, order: orientation % 2 ? 'II' : 'MM' });
  const photo = await accepted(makePng(store(scene, orientation), { exif }));
  expect(photo.originalSize).toEqual({ width: 640, height: 480 });
  expect(photo.grey.width).toBe(640);
  expect(Buffer.compare(photo.grey.data, scene.data)).toBe(0);
});

test('a JPEG yields its own luma, size and 35 mm equivalent (a render, d11)', async () => {
  const photo = await accepted(fixture('d11.jpg'));
  expect(photo.grey).toMatchObject({ width: 2000, height: 1500 });
  expect(photo.originalSize).toMatchObject({ width: 2000, height: 1500 });
  expect(photo.f35Mm).toBe(27);
  // From Pillow 9.4 with libjpeg-turbo 2.1: image.draft('L', image.size), mean of all pixels.
  const mean = photo.grey.data.reduce((sum, value) => sum + value, 0) / photo.grey.data.length;
  expect(mean).toBeCloseTo(162.448591333, 8);
});

test('the same grey from JPEG, PNG of any kind, and WebP', async () => {
  for (const colour of [0, 2, 4, 6] as const) {
    const { grey } = await accepted(makePng(scene, { colour }));
    expect(Buffer.compare(grey.data, scene.data)).toBe(0);
  }
  const wide = await accepted(makePng(scene, { colour: 2, bits: 16 }));
  expect(Buffer.compare(wide.grey.data, scene.data)).toBe(0);
  const webp = await accepted(await makeWebp(scene, true));
  expect(Buffer.compare(webp.grey.data, scene.data)).toBe(0);
  const smooth = draw(640, 480, (x, y) => 40 + x / 8 + y / 6);
  for (const bytes of [await makeJpeg(smooth), await makeWebp(smooth, false)]) {
    const { grey } = await accepted(bytes);
    const worst = grey.data.reduce(
      (w, value, i) => Math.max(w, Math.abs(value - smooth.data[i])),
      0,
    );
    expect(worst).toBeLessThan(6);
  }
});

test('what is transparent lies on white', async () => {
  const { grey } = await accepted(
    makePng(
      draw(640, 480, () => 0),
      { colour: 6, alpha: 0 },
    ),
  );
  expect(grey.data[1000]).toBe(255);
});

test('focal length: absurd values and crops are as if it were absent', async () => {
  const plain = withoutExif(fixture('d11.jpg'));
  const f35Of = async (options: Parameters<typeof makeExif>[0]) =>
    (await accepted(withExif(plain, makeExif(options)))).f35Mm;
  expect(await f35Of({})).toBe(null);
  expect(await f35Of({ f35Mm: 26 })).toBe(26);
  expect(await f35Of({ f35Mm: 0 })).toBe(null);
  expect(await f35Of({ f35Mm: 65535 })).toBe(null);
  expect(await f35Of({ f35Mm: 26, pixelSize: { width: 4000, height: 3000 } })).toBe(26);
  expect(await f35Of({ f35Mm: 26, pixelSize: { width: 3000, height: 4000 } })).toBe(26);
  expect(await f35Of({ f35Mm: 26, pixelSize: { width: 4000, height: 2250 } })).toBe(null);
});

test('the flash fired when the file says so, cropped or not, JPEG or PNG', async () => {
  const plain = withoutExif(fixture('d11.jpg'));
  const fired = async (bytes: Uint8Array) => (await accepted(bytes)).flashFired;
  expect(await fired(plain)).toBe(false);
  expect(await fired(withExif(plain, makeExif({ f35Mm: 26 })))).toBe(false);
  expect(await fired(withExif(plain, makeExif({ flash: 0x18 })))).toBe(false);
  expect(await fired(withExif(plain, makeExif({ flash: 0x19 })))).toBe(true);
  const cropped = makeExif({ flash: 1, pixelSize: { width: 4000, height: 2250 } });
  expect(await fired(withExif(plain, cropped))).toBe(true);
  expect(await fired(makePng(scene, { exif: makeExif({ flash: 1 }) }))).toBe(true);
});

test('sizes: too coarse, too large, and large ones at half size', async () => {
  expect(await reasonFor(makePng(draw(1, 1, () => 9)))).toBe('too-coarse');
  expect(await reasonFor(await makeJpeg(draw(400, 300, (x) => x & 255)))).toBe('too-coarse');
  expect(await reasonFor(makePng(scene, { declared: { width: 50_000, height: 50_000 } }))).toBe(
    'too-large',
  );
  expect(await reasonFor(makePng(scene, { declared: { width: 0, height: 10 } }))).toBe(
    'unreadable',
  );

  expect(await reasonFor(makeFlatJpeg(65_500, 65_500))).toBe('too-large');

  const full = await accepted(makeFlatJpeg(8000, 6000));
  expect(full.grey).toMatchObject({ width: 8000, height: 6000 });
  const half = await accepted(makeFlatJpeg(12_000, 9001));
  expect(half).toMatchObject({
    originalSize: { width: 12_000, height: 9001 },
    grey: { width: 6000, height: 4501 },
  });
  expect(half.grey.data.every((value) => value === 128)).toBe(true);
});

test('at half size, pixel (x, y) covers (2x, 2y) … (2x + 1, 2y + 1)', async () => {
  const jpeg = await makeJpeg(
    draw(640, 480, (x, y) => x / 4 + y / 8),
    98,
  );
  const half = decodeJpeg(await nodeDecoders.jpeg(), jpeg, { width: 320, height: 240 })!;
  let sum = 0;
  for (let y = 0; y < 240; y++) {
    for (let x = 0; x < 320; x++) {
      sum += half.data[y * 320 + x] - ((2 * x + 0.5) / 4 + (2 * y + 0.5) / 8 - 7 / 16);
    }
  }
  // Storing eighths of a level as whole ones loses 7/16 on average. Half a pixel off either way would be 0.12 grey levels.
  expect(Math.abs(sum / (320 * 240))).toBeLessThan(0.06);
});

test.each([
  ['nothing', '', 'unreadable'],
  ['text named .jpg', 'This is a note, not a photo.\n', 'unreadable'],
  ['a JPEG of two bytes', '\xff\xd8', 'unreadable'],
  ['a JPEG of one marker', '\xff\xd8\xff\xe0', 'unreadable'],
  ['GIF', 'GIF89a\x01\0\x01\0', 'unsupported-format'],
  ['a HEIC of one box', '\0\0\0\x10ftypheic\0\0\0\0', 'unreadable'],
  ['an AVIF of one box', '\0\0\0\x10ftypavif\0\0\0\0', 'unreadable'],
  ['a video', '\0\0\0\x18ftypisom\0\0\0\0', 'unsupported-format'],
  ['TIFF', 'II*\0\x08\0\0\0', 'unsupported-format'],
  ['PDF', '%PDF-1.7\n', 'unsupported-format'],
  [
    'animated WebP',
    'RIFF\x40\0\0\0WEBPVP8X\x0a\0\0\0\x02\0\0\0\xff\x03\0\xff\x03\0',
    'unsupported-format',
  ],
])('%s is refused', async (_what, text, reason) => {
  expect(await reasonFor(new Uint8Array(Buffer.from(text, 'latin1')))).toBe(reason);
});

test('CMYK is refused with advice', async () => {
  const jpeg = fixture('d11.jpg').slice();
  const frame = jpeg.findIndex((byte, i) => byte === 0xff && jpeg[i + 1] === 0xc0);
  jpeg[frame + 9] = 4;
  expect(await reasonFor(jpeg)).toBe('unsupported-format');
});

test('a truncated JPEG is refused, wherever it ends', async () => {
  const whole = fixture('d05.jpg');
  for (const share of [0.001, 0.01, 0.1, 0.5, 0.9, 0.999]) {
    expect(await reasonFor(whole.subarray(0, Math.floor(whole.length * share)))).toBe('unreadable');
  }
  expect(await reasonFor(whole)).toBe('accepted');
});

test('an aborted signal rejects with its reason', async () => {
  await expect(
    readPhoto(AbortSignal.abort(), fixture('d05.jpg'), nodeDecoders),
  ).rejects.toMatchObject({
    name: 'AbortError',
  });
});
