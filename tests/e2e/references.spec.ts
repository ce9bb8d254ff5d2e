import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import { unzipSync } from 'fflate';
import { decodeJpeg } from '../handover/node-jpeg';
import { axeViolations, keptPictures, openApp, photosFolder, sizes, unfold } from './support';
import { test } from './window';

/** Renders without the scale card; no photographs. gi011 lies beside an ID-1 card that bears a number. */
const references = new URL('../../fixtures/references/', import.meta.url).pathname;

test.use({ ...sizes.phone, locale: 'en-GB' });

async function measured(page: Page, file: string): Promise<void> {
  await page.getByLabel('Choose a photo').setInputFiles(file);
  await expect(page.locator('.decision')).toBeVisible({ timeout: 180_000 });
  await unfold(page);
}

test('a bank card: chosen on the first page, measured, and painted over in all that is kept', async ({
  page,
}) => {
  await openApp(page);
  await page.getByRole('radio', { name: 'Bank card' }).check();
  await expect(page.getByText('Its face is painted over')).toBeVisible();
  await measured(page, `${references}gi011.jpg`);
  await expect(page.getByText('bank card (ID-1)').first()).toBeAttached();
  await expect(page.getByText('painted over in what is kept')).toBeVisible();
  await expect(page.getByText('kept on this device')).toBeVisible();
  const pictures = await keptPictures(page);
  // The photo and its thumbnail.
  expect(pictures.length).toBeGreaterThanOrEqual(2);
  const truth = JSON.parse(readFileSync(`${references}gi011.truth.json`, 'utf8'));
  for (const picture of pictures) expect(await faceSpread(picture, truth)).toBeLessThan(8);
  // The same look sees the number in the file that was chosen, so it would see it here.
  const chosen = await upright(page, readFileSync(`${references}gi011.jpg`));
  expect(await faceSpread(chosen, truth)).toBeGreaterThan(40);

  // Nor does it leave with the sheet, whose photo is what pictures and prints are made of.
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the sheet file' }).click();
  const packed = unzipSync(new Uint8Array(readFileSync(await (await download).path())));
  const photos = Object.values(packed).filter(([a, b]) => a === 0xff && b === 0xd8);
  expect(photos).toHaveLength(1);
  expect(await faceSpread(Buffer.from(photos[0]!), truth)).toBeLessThan(8);

  await page.reload();
  await expect(page.locator('.decision')).toBeVisible();
  await unfold(page);
  await expect(page.getByText('painted over in what is kept')).toBeVisible();
});

test('a reload while a bank card is being measured finds only the painted photo', async ({
  page,
}) => {
  await openApp(page);
  await page.getByLabel('Choose a photo').setInputFiles(`${references}gi011.jpg`);
  const truth = JSON.parse(readFileSync(`${references}gi011.truth.json`, 'utf8'));
  await expect
    .poll(async () => (await keptPictures(page)).length, { timeout: 180_000, intervals: [50] })
    .toBeGreaterThan(0);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Measuring' })).toBeVisible();
  const kept = await keptPictures(page);
  expect(kept.length).toBeGreaterThan(0);
  for (const picture of kept) expect(await faceSpread(picture, truth)).toBeLessThan(8);
});

/** Until the first reload the worker hears nothing, so the bank card is not found. */
async function openWithDeafWorker(page: Page): Promise<void> {
  await page.addInitScript(() => {
    if (!sessionStorage.getItem('deaf-once')) Worker.prototype.postMessage = () => undefined;
    sessionStorage.setItem('deaf-once', '1');
  });
  await openApp(page);
}

