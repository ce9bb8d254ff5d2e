import { readdirSync, readFileSync } from 'node:fs';
import ExifReader from 'exifreader';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readExif } from '../../../src/journey/1-photo/exif';
import { readJpegHeader } from '../../../src/journey/1-photo/image-header';
import { makeExif } from './make-files';

const photos = new URL('../../../fixtures/photos/', import.meta.url);
const names = readdirSync(photos).filter((name) => name.endsWith('.jpg'));

test.each(names)('%s: the same facts as ExifReader finds', (name) => {
  const bytes = readFileSync(new URL(name, photos));
  const header = readJpegHeader(new Uint8Array(bytes))!;
  const tags = ExifReader.load(bytes);
  const facts = readExif(header.exif);
  expect(header.width).toBe(tags['Image Width']?.value);
  expect(header.height).toBe(tags['Image Height']?.value);
  expect(facts.orientation).toBe(tags.Orientation?.value ?? 1);
  expect(facts.f35Mm).toBe(tags.FocalLengthIn35mmFilm?.value ?? null);
  expect(facts.flashFired).toBe((Number(tags.Flash?.value ?? 0) & 1) === 1);
});

test('whatever is written is read back, in either byte order', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('II' as const, 'MM' as const),
      fc.integer({ min: 1, max: 8 }),
      fc.integer({ min: 8, max: 400 }),
      fc.integer({ min: 1, max: 65535 }),
      // 7 bits are in use; cameras write SHORTs with the rest as zero.
      fc.integer({ min: 0, max: 127 }),
      (order, orientation, f35Mm, width, flash) => {
        const pixelSize = { width, height: 70_000 };
        const facts = readExif(makeExif({ order, orientation, f35Mm, flash, pixelSize }));
        expect(facts).toEqual({ orientation, f35Mm, pixelSize, flashFired: flash % 2 === 1 });
      },
    ),
  );
});

// CIPA DC-008, Flash: off 0x10, automatic but not fired 0x18, automatic and fired 0x19, return light seen 0x07.
test.each([
  [undefined, false],
  [0, false],
  [0x10, false],
  [0x18, false],
  [0x01, true],
  [0x07, true],
  [0x19, true],
] as const)('Flash %s: fired is %s', (flash, fired) => {
  for (const order of ['II', 'MM'] as const)
    expect(
      readExif(makeExif({ order, ...(flash === undefined ? {} : { flash }) })).flashFired,
    ).toBe(fired);
});

test('any bytes give plausible facts', () => {
  const start = fc.constantFrom(
    [],
    [0x49, 0x49, 42, 0, 8, 0, 0, 0],
    [0x4d, 0x4d, 0, 42, 0, 0, 0, 8],
  );
  fc.assert(
    fc.property(start, fc.uint8Array({ maxLength: 400 }), (head, rest) => {
      const { orientation, f35Mm } = readExif(Uint8Array.from([...head, ...rest]));
      expect(orientation).toBeGreaterThanOrEqual(1);
      expect(orientation).toBeLessThanOrEqual(8);
      expect(f35Mm === null || (f35Mm >= 8 && f35Mm <= 400)).toBe(true);
    }),
    { numRuns: 1000, seed: 5 },
  );
});

test('an EXIF directory that points at itself ends', () => {
  const exif = makeExif({ orientation: 3 });
  new DataView(exif.buffer).setUint32(10 + 12 + 8, 8);
  expect(readExif(exif).orientation).toBe(3);
});
