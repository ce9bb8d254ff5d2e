import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import { readHeifHeader } from '../../../src/journey/1-photo/heif-header';
import { readPhoto } from '../../../src/journey/1-photo/read-photo';
import { makeUpright } from '../../../src/journey/1-photo/upright';
import type { GreyImage } from '../../../src/vision/grey-image';
import { accepted, fixture, never, read } from './read-files';

/** d26-tiles.heic is d26.jpg as a telephone held upright stores it, twelve tiles side by side with a thumbnail,
 *  a depth map, a colour profile and EXIF; 48-megapixel.heic has one of the tiles 192 times (fixtures/heif). */
const tiled = fixture('heif/d26-tiles.heic');
/** Peak signal-to-noise ratio, dB. */
function likeness(a: GreyImage, b: GreyImage): number {
  expect([a.width, a.height]).toEqual([b.width, b.height]);
  const squares = a.data.reduce((sum, value, i) => sum + (value - b.data[i]) ** 2, 0);
  return 10 * Math.log10((255 ** 2 * a.data.length) / squares);
}

const find = (text: string, from = 0) =>
  tiled.findIndex(
    (_, i) => i >= from && String.fromCharCode(...tiled.subarray(i, i + text.length)) === text,
  );

/** The tiles' file with some of its bytes overwritten. */
function spoilt(spoil: (bytes: Uint8Array, view: DataView) => void): Uint8Array {
  const bytes = tiled.slice();
  spoil(bytes, new DataView(bytes.buffer));
  return bytes;
}

/** Records of sixteen bytes: number, method, source, pieces, place and length (fixtures/heif/boxes.py). */
const recordOf = (item: number) => find('iloc') + 12 + 16 * (item - 1);
const tileAt = (view: DataView, item: number) => {
  const from = view.getUint32(recordOf(item) + 8);
  return { from, to: from + view.getUint32(recordOf(item) + 12) };
};

test('tiles are put together upright, within what coding loses, and the focal length is kept', async () => {
  const photo = await accepted(tiled);
  const jpeg = await accepted(fixture('photos/d26.jpg'));
  // heif-enc at quality 50 keeps 47.5 dB of this render, in tiles or in one piece.
  expect(likeness(photo.grey, makeUpright(jpeg.grey, 6))).toBeGreaterThan(47);
  expect(likeness(photo.grey, (await accepted(fixture('heif/d26.heic'))).grey)).toBeGreaterThan(47);
  for (const wrong of [8, 5, 7])
    expect(likeness(photo.grey, makeUpright(jpeg.grey, wrong))).toBeLessThan(20);
  expect(photo).toMatchObject({ f35Mm: 27, originalSize: { width: 1500, height: 2000 } });
});

test.each([
  [0, 4],
  [1, 2],
])('a mirror instead of the turn, axis %i', async (axis, orientation) => {
  const mirrored = spoilt((bytes) => {
    bytes.set(new TextEncoder().encode('imir'), find('irot'));
    bytes[find('irot') + 4] = axis;
  });
  expect(readHeifHeader(mirrored)!.turns).toEqual([orientation]);
  const jpeg = await accepted(fixture('photos/d26.jpg'));
  const { grey } = await accepted(mirrored);
  expect(likeness(grey, makeUpright(jpeg.grey, orientation))).toBeGreaterThan(47);
});

test('colours of another range are reckoned: never the luma as it is coded', async () => {
  const asCoded = (await accepted(tiled)).grey;
  // Of 16 to 235 (ITU-T H.273, full_range_flag 0): 16 is black, 235 white.
  const narrow = spoilt((bytes, view) => {
    const colour = find('colrprof') + 4;
    bytes.set(new TextEncoder().encode('nclx'), colour);
    for (const [i, value] of [1, 13, 6].entries()) view.setUint16(colour + 4 + 2 * i, value);
    bytes[colour + 10] = 0;
  });
  const { grey } = await accepted(narrow);
  const stretched = asCoded.data.map((y) => Math.min(255, Math.max(0, ((y - 16) * 255) / 219)));
  expect(likeness(grey, { ...grey, data: stretched })).toBeGreaterThan(40);
  expect(likeness(grey, asCoded)).toBeLessThan(35);
});