test.describe('with a service worker', () => {
  test.use({ serviceWorkers: 'allow' });
  test('a reload before a bank card is found: measuring goes on, though nothing had been written', async ({
    page,
  }) => {
    await openWithDeafWorker(page);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.getByLabel('Choose a photo').setInputFiles(`${references}gi011.jpg`);
    const measuring = page.getByRole('heading', { name: 'Measuring' });
    await expect(measuring).toBeVisible();
    expect(await keptPictures(page)).toEqual([]);
    await page.reload();
    await expect(measuring).toBeVisible();
    await expect(page.locator('.decision')).toBeVisible({ timeout: 180_000 });
    await expect(page.getByText('kept on this device')).toBeVisible();
    const truth = JSON.parse(readFileSync(`${references}gi011.truth.json`, 'utf8'));
    for (const picture of await keptPictures(page))
      expect(await faceSpread(picture, truth)).toBeLessThan(8);
    // Measured to its end, it is no longer in hand.
    await page.goto('./#/');
    await page.reload();
    await expect(page.locator('main h1')).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Work in progress' })).toHaveCount(0);
  });
});

test.describe('without a service worker', () => {
  test.use({ serviceWorkers: 'block' });
  test('a reload before a bank card is found: the page says that the photo is gone', async ({
    page,
  }) => {
    await openWithDeafWorker(page);
    await page.getByLabel('Choose a photo').setInputFiles(`${references}gi011.jpg`);
    await expect(page.getByRole('heading', { name: 'Measuring' })).toBeVisible();
    await page.reload();
    await expect(page.getByText('If one was interrupted, choose it again.')).toBeVisible();
    await expect(page.getByLabel('Choose a photo')).toBeAttached();
  });
});

test('a sheet of paper: its size is chosen, and the wrong one is refused', async ({ page }) => {
  await openApp(page);
  await page.getByRole('radio', { name: 'Sheet of paper' }).check();
  await page.getByRole('radio', { name: 'A4 sheet' }).check();
  await measured(page, `${references}gs002.jpg`);
  await expect(page.getByText('A4 sheet').first()).toBeAttached();
  await expect(page.getByText('Scale from the outline of a card or sheet')).toBeVisible();
});

test('something else than what was chosen is asked about, and the answer measures it', async ({
  page,
}) => {
  await openApp(page);
  await page.getByRole('radio', { name: 'Sheet of paper' }).check();
  await page.getByRole('radio', { name: 'A4 sheet' }).check();
  await page.getByLabel('Choose a photo').setInputFiles(`${references}gi011.jpg`);
  await expect(page.getByText('It is not sure what kind of card or sheet')).toBeVisible({
    timeout: 180_000,
  });
  await page.getByRole('button', { name: 'Bank card (ID-1)' }).click();
  await expect(page.locator('.decision')).toBeVisible({ timeout: 180_000 });
});

test('four corners dragged and moved by keys measure what lies there', async ({ page }) => {
  await openApp(page);
  await measured(page, `${references}gi011.jpg`);
  const pitch = page.locator('.numbers dd').first();
  const before = Number.parseFloat(await pitch.innerText());
  await page.getByRole('button', { name: 'Show its corners' }).click();
  await expect(page.locator('[data-corner]')).toHaveCount(4);
  expect(await axeViolations(page)).toEqual([]);
  const corner = page.locator('[data-corner="2"]');
  await corner.scrollIntoViewIfNeeded();
  const at = (await corner.locator('.ring').boundingBox())!;
  const [x, y] = [at.x + at.width / 2, at.y + at.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 2, y - 2, { steps: 3 });
  await expect(page.locator('.loupe')).toBeVisible();
  // A notice that lay over the mark took neither the press nor the view of it.
  await expect(page.locator('.notice')).toHaveCount(0);
  await page.mouse.up();
  await corner.focus();
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
  await page.getByRole('button', { name: 'Measure again' }).click();
  await expect(page.getByRole('button', { name: 'Measure again' })).toBeEnabled({
    timeout: 180_000,
  });
  expect(Math.abs(Number.parseFloat(await pitch.innerText()) / before - 1)).toBeLessThan(0.003);
  // Told that it is another thing, the same corners are refused: the choice changes the answer.
  await page.getByRole('radio', { name: 'A4 sheet' }).check();
  await page.getByRole('button', { name: 'Measure again' }).click();
  await expect(page.getByRole('alert')).toContainText(
    'The four corners shown give no scale. Put each mark where two sides meet, and say what it is.',
    { timeout: 180_000 },
  );
});

