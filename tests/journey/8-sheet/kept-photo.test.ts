import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import { readPhoto } from '../../../src/journey/1-photo/read-photo';
import { cameraFactsOf, withCameraFacts } from '../../../src/journey/8-sheet/jpeg-camera-facts';
import { stripJpeg } from '../../../src/journey/8-sheet/jpeg-strip';

const fixtures = new URL('../../../fixtures/photos/', import.meta.url);

// Path-traced renders (fixtures/photos/README.md): with and without EXIF, one upside down.
test.each(['d01', 'd09', 'd21'])('%s as kept gives stage 1 the very same photo', async (name) => {
  const original = new Uint8Array(readFileSync(new URL(`${name}.jpg`, fixtures)));
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
  expect(after.value.grey.width).toBe(before.value.grey.width);
  expect(
    Buffer.compare(Buffer.from(after.value.grey.data), Buffer.from(before.value.grey.data)),
  ).toBe(0);
});
