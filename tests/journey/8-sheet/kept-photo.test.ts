import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import { readPhoto } from '../../../src/journey/1-photo/read-photo';
import { cameraFactsOf, withCameraFacts } from '../../../src/journey/8-sheet/jpeg-camera-facts';
import { stripJpeg } from '../../../src/journey/8-sheet/jpeg-strip';
import { makeExif, withExif, withoutExif } from '../1-photo/make-files';

const fixtures = new URL('../../../fixtures/photos/', import.meta.url);

const fixture = (name: string) => new Uint8Array(readFileSync(new URL(`${name}.jpg`, fixtures)));

// Path-traced renders (fixtures/photos/README.md): with and without EXIF, one upside down.
test.each([
  ['d01', fixture('d01')],
  ['d09', fixture('d09')],
  ['d21', fixture('d21')],
  [
    'd09 with flash',
    withExif(withoutExif(fixture('d09')), makeExif({ orientation: 3, f35Mm: 26, flash: 0x19 })),
  ],
])('%s as kept gives stage 1 the very same photo', async (name, original) => {
  const stripped = stripJpeg(original);
  if (!stripped.ok) throw new Error(stripped.reason);
  const kept = withCameraFacts(stripped.value.bytes, cameraFactsOf(original));
  const signal = new AbortController().signal;
  const [before, after] = [
    await readPhoto(signal, original, nodeDecoders),
    await readPhoto(signal, kept, nodeDecoders),
  ];
  if (!before.ok || !after.ok) throw new Error('not read');
  expect(after.value.f35Mm).toBe(before.value.f35Mm);
  expect(after.value.flashFired).toBe(before.value.flashFired);
  expect(after.value.flashFired).toBe(name.endsWith('with flash'));
  expect(after.value.grey.width).toBe(before.value.grey.width);
  expect(
    Buffer.compare(Buffer.from(after.value.grey.data), Buffer.from(before.value.grey.data)),
  ).toBe(0);
});
