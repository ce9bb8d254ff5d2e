import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodeDecoders } from '../../../src/cli/node-decoders';
import { readPhoto } from '../../../src/journey/1-photo/read-photo';
import type { GreyImage } from '../../../src/vision/grey-image';
import { makeExif, makePng, makeWebp } from './make-files';

const never = new AbortController().signal;
const refusals = new Set(['unreadable', 'unsupported-format', 'too-large', 'too-coarse']);

/** Mulberry32: 32 bits of state are plenty for choosing places. */
function seeded(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 2 ** 32) * below);
  };
}

/** One to eight flipped bits, half of the time near the start, where the structure is; sometimes
 *  a piece cut out or the end cut off. */
function damage(bytes: Uint8Array, random: (below: number) => number): Uint8Array {
  const damaged = bytes.slice();
  const reach = random(2) ? bytes.length : Math.min(bytes.length, 700);
  for (let flips = 1 + random(8); flips > 0; flips--) damaged[random(reach)] ^= 1 << random(8);
  if (random(8) === 0) return damaged.subarray(0, random(bytes.length));
  if (random(8) === 0) {
    const from = random(bytes.length);
    return new Uint8Array(
      Buffer.concat([damaged.subarray(0, from), damaged.subarray(from + random(5000))]),
    );
  }
  return damaged;
}

const scene: GreyImage = {
  width: 640,
  height: 480,
  data: Uint8Array.from({ length: 640 * 480 }, (_, i) => (i * i) >> 7),
};

/** Every damaged file must end in a photo or a known refusal, soon, and leave the next file alone. */
async function survives(original: Uint8Array, count: number, seed: number): Promise<void> {
  const random = seeded(seed);
  const reference = await readPhoto(never, original, nodeDecoders);
  if (!reference.ok) throw new Error(reference.reason);
  let slowestMs = 0;
  let accepted = 0;
  for (let i = 0; i < count; i++) {
    const start = performance.now();
    const result = await readPhoto(never, damage(original, random), nodeDecoders);
    slowestMs = Math.max(slowestMs, performance.now() - start);
    if (result.ok) {
      accepted++;
      const { width, height, data } = result.value.grey;
      expect(data.length).toBe(width * height);
    } else {
      expect(refusals).toContain(result.reason);
    }
  }
  expect(slowestMs).toBeLessThan(5000);
  expect(accepted).toBeLessThan(count);
  const again = await readPhoto(never, original, nodeDecoders);
  expect(again.ok && Buffer.compare(again.value.grey.data, reference.value.grey.data)).toBe(0);
}

test('500 damaged JPEGs', async () => {
  const photo = readFileSync(new URL('../../../fixtures/photos/d05.jpg', import.meta.url));
  await survives(new Uint8Array(photo), 500, 1);
});

test('150 damaged PNGs', async () => {
  await survives(
    makePng(scene, { colour: 2, exif: makeExif({ orientation: 6, f35Mm: 26 }) }),
    150,
    2,
  );
});

test('150 damaged WebPs', async () => {
  await survives(await makeWebp(scene, true), 75, 3);
  await survives(await makeWebp(scene, false), 75, 4);
});
