import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { readPhoto } from '../../src/journey/1-photo/read-photo';
import { defaultOptions, type Identification } from '../../src/journey/identification';
import { identifyPhoto } from '../../src/journey/identify';
import type { GreyImage } from '../../src/vision/grey-image';
import type { Vision } from '../../src/vision/vision';
import { makePng } from './1-photo/make-files';
import {
  besides,
  cardAlone,
  cropped,
  foreignMarkers,
  fromScreen,
  noCard,
  withCopy,
} from './stand-ins';

/** Photos that nobody meant. Each ends in an answer or a refusal within ten seconds, none is
 *  settled as a thread that it does not show, and the photo after them is measured as ever. */
let vision: Vision;
let ordinary: GreyImage;
beforeAll(async () => {
  vision = await loadNodeVision();
  ordinary = await greyOf('d26');
});

const never = new AbortController().signal;
const fixture = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../fixtures/photos/${name}.jpg`, import.meta.url)));

async function greyOf(name: string): Promise<GreyImage> {
  const photo = await readPhoto(never, fixture(name), nodeDecoders);
  if (!photo.ok) throw new Error(photo.reason);
  return photo.value.grey;
}

const identify = (bytes: Uint8Array): Promise<Identification> =>
  identifyPhoto(never, bytes, defaultOptions, { vision, decoders: nodeDecoders }, () => {});

const scaled = (image: GreyImage, factor: number) =>
  vision.resize(image, Math.round(image.width * factor), Math.round(image.height * factor));

const odd: readonly [string, () => GreyImage][] = [
  ['two cards, one fitting', () => besides(scaled(ordinary, 0.8), cardAlone('light', 5))],
  ['two photos of the same in one', () => besides(scaled(ordinary, 0.7), scaled(ordinary, 0.7))],
  ['half a card', () => cropped(ordinary, 0, 0, ordinary.width >> 1, ordinary.height)],
  ['a quarter of a card', () => cropped(ordinary, 0, 0, ordinary.width >> 1, ordinary.height >> 1)],
  ['foreign markers', () => foreignMarkers(1600, 1200)],
  ['a card on a screen', () => fromScreen(ordinary)],
  ['a fitting twice in the window', () => twice(ordinary)],
  ['all black', () => ({ width: 1200, height: 900, data: new Uint8Array(1200 * 900) })],
  ['all white', () => ({ width: 1200, height: 900, data: new Uint8Array(1200 * 900).fill(255) })],
  ['one pixel high', () => ({ width: 3000, height: 1, data: new Uint8Array(3000).fill(90) })],
  ['noise', () => noise(1200, 900)],
  ['a bare table', () => noCard(1200, 900)],
  ['soft shapes', () => vision.blur(noCard(1200, 900), 20)],
  ['overexposed', () => levels(ordinary, (value) => Math.min(255, value * 3))],
  ['black and white only', () => levels(ordinary, (value) => (value > 120 ? 255 : 0))],
  ['negative', () => levels(ordinary, (value) => 255 - value)],
];

const levels = (image: GreyImage, map: (value: number) => number) => ({
  ...image,
  data: image.data.map(map),
});

/** The middle of the window once more, further to one side. */
function twice(image: GreyImage): GreyImage {
  const width = Math.round(0.2 * image.width);
  const height = Math.round(0.25 * image.height);
  const from = { x: (image.width - width) >> 1, y: (image.height - height) >> 1, width, height };
  return withCopy(image, from, { x: Math.round(0.2 * image.width), y: from.y });
}

function noise(width: number, height: number): GreyImage {
  let state = 7;
  const data = new Uint8Array(width * height).map(() => {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    return state >> 16;
  });
  return { width, height, data };
}

test.each(odd)('%s', async (_what, make) => {
  const bytes = makePng(make());
  const start = performance.now();
  const answer = await identify(bytes);
  expect(performance.now() - start).toBeLessThan(10_000);
  if (answer.outcome === 'refused') {
    expect(answer.refusal.advice).toMatch(/^[A-Z].{20,}\.$/s);
  } else {
    const { decision } = answer.conclusion;
    expect(decision.state === 'settled' ? decision.thread : '3/4-16 UNF').toMatch(/^3\/4-16/);
  }
});

test('and the next photo is measured as ever', async () => {
  const fresh = await loadNodeVision();
  const tools = { vision: fresh, decoders: nodeDecoders };
  const alone = await identifyPhoto(never, fixture('d26'), defaultOptions, tools, () => {});
  const after = await identify(fixture('d26'));
  expect({ ...after, timingsMs: null }).toEqual({ ...alone, timingsMs: null });
  expect(after.outcome).toBe('measured');
});
