import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { serve } from '../../.ci/serve.mjs';
import type { Sheet } from '../../src/journey/8-sheet/sheet-schema';
import { decodeJpeg, encodeJpeg, shrink } from '../handover/node-jpeg';
import { exampleSheet } from '../journey/8-sheet/example';
import type {} from './paper-harness/paper-harness';

const built = new URL('../../test-results/paper-harness/', import.meta.url).pathname;
// A path-traced render, not a photograph; stored upside down (orientation 3).
const camera = readFileSync(new URL('../../fixtures/photos/d01.jpg', import.meta.url));
const photo = camera.toString('base64');

let site: Awaited<ReturnType<typeof serve>>;
let sheet: Sheet;
// What is built in one folder serves the whole file.
test.describe.configure({ mode: 'default' });
test.beforeAll(async () => {
  execFileSync('npx', [
    'vite',
    'build',
    'tests/e2e/paper-harness',
    '-c',
    'vite.config.ts',
    '--outDir',
    built,
    '--emptyOutDir',
    '--logLevel',
    'warn',
  ]);
  site = await serve(0, built);
  const { sheet: example } = await exampleSheet();
  // The example's photo is replaced by the fixture.
  const shots = example.shots.map((shot) => ({
    ...shot,
    photo: { ...shot.photo, widthPx: 1600, heightPx: 1200 },
  }));
  sheet = { ...example, shots };
});
test.afterAll(() => {
  site.server.close();
});
test.beforeEach(async ({ page }) => {
  await page.goto(site.address);
  await page.waitForFunction(() => 'paper' in window);
});

test('a shared picture opens as its sheet after a messenger made it 1280 px at quality 60', async ({
  page,
}) => {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  const picture = Buffer.from(
    await page.evaluate(([s, p]) => window.paper.share(s, p), [sheet, photo] as const),
    'base64',
  );
  for (const trace of ['Exif', 'GPS', 'ICC_PROFILE'])
    expect(picture.includes(trace), trace).toBe(false);
  const arrived = Buffer.from(
    await encodeJpeg(shrink(await decodeJpeg(new Uint8Array(picture)), 1280), 60),
  ).toString('base64');
  const opened = await page.evaluate(([a, p]) => window.paper.open(a, p), [
    arrived,
    photo,
  ] as const);
  if (!opened.ok) throw new Error(opened.reason);
  expect(opened.sheet).toMatchObject({
    id: sheet.id,
    title: sheet.title,
    measurement: sheet.measurement,
    readings: sheet.readings,
    conclusion: sheet.conclusion,
  });
  expect(opened.sheet.shots[0]!.photo.recompressed).toBe(true);
  expect(opened.photos).toBe(1);
  // The same scene, upright: grey levels of a 32 × 24 miniature.
  expect(opened.difference).toBeLessThan(6);
  expect(opened.differenceTurned).toBeGreaterThan(3 * opened.difference);
  expect(complaints).toEqual([]);
});

test('an ordinary photo is not taken for a shared picture', async ({ page }) => {
  const opened = await page.evaluate(([p]) => window.paper.open(p, p), [photo] as const);
  expect(opened).toMatchObject({ ok: false, reason: 'no-code' });
});

test('a page closed in the middle of writing leaves whole sheets only', async ({
  page,
  context,
}) => {
  await page.evaluate(
    ([s, p]) => {
      void window.paper.keepForEver(s, p);
    },
    [sheet, photo] as const,
  );
  await page.waitForTimeout(700);
  await page.close();
  const after = await context.newPage();
  await after.goto(site.address);
  await after.waitForFunction(() => 'paper' in window);
  const inventory = await after.evaluate(() => window.paper.inventory());
  if (!inventory.ok) throw new Error(inventory.reason);
  expect(inventory.entries.length).toBeGreaterThan(1);
  expect(inventory.entries.filter((entry) => !entry.whole)).toEqual([]);
});

test('a full device refuses with advice and keeps what was there', async ({ page, context }) => {
  const devtools = await context.newCDPSession(page);
  // Before the first write: Chromium remembers for a while how much room there was.
  await devtools.send('Storage.overrideQuotaForOrigin', {
    origin: new URL(site.address).origin,
    quotaSize: 3e6,
  });
  let kept = 0;
  let last: Awaited<ReturnType<typeof window.paper.keep>> = { ok: true, value: undefined };
  while (last.ok && kept < 100) {
    const id = `00000000-0000-4000-8000-${String(kept).padStart(12, '0')}`;
    last = await page.evaluate(([s, p]) => window.paper.keep(s, p), [
      { ...sheet, id },
      photo,
    ] as const);
    if (last.ok) kept++;
  }
  expect(last).toMatchObject({ ok: false, reason: 'no-room' });
  expect(kept).toBeGreaterThan(0);
  const inventory = await page.evaluate(() => window.paper.inventory());
  if (!inventory.ok) throw new Error(inventory.reason);
  expect(inventory.entries).toHaveLength(kept);
  expect(inventory.entries.every((entry) => entry.whole)).toBe(true);
});

test('another tab hears of a kept sheet, and sees its thumbnail', async ({ page, context }) => {
  const other = await context.newPage();
  await other.goto(site.address);
  await other.waitForFunction(() => 'paper' in window);
  await page.evaluate(([s, p]) => window.paper.keep(s, p), [sheet, photo] as const);
  await expect
    .poll(() => other.evaluate(() => window.paper.heard()))
    .toEqual([{ kind: 'kept', id: sheet.id }]);
  const inventory = await other.evaluate(() => window.paper.inventory());
  if (!inventory.ok) throw new Error(inventory.reason);
  expect(inventory.entries[0]!.thumbnailBytes).toBeGreaterThan(1000);
});
