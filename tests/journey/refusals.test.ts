import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { readPhoto } from '../../src/journey/1-photo/read-photo';
import type { GreyImage } from '../../src/vision/grey-image';
import type { Vision } from '../../src/vision/vision';
import { measured } from '../measured';
import { makePng } from './1-photo/make-files';
import { cardAlone, cropped, mirrored, noCard } from './stand-ins';

let vision: Vision;
beforeAll(async () => {
  vision = await loadNodeVision();
});

const never = new AbortController().signal;

const fixture = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../fixtures/photos/${name}.jpg`, import.meta.url)));

const identify = (bytes: Uint8Array) => measured(bytes);

/** The reason, or what else came out. */
async function reasonFor(bytes: Uint8Array): Promise<string> {
  const answer = await identify(bytes);
  if (answer.outcome !== 'refused') return answer.outcome;
  expect(answer.refusal.advice).toMatch(/^[A-Z].{20,}\.$/s);
  return answer.refusal.reason;
}

async function greyOf(name: string): Promise<GreyImage> {
  const photo = await readPhoto(never, fixture(name), nodeDecoders);
  if (!photo.ok) throw new Error(photo.reason);
  return photo.value.grey;
}

test('no card', async () => {
  expect(await reasonFor(makePng(noCard(1600, 1200)))).toBe('no-card');
});

test.each(['light', 'dark'] as const)('the card alone, %s field', async (field) => {
  expect(await reasonFor(makePng(cardAlone(field, 7)))).toBe('no-thread');
});

test.each([
  ['d26', 4],
  ['d26', 6],
  ['d26', 9],
  ['d05', 4],
  ['d05', 14],
  ['d11', 4],
  ['d11', 9],
  ['d11', 14],
])('a blurred photo: %s, σ %i px', async (name, sigmaPx) => {
  expect(await reasonFor(makePng(vision.blur(await greyOf(name), sigmaPx)))).toBe('too-blurred');
});

test('a photo of 400 pixels', async () => {
  const grey = await greyOf('d26');
  expect(await reasonFor(makePng(vision.resize(grey, 400, 300)))).toBe('too-coarse');
});

test('the thread cut off by the frame', async () => {
  const whole = await identify(fixture('d26'));
  const axis = whole.outcome === 'measured' ? whole.overlay.axis : null;
  if (!axis) throw new Error('d26 gives no axis to cut');
  const grey = await greyOf('d26');
  const [[x0, y0], [x1, y1]] = axis;
  const [x, y] = [Math.round((x0 + x1) / 2), Math.round((y0 + y1) / 2)];
  const across = Math.abs(x1 - x0) > Math.abs(y1 - y0);
  const rest = across
    ? x0 < x1
      ? cropped(grey, x, 0, grey.width - x, grey.height)
      : cropped(grey, 0, 0, x, grey.height)
    : y0 < y1
      ? cropped(grey, 0, y, grey.width, grey.height - y)
      : cropped(grey, 0, 0, grey.width, y);
  expect(await reasonFor(makePng(rest))).toBe('cut-off');
});

test('a photo that ends within the window, before the fitting', async () => {
  const grey = await greyOf('d26');
  const strip = cropped(grey, 0, grey.height * 0.7, grey.width, grey.height * 0.3);
  expect(await reasonFor(makePng(strip))).toBe('cut-off');
});

test('two fittings in the window', async () => {
  const grey = await greyOf('d17');
  const data = grey.data.slice();
  // The one that lies there once more, below.
  const [left, top, width, height, down] = [800, 600, 640, 300, 310];
  for (let y = top; y < top + height; y++)
    data.set(
      grey.data.subarray(y * grey.width + left, y * grey.width + left + width),
      (y + down) * grey.width + left,
    );
  expect(await reasonFor(makePng({ ...grey, data }))).toBe('several-fittings');
});

test('a block without a thread beside the fitting is no second one', async () => {
  const grey = await greyOf('d17');
  const data = grey.data.slice();
  const [left, top, width, height] = [830, 950, 420, 190];
  for (let y = top; y < top + height; y++)
    data.fill(60, y * grey.width + left, y * grey.width + left + width);
  const [alone, beside] = [
    await identify(fixture('d17')),
    await identify(makePng({ ...grey, data })),
  ];
  if (alone.outcome === 'refused' || beside.outcome === 'refused')
    throw new Error(beside.outcome === 'refused' ? beside.refusal.reason : 'd17 is refused');
  const { value, u } = alone.measurement.pitchMm;
  expect(Math.abs(beside.measurement.pitchMm.value - value)).toBeLessThan(u);
});

test('a card shot through glass', async () => {
  expect(await reasonFor(makePng(mirrored(await greyOf('d26'))))).toBe('card-mirrored');
});

test('text named .jpg, a truncated JPEG, a single pixel', async () => {
  expect(await reasonFor(new TextEncoder().encode('not a photo\n'))).toBe('unreadable');
  const photo = fixture('d26');
  expect(await reasonFor(photo.subarray(0, photo.length / 2))).toBe('unreadable');
  const pixel = { width: 1, height: 1, data: Uint8Array.of(128) };
  expect(await reasonFor(makePng(pixel))).toBe('too-coarse');
});