test.each(
  Object.entries({
    'its last byte is missing': tiled.subarray(0, tiled.length - 1),
    'half of it is missing': tiled.subarray(0, tiled.length / 2),
    'a tile is empty': spoilt((_, view) => view.setUint32(recordOf(6) + 12, 0)),
    'a tile lies beyond its end': spoilt((_, view) => view.setUint32(recordOf(6) + 8, 10_000_000)),
    'a tile is cut short': spoilt((_, view) => view.setUint32(recordOf(6) + 12, 5000)),
    'a tile was not received': spoilt((bytes, view) => {
      const { from, to } = tileAt(view, 6);
      bytes.fill(0, from, to);
    }),
    'a tile was received in part': spoilt((bytes, view) => {
      const { from, to } = tileAt(view, 6);
      bytes.fill(0, (from + to) >> 1, to - 20);
    }),
    'a tile is no image': spoilt((bytes) => bytes.set([0x78], find('hvc1', find('iinf')) + 3)),
    'a tile is not there': spoilt((_, view) => view.setUint16(find('dimg') + 8 + 2 * 5, 99)),
    'a tile too few is listed': spoilt((_, view) => view.setUint16(find('dimg') + 6, 11)),
    'the grid has a column more': spoilt((bytes) => bytes.set([4], find('idat') + 4 + 3)),
    'the grid has a row less': spoilt((bytes) => bytes.set([1], find('idat') + 4 + 2)),
    'the grid is wider than its tiles': spoilt((_, view) =>
      view.setUint16(find('idat') + 4 + 4, 3000),
    ),
    'the grid is lower than it says': spoilt((_, view) =>
      view.setUint16(find('idat') + 4 + 6, 1000),
    ),
  }),
)('refused with advice: %s', async (_what, bytes) => {
  const result = await read(bytes);
  expect(result).toMatchObject({ ok: false, reason: 'unreadable' });
  if (!result.ok) expect(result.advice).toMatch(/send it again/);
});

test('a photo that is clipped has the size and the pixels that are left', async () => {
  // Numerators and denominators: width, height, and how far its middle lies from the image's. It takes the
  // place of the profile, which nothing here needs.
  const clap = [1000, 1, 1500, 1, -250, 1, 0, 1];
  const clipped = spoilt((bytes, view) => {
    const at = find('colrprof') - 4;
    bytes.set(new TextEncoder().encode('clap'), at + 4);
    for (const [i, value] of clap.entries()) view.setInt32(at + 8 + 4 * i, value);
    // The tiles share the profile, and are not to be clipped: to them it is a property they lack.
    unlinkFromTiles(bytes, view);
  });
  expect(readHeifHeader(clipped)).toMatchObject({ width: 1000, height: 1500 });
  const { grey, originalSize } = await accepted(clipped);
  expect(originalSize).toEqual({ width: 1500, height: 1000 });
  const whole = (await accepted(tiled)).grey;
  // Turned clockwise, what was left of the middle by 250 lies above it: rows 250 to 1249.
  const rows = whole.data.slice(1500 * 250, 1500 * 1250);
  expect(likeness(grey, { width: 1500, height: 1000, data: rows })).toBeGreaterThan(60);
});

/** The first property of each tile is the profile: it is made to be the second, twice. */
function unlinkFromTiles(bytes: Uint8Array, view: DataView): void {
  let at = find('ipma') + 4 + 4 + 4;
  for (let tile = 1; tile <= 12; tile++) {
    expect(view.getUint16(at)).toBe(tile);
    bytes[at + 3] = bytes[at + 4];
    at += 3 + bytes[at + 2];
  }
}

test('48 megapixels are held in full, each tile in its place, and never in colour', async () => {
  // 73 MB of luma and chroma take 143 MB of the decoder's memory; in colour they would take 329.
  const enough = { ...nodeDecoders, heic: () => decoderWithPages(2600) };
  const result = await readPhoto(never, fixture('heif/48-megapixel.heic'), enough);
  if (!result.ok) throw new Error(`refused: ${result.reason}`);
  const { grey, f35Mm } = result.value;
  expect([grey.width, grey.height, f35Mm]).toEqual([6048, 8064, 27]);
  const one = (await accepted(tiled)).grey;
  // The sixth of the twelve, second in the second row. Turned clockwise, rows run leftwards from the right.
  const strip = (line: number) => {
    const from = 1500 * (512 + line) + 1500 - 1024;
    return Buffer.from(one.data.subarray(from, from + 512));
  };
  for (let y = 0; y < grey.height; y++) {
    const row = Buffer.from(grey.data.buffer, 6048 * y, 6048);
    const repeated = Buffer.concat(Array.from({ length: 12 }, () => strip(y % 512)));
    expect(row.equals(repeated.subarray(repeated.length - 6048))).toBe(true);
  }
});

