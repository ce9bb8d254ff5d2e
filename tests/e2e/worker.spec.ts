import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { serve } from '../../.ci/serve.mjs';
import { makePng, makeWebp } from '../journey/1-photo/make-files';
import { noCard } from '../journey/stand-ins';

/** The worker in a real browser, without the page around it. */
const fixtures = new URL('../../fixtures/', import.meta.url);
const photosFolder = new URL('photos/', fixtures);
const built = new URL('../../test-results/harness/', import.meta.url).pathname;
const base64 = (name: string) =>
  readFileSync(new URL(`${name}.jpg`, photosFolder)).toString('base64');

let site: Awaited<ReturnType<typeof serve>>;
// What is built in one folder serves the whole file.
test.describe.configure({ mode: 'default' });
test.beforeAll(async () => {
  execFileSync('npx', [
    'vite',
    'build',
    'tests/harness',
    '-c',
    'vite.config.ts',
    '--outDir',
    built,
    '--emptyOutDir',
    '--logLevel',
    'warn',
  ]);
  site = await serve(0, built);
});
test.afterAll(() => {
  site.server.close();
});

test.beforeEach(async ({ page }) => {
  await page.goto(site.address);
  await page.evaluate(() => window.harness.ready());
});

const identify = (page: Page, name: string) =>
  page.evaluate((photo) => window.harness.identify(photo), base64(name));
const identifyFile = (page: Page, file: URL) =>
  page.evaluate((photo) => window.harness.identify(photo), readFileSync(file).toString('base64'));

test('the browser and the command line give the same numbers', async ({ page }) => {
  const names = ['photos/d01.jpg', 'photos/d09.jpg', 'photos/d17.jpg', 'photos/d26.jpg'];
  const boxed = ['heif/d26.heic', 'heif/d26-tiles.heic', 'heif/d26.avif'];
  const files = [...names, ...boxed].map((name) => new URL(name, fixtures));
  const paths = files.map((file) => file.pathname);
  const lines = execFileSync('npm', ['run', '--silent', 'measure', '--', '--json', ...paths], {
    encoding: 'utf8',
  });
  const byCommand = lines
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(byCommand.some(({ outcome }) => outcome === 'measured')).toBe(true);
  for (const [i, file] of files.entries()) {
    const inBrowser = await identifyFile(page, file);
    expect(inBrowser.outcome).toBe(byCommand[i].outcome);
    if (inBrowser.outcome === 'refused') {
      expect(inBrowser.refusal).toEqual(byCommand[i].refusal);
      continue;
    }
    // To the last bit: quantity/portable-math.ts says why that takes some care.
    const { pitchMm, majorDiameterMm, taper, correlation } = inBrowser.measurement;
    expect({ pitchMm, majorDiameterMm, taper, correlation }).toEqual({
      pitchMm: byCommand[i].thread.pitchMm,
      majorDiameterMm: byCommand[i].thread.majorDiameterMm,
      taper: byCommand[i].thread.taper,
      correlation: byCommand[i].thread.correlation,
    });
    expect(inBrowser.reference).toEqual(byCommand[i].reference);
    expect(inBrowser.conclusion.threads).toEqual(byCommand[i].threads);
  }
});

test('the same photo gives the same answer twice', async ({ page }) => {
  const [first, second] = [await identify(page, 'd26'), await identify(page, 'd26')];
  expect({ ...second, timingsMs: null }).toEqual({ ...first, timingsMs: null });
});

test('PNG and WebP are decoded under the same policy without eval', async ({ page }) => {
  const image = noCard(800, 600);
  for (const bytes of [makePng(image), await makeWebp(image, true), await makeWebp(image, false)]) {
    const photo = Buffer.from(bytes).toString('base64');
    const answer = await page.evaluate((file) => window.harness.identify(file), photo);
    // Decoded, or it would be 'unreadable'.
    expect(answer).toMatchObject({ outcome: 'refused', refusal: { reason: 'no-card' } });
  }
});

test('a cancelled photo stops, and the next one works', async ({ page }) => {
  const ended = await page.evaluate(
    (photo) => window.harness.cancelAt(photo, 'card-pose'),
    base64('d09'),
  );
  expect(ended).toBe('AbortError');
  expect((await identify(page, 'd26')).outcome).toBe('measured');
});

test('a worker that dies is reported, and the next photo works', async ({ page }) => {
  const [worker] = page.workers();
  // It hears of the photo, and is gone before it can answer.
  await worker.evaluate(() => self.addEventListener('message', () => self.close()));
  const answer = page.evaluate((photo) => window.harness.identifyOrError(photo), base64('d05'));
  expect(await answer).toBe('WorkerDied');
  expect((await identify(page, 'd26')).outcome).toBe('measured');
});

test('wasm is compiled while it arrives, and nothing leaves the site', async ({ page }) => {
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  await page.reload();
  await page.evaluate(() => window.harness.ready());
  await identify(page, 'd05');
  expect(requests.some((url) => /opencv[^/]*\.wasm$/.test(url))).toBe(true);
  expect(requests.filter((url) => !url.startsWith(site.address))).toEqual([]);
});
