import ExifReader from 'exifreader';
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { cameraFactsOf, withCameraFacts } from '../../../src/journey/8-sheet/jpeg-camera-facts';
import { stripJpeg } from '../../../src/journey/8-sheet/jpeg-strip';
import { decodeJpeg, encodeJpeg } from '../../handover/node-jpeg';
import { examplePicture, secrets, withMetadata } from './example';

let plain: Uint8Array;
let camera: Uint8Array;
beforeAll(async () => {
  plain = await encodeJpeg(examplePicture(321, 203), 80);
  camera = withMetadata(plain);
});

const holds = (bytes: Uint8Array, text: string) =>
  Buffer.from(bytes).includes(Buffer.from(text, 'latin1'));

test('every trace of metadata is gone from the bytes', () => {
  for (const secret of secrets) expect(holds(camera, secret)).toBe(true);
  const stripped = stripJpeg(camera);
  if (!stripped.ok) throw new Error(stripped.reason);
  for (const secret of [...secrets, 'Exif'])
    expect(holds(stripped.value.bytes, secret)).toBe(false);
  expect(stripped.value).toMatchObject({ widthPx: 321, heightPx: 203 });
});

test('the picture decodes to the same pixels', async () => {
  const stripped = stripJpeg(camera);
  if (!stripped.ok) throw new Error(stripped.reason);
  const before = await decodeJpeg(plain);
  const after = await decodeJpeg(stripped.value.bytes);
  expect(Buffer.compare(Buffer.from(after.data), Buffer.from(before.data))).toBe(0);
});

test('stripping twice changes nothing', () => {
  const once = stripJpeg(camera);
  if (!once.ok) throw new Error(once.reason);
  const twice = stripJpeg(once.value.bytes);
  expect(twice.ok && Buffer.compare(twice.value.bytes, once.value.bytes)).toBe(0);
});

test('camera facts put back are read by an EXIF reader, and removed again', () => {
  const stripped = stripJpeg(camera);
  if (!stripped.ok) throw new Error(stripped.reason);
  const facts = { orientation: 6, focal35Mm: 26, flashFired: true };
  const local = withCameraFacts(stripped.value.bytes, facts);
  const tags = ExifReader.load(local.slice().buffer);
  expect(tags.Orientation?.value).toBe(6);
  expect(tags.FocalLengthIn35mmFilm?.value).toBe(26);
  expect(tags.Flash?.value).toBe(1);
  expect(cameraFactsOf(local)).toEqual(facts);
  expect(cameraFactsOf(stripped.value.bytes)).toEqual({
    orientation: 1,
    focal35Mm: null,
    flashFired: false,
  });
  const again = stripJpeg(local);
  expect(again.ok && Buffer.compare(again.value.bytes, stripped.value.bytes)).toBe(0);
});

test('other files and cut files are refused', () => {
  expect(stripJpeg(new TextEncoder().encode('not a photo'))).toMatchObject({ reason: 'not-jpeg' });
  expect(stripJpeg(new Uint8Array(0))).toMatchObject({ reason: 'not-jpeg' });
  for (let cut = 4; cut < plain.length - 1; cut += 97)
    expect(stripJpeg(plain.subarray(0, cut)).ok, `cut at ${cut}`).toBe(false);
  expect(stripJpeg(plain.subarray(0, plain.length - 2)).ok).toBe(false);
});

test('no bytes make it throw, and what it accepts holds no application data', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.nat({ max: camera.length - 1 }), fc.nat({ max: 255 })), {
        maxLength: 12,
      }),
      (flips) => {
        const damaged = camera.slice();
        for (const [at, value] of flips) damaged[at] = value;
        const stripped = stripJpeg(damaged);
        if (stripped.ok) expect(stripJpeg(stripped.value.bytes).ok).toBe(true);
      },
    ),
    { seed: 8, numRuns: 300 },
  );
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 400 }), (tail) => {
      stripJpeg(Uint8Array.from([0xff, 0xd8, ...tail]));
    }),
    { seed: 8, numRuns: 500 },
  );
});