/** The decoder with no more memory than so many pages of 64 KiB, as on a device that has no more to give: the
 *  largest size that its memory section states, overwritten (WebAssembly 1.0, 5.5.8). */
function decoderWithPages(pages: number): Promise<WebAssembly.Module> {
  const require = createRequire(import.meta.url);
  const code = new Uint8Array(
    readFileSync(require.resolve('libheif-js/libheif-wasm/libheif.wasm')),
  );
  let at = 8;
  const number = () => {
    let value = 0;
    for (let shift = 0; ; shift += 7) {
      const byte = code[at++];
      value |= (byte & 127) << shift;
      if (byte < 128) return value;
    }
  };
  while (code[at] !== 5) {
    at++;
    const size = number();
    at += size;
  }
  at++;
  // Its size, one memory, with a largest size, and the smallest.
  const [, count, limited] = [number(), number(), number(), number()];
  expect([count, limited]).toEqual([1, 1]);
  const from = at;
  number();
  for (let byte = from, left = pages; byte < at; byte++, left >>>= 7)
    code[byte] = (left & 127) | (byte < at - 1 ? 128 : 0);
  return WebAssembly.compile(code);
}

test.each([300, 1000, 1200, 2000])(
  'with memory of %i pages it is refused: a smaller size',
  async (pages) => {
    const poor = { ...nodeDecoders, heic: () => decoderWithPages(pages) };
    const result = await readPhoto(never, fixture('heif/48-megapixel.heic'), poor);
    expect(result).toMatchObject({
      ok: false,
      reason: 'too-large',
      advice: expect.stringContaining('12 megapixels'),
    });
  },
);

/** The file of 48 megapixels with other numbers for its size. */
function ofSize(width: number, height: number): Uint8Array {
  const bytes = fixture('heif/48-megapixel.heic');
  const view = new DataView(bytes.buffer);
  const large = (at: number) => view.getUint32(at) === 8064 && view.getUint32(at + 4) === 6048;
  const extent = bytes.findIndex((_, at) => at + 8 <= bytes.length && large(at));
  view.setUint32(extent, width);
  view.setUint32(extent + 4, height);
  // Version, flags, rows, columns, and 16 bits each (23008-12, 6.6.2.3).
  const grid = Buffer.from(bytes.buffer).indexOf('idat') + 8;
  view.setUint16(grid, width);
  view.setUint16(grid + 2, height);
  return bytes;
}

test('beyond 50 megapixels it is held at half its size, as a JPEG is', async () => {
  const whole = (await accepted(tiled)).grey;
  const { grey, originalSize } = await accepted(ofSize(8192, 6144));
  expect(originalSize).toEqual({ width: 6144, height: 8192 });
  expect([grey.width, grey.height]).toEqual([3072, 4096]);
  // The tile of the second row and column, by means of four pixels; it begins 1024 from the right.
  const mean = (x: number, y: number) => {
    const at = 1500 * (512 + 2 * y) + 1500 - 1024 + 2 * x;
    const four = [at, at + 1, at + 1500, at + 1501].map((place) => whole.data[place]);
    return Math.round(four.reduce((sum, one) => sum + one) / 4);
  };
  for (const [left, top] of [
    [0, 0],
    [2816, 3840],
  ])
    for (let y = 0; y < 256; y++)
      for (let x = 0; x < 256; x++) {
        const got = grey.data[3072 * (top + y) + left + x];
        if (got !== mean(x, y)) expect([x, y, got]).toEqual([x, y, mean(x, y)]);
      }
});

test('beyond 200 megapixels it is refused before anything is decoded', async () => {
  const unasked = { ...nodeDecoders, heic: () => Promise.reject(new Error('not asked for')) };
  expect(await readPhoto(never, ofSize(20_000, 10_240), unasked)).toMatchObject({
    ok: false,
    reason: 'too-large',
    advice: expect.stringContaining('12 megapixels'),
  });
});