test('a rule: two graduations are marked first, in inches too', async ({ page }) => {
  await openApp(page);
  await page.getByRole('radio', { name: 'Rule', exact: true }).check();
  await page.getByLabel('Choose a photo').setInputFiles(`${photosFolder}d26.jpg`);
  await expect(page.getByRole('heading', { name: 'Mark the rule' })).toBeVisible();
  await expect(page.locator('[data-handle]')).toHaveCount(2);
  // A reload on the way loses nothing.
  await page.reload();
  await expect(page.locator('[data-handle]')).toHaveCount(2);
  expect(await axeViolations(page)).toEqual([]);
  await page.locator('[data-handle="a"]').focus();
  await expect(page.locator('.loupe')).toBeVisible();
  await page.getByText('inch', { exact: true }).click();
  await page.getByLabel(/Distance between/).fill('3/4');
  await page.getByRole('button', { name: 'Measure again' }).click();
  await expect(page.locator('.decision, .refused')).toBeVisible({ timeout: 180_000 });
});

test('marks on a rule that give no scale are called that, not a missing card', async ({ page }) => {
  await openApp(page);
  await page.getByRole('radio', { name: 'Rule', exact: true }).check();
  await page.getByLabel('Choose a photo').setInputFiles(`${photosFolder}d26.jpg`);
  await page.getByLabel(/Distance between/).fill('2000');
  await page.getByRole('button', { name: 'Measure again' }).click();
  await expect(page.locator('.refused h1')).toHaveText('The two marks give no scale.', {
    timeout: 180_000,
  });
  await expect(page.getByText('No scale card was found')).toHaveCount(0);
  await expect(page.locator('.refusal-picture')).toHaveCount(0);
});

/** The file as a browser turns it, coded anew. */
async function upright(page: Page, file: Buffer): Promise<Buffer> {
  const base64 = await page.evaluate(async (text) => {
    const bytes = Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
    const image = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
    const canvas = new OffscreenCanvas(image.width, image.height);
    canvas.getContext('2d')!.drawImage(image, 0, 0);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 });
    let out = '';
    for (const byte of new Uint8Array(await blob.arrayBuffer())) out += String.fromCharCode(byte);
    return btoa(out);
  }, file.toString('base64'));
  return Buffer.from(base64, 'base64');
}

/** Between the darkest and the brightest grey well inside the card's face, whose place the renderer states. */
async function faceSpread(
  bytes: Buffer,
  truth: {
    camera: number[][];
    f_px: number;
    cxcy: number[];
    width: number;
    height: number;
  },
): Promise<number> {
  const { width, data } = await decodeJpeg(new Uint8Array(bytes));
  const { camera: C } = truth;
  let low = 255;
  let high = 0;
  for (let i = 0; i <= 80; i++)
    for (let j = 0; j <= 50; j++) {
      const at = [-34 + (68 * i) / 80, -19 + (38 * j) / 50, 0.76];
      const d = at.map((v, k) => v - C[k]![3]!);
      const [x, y, z] = [0, 1, 2].map((k) => d.reduce((s, v, m) => s + v * C[m]![k]!, 0));
      const u = truth.f_px * (x! / -z!) + (truth.width - 1) / 2 + truth.cxcy[0]!;
      const v = -truth.f_px * (y! / -z!) + (truth.height - 1) / 2 + truth.cxcy[1]!;
      const scale = width / truth.width;
      const grey = data[4 * (Math.round(v * scale) * width + Math.round(u * scale))]!;
      low = Math.min(low, grey);
      high = Math.max(high, grey);
    }
  return high - low;
}
