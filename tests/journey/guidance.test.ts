import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { readPhoto } from '../../src/journey/1-photo/read-photo';
import { judgeFrame } from '../../src/journey/guidance';
import type { GreyImage } from '../../src/vision/grey-image';
import type { Vision } from '../../src/vision/vision';

let vision: Vision;
beforeAll(async () => {
  vision = await loadNodeVision();
});

/** A render as a camera's video would show it, 1280 px wide. */
async function frameOf(name: string): Promise<GreyImage> {
  const url = new URL(`../../fixtures/photos/${name}.jpg`, import.meta.url);
  const photo = await readPhoto(
    new AbortController().signal,
    new Uint8Array(readFileSync(url)),
    nodeDecoders,
  );
  if (!photo.ok) throw new Error(photo.reason);
  const { grey } = photo.value;
  return vision.resize(grey, 1280, Math.round((1280 * grey.height) / grey.width));
}

const changed = (frame: GreyImage, change: (value: number, x: number, y: number) => number) => ({
  ...frame,
  data: frame.data.map((value, i) => change(value, i % frame.width, Math.floor(i / frame.width))),
});

/** Judges a frame that follows another of the same view. */
function judgeSteady(frame: GreyImage) {
  return judgeFrame(frame, judgeFrame(frame, null, vision).seen, vision).guidance;
}

test.each(['d05', 'd13', 'd16', 'd26'])(
  'a good view is ready once it is steady (%s)',
  async (name) => {
    const frame = await frameOf(name);
    const first = judgeFrame(frame, null, vision);
    expect(first.guidance.ready).toBe(false);
    const second = judgeFrame(frame, first.seen, vision).guidance;
    expect(second).toMatchObject({
      ready: true,
      referenceSeen: true,
      moving: false,
      tooDark: false,
    });
  },
);

test('a view that moves is not ready', async () => {
  const frame = await frameOf('d26');
  const shift = 12;
  const shifted = changed(
    frame,
    (_, x, y) => frame.data[y * frame.width + Math.min(x + shift, 1279)],
  );
  const { seen } = judgeFrame(frame, null, vision);
  expect(judgeFrame(shifted, seen, vision).guidance).toMatchObject({ moving: true, ready: false });
});

test('a dark view says so', async () => {
  const dark = changed(await frameOf('d26'), (value) => value / 3);
  expect(judgeSteady(dark)).toMatchObject({ tooDark: true, ready: false });
});

test('an empty window says so', async () => {
  const frame = await frameOf('d26');
  // Paints over the middle, where the window lies.
  const empty = changed(frame, (value, x, y) =>
    Math.abs(x / 1280 - 0.5) < 0.33 && Math.abs(y / frame.height - 0.5) < 0.28 ? 200 : value,
  );
  expect(judgeSteady(empty)).toMatchObject({
    referenceSeen: true,
    fittingOutside: true,
    ready: false,
  });
});

test('without a card there is nothing to go by', async () => {
  const blank = changed(await frameOf('d26'), () => 180);
  expect(judgeSteady(blank)).toMatchObject({ referenceSeen: false, tiltDeg: null, ready: false });
});

test('twelve frames a second at 1280 × 960, with time to spare', async () => {
  const frame = await frameOf('d26');
  judgeSteady(frame);
  const times = Array.from({ length: 9 }, () => {
    const start = performance.now();
    judgeFrame(frame, null, vision);
    return performance.now() - start;
  }).sort((a, b) => a - b);
  // The best of several: other work on a shared machine is not the program's.
  expect(times[0]).toBeLessThan(1000 / 12);
});

test.each([
  ['gi011', 'id1'],
  ['gi004', 'id1'],
  ['gs002', 'a4'],
] as const)('%s: its outline is seen, and steady it is ready', async (name, kind) => {
  const frame = await frameOf(`../references/${name}`);
  const first = judgeFrame(frame, null, vision, kind);
  expect(first.guidance).toMatchObject({ referenceSeen: true, ready: false });
  const truth = JSON.parse(
    readFileSync(new URL(`../../fixtures/references/${name}.truth.json`, import.meta.url), 'utf8'),
  );
  // A phone's usual focal length is assumed, as for the card.
  expect(Math.abs(first.guidance.tiltDeg! - truth.tilt_deg)).toBeLessThan(8);
  const steady = judgeFrame(frame, first.seen, vision, kind).guidance;
  expect(steady).toMatchObject({ moving: false, ready: true });
  // A sheet is no bank card, nor the other way round.
  const other = kind === 'id1' ? 'letter' : 'id1';
  expect(judgeFrame(frame, null, vision, other).guidance.referenceSeen).toBe(false);
});

test('the printed card is guided by its marks whatever was asked for', async () => {
  const frame = await frameOf('d26');
  const { seen } = judgeFrame(frame, null, vision, 'id1');
  expect(judgeFrame(frame, seen, vision, 'id1').guidance.ready).toBe(true);
});
