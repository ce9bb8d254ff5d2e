import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import {
  axeViolationsInBothSchemes,
  chooseFile,
  decidedThread,
  onBothSizes,
  onSize,
  openApp,
  openMeasuredSample,
  unfold,
} from './support';
import { test } from './window';

/** What a messenger does: at most 1280 px on the long side, JPEG of quality 60, no metadata. With
 *  `keep`, only this share of its height, from the top. */
async function throughMessenger(page: Page, picture: Buffer, keep = 1): Promise<Buffer> {
  const base64 = await page.evaluate(
    async ([sent, share]) => {
      const bytes = Uint8Array.from(atob(sent), (c) => c.charCodeAt(0));
      const image = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
      const factor = 1280 / Math.max(image.width, image.height);
      const canvas = new OffscreenCanvas(
        Math.round(image.width * factor),
        Math.round(image.height * factor * share),
      );
      const context = canvas.getContext('2d')!;
      context.imageSmoothingQuality = 'high';
      context.drawImage(image, 0, 0, canvas.width, Math.round(image.height * factor));
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.6 });
      let text = '';
      for (const byte of new Uint8Array(await blob.arrayBuffer()))
        text += String.fromCharCode(byte);
      return btoa(text);
    },
    [picture.toString('base64'), keep] as const,
  );
  return Buffer.from(base64, 'base64');
}

async function pictureBy(page: Page, button: string): Promise<Buffer> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).click();
  return readFileSync(await (await download).path());
}

const opened = (page: Page, name: string, buffer: Buffer) =>
  chooseFile(page, { name, mimeType: 'image/jpeg', buffer });

async function pitchOf(page: Page): Promise<number> {
  await unfold(page);
  return Number.parseFloat(await page.locator('.numbers dd').first().innerText());
}

const stamp = (page: Page) => page.locator('.stamp').first();
const pageHeight = (page: Page) => page.evaluate(() => document.documentElement.scrollHeight);

async function overflow(page: Page): Promise<number> {
  const size = page.viewportSize()!;
  await page.setViewportSize({ width: 320, height: size.height });
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  await page.setViewportSize(size);
  return over;
}

onBothSizes((size) => {
  test('an open sheet goes to the counter, is settled there, and its answer comes back', async ({
    page,
    browser,
  }) => {
    test.slow();
    await openMeasuredSample(page, 'sample-cone');
    const thread = (await decidedThread(page).innerText()).split(' ')[0];
    await expect(page.locator('.thread-picture image')).toBeAttached();
    expect(await axeViolationsInBothSchemes(page), 'sheet').toEqual([]);
    const pitch = await pitchOf(page);
    await page.getByLabel('Remarks for the counter').fill('Boom cylinder, two of them');
    await page.getByLabel('Remarks for the counter').blur();
    await page.getByRole('button', { name: 'let the counter decide' }).click();
    await expect(page.locator('.result-page')).toBeVisible();
    await expect(stamp(page)).toContainText('open');
    await expect(page.locator('.open-questions')).toContainText('the connection is still open');
    await expect(page.locator('.open-questions')).toContainText('SAE J512 -6');
    // Whoever sent it cannot judge it.
    await expect(page.getByRole('button', { name: 'Confirm' })).toHaveCount(0);
    expect(await axeViolationsInBothSchemes(page), 'open result').toEqual([]);
    const sent = await throughMessenger(page, await pictureBy(page, 'Send to the counter'));

    const counterContext = await browser.newContext({
      locale: 'en-GB',
      viewport: page.viewportSize()!,
    });
    const counter = await counterContext.newPage();
    await openApp(counter);
    await opened(counter, 'IMG-1.jpg', sent);
    await expect(counter.locator('.counter-page')).toBeVisible({ timeout: 180_000 });
    await expect(stamp(counter)).toContainText('open');
    await expect(counter.locator('.counter-page')).toContainText('Boom cylinder, two of them');
    await expect(counter.locator('.open-questions')).toContainText('SAE J512 -6');
    await expect(counter.locator('.thread-picture image')).toBeAttached();
    await expect(decidedThread(counter)).toContainText(thread);
    const flare = counter.locator('.judge option', { hasText: 'SAE J512 -6' }).first();
    await counter.getByLabel('It is').selectOption((await flare.getAttribute('value'))!);
    await counter.getByLabel('Your name').fill('Desk 2');
    await counter.getByRole('button', { name: 'Confirm' }).click();
    await counter.getByLabel(/Our part numbers/).fill('K-4711');
    await counter.getByLabel('Notes').fill('two in stock');
    await counter.getByLabel('Notes').blur();
    await expect(stamp(counter)).toContainText('confirmed');
    await expect(counter.locator('.judge')).toContainText('by Desk 2');
    const found = counter.getByRole('region', { name: 'What was found' });
    await expect(found).toContainText('the connection is still open');
    expect(await axeViolationsInBothSchemes(counter), 'counter').toEqual([]);
    expect(await overflow(counter), 'counter at 320 px').toBeLessThanOrEqual(0);
    const answer = await throughMessenger(
      counter,
      await pictureBy(counter, 'Send the answer back'),
    );
    await counterContext.close();

    await page.goto('./#/');
    await opened(page, 'IMG-2.jpg', answer);
    await expect(page.locator('.answer')).toBeVisible({ timeout: 180_000 });
    await expect(stamp(page)).toContainText('confirmed');
    await expect(page.locator('.answer')).toContainText('K-4711');
    await expect(page.locator('.answer')).toContainText('two in stock');
    await expect(page.locator('.answer')).toContainText('Desk 2');
    await expect(page.locator('.answer')).toContainText('SAE J512 -6');
    // What the sender wrote is still there, and says whose words it is.
    const said = page.getByRole('region', { name: 'What the sender says' });
    await expect(said).toContainText('Boom cylinder, two of them');
    // The facts are those of what the counter identified.
    await expect(page.locator('.result-page')).toContainText('cone of 45°');
    expect(await axeViolationsInBothSchemes(page), 'answer').toEqual([]);
    expect(await overflow(page), 'answer at 320 px').toBeLessThanOrEqual(0);
    // What was measured from the full photo has stayed.
    await page.getByRole('link', { name: 'Back to the identification' }).click();
    await expect(page.locator('.sheet-photo')).toBeVisible();
    expect(await pitchOf(page)).toBe(pitch);
    // The answer stands there too, and what it settles is asked no more.
    await expect(page.locator('.answer')).toContainText('K-4711');
    await expect(page.locator('.seat-choice:visible')).toHaveCount(0);
    await expect(page.locator('.next-step').getByRole('link', { name: 'Result' })).toBeInViewport();
    await expect(page.locator('.next-step').getByRole('button')).toHaveCount(0);
    await page.goto('./#/drawer');
    await expect(page.locator('.sheet-card')).toHaveCount(1);
    await expect(page.locator('.sheet-card')).toContainText('confirmed at the counter');
  });

  test('the next step is always in reach', async ({ page }) => {
    await openMeasuredSample(page, 'sample-cone');
    await expect(page.locator('.thread-picture image')).toBeAttached();
    // The claim stands on the tile of the question that it would answer.
    await expect(page.locator('[data-seat="cone-45"]')).toContainText('in the photo');
    await expect(page.locator('.seat-claim')).toHaveCount(0);
    const bar = page.locator('.next-step');
    await expect(bar.getByRole('button', { name: 'Answer the question' })).toBeInViewport();
    if (size === 'phone') {
      const tile = await page.locator('.seat-choice').first().boundingBox();
      const barBox = await bar.boundingBox();
      expect(tile!.y).toBeLessThan(barBox!.y);
      expect(await pageHeight(page)).toBeLessThan(1500);
    }
    await page.locator('[data-seat="cone-45"]').click();
    await expect(bar.getByRole('link', { name: 'Result' })).toBeInViewport();
    await bar.getByRole('link', { name: 'Result' }).click();
    await expect(stamp(page)).toContainText('settled');
    await expect(bar.getByRole('button', { name: 'Send to the counter' })).toBeInViewport();
  });
});

onSize('desk', () => {
  test('the counter measures again: both measurements, dated, and the one that holds', async ({
    page,
    browser,
  }) => {
    test.slow();
    await openMeasuredSample(page);
    await unfold(page);
    const sent = await throughMessenger(page, await pictureBy(page, 'Share as a picture'));
    const context = await browser.newContext({ locale: 'en-GB', viewport: page.viewportSize()! });
    const counter = await context.newPage();
    await openApp(counter);
    await opened(counter, 'IMG-1.jpg', sent);
    await expect(counter.locator('.counter-page')).toBeVisible({ timeout: 180_000 });
    await counter.getByRole('link', { name: 'Photo, numbers, readings' }).click();
    await expect(counter.locator('.sheet-photo')).toBeVisible();
    await unfold(counter);
    await counter.getByRole('button', { name: 'Show it by hand' }).click();
    await counter.getByRole('button', { name: 'Without help' }).click();
    await expect(counter.locator('.before-after li')).toHaveCount(2, { timeout: 180_000 });
    const lines = counter.locator('.before-after li');
    await expect(lines.nth(0)).toContainText('sender');
    await expect(lines.nth(0)).toContainText('replaced');
    await expect(lines.nth(1)).toContainText('counter');
    await expect(lines.nth(1)).toContainText('holds');
    await counter.getByRole('link', { name: 'To the counter page' }).click();
    await counter.getByRole('button', { name: 'Reject' }).click();
    await expect(stamp(counter)).toContainText('rejected');
    const answer = await throughMessenger(
      counter,
      await pictureBy(counter, 'Send the answer back'),
    );
    await context.close();
    await page.goto('./#/');
    await opened(page, 'IMG-4.jpg', answer);
    await expect(page.locator('.answer')).toContainText('Do not order by it', { timeout: 180_000 });
    await expect(stamp(page)).toContainText('rejected');
    await expect(page.locator('.before-after li').nth(1)).toContainText('counter');
  });
});

onSize('phone', () => {
  test('a picture without its code is measured as a photo, and that is said', async ({ page }) => {
    await openMeasuredSample(page);
    await unfold(page);
    const picture = await pictureBy(page, 'Share as a picture');
    const cropped = await throughMessenger(page, picture, 0.66);
    await page.goto('./#/');
    await opened(page, 'IMG-3.jpg', cropped);
    await expect(page.getByText('The code at the bottom is missing')).toBeVisible({
      timeout: 30_000,
    });
    await expect(page.locator('.decision, .refused').first()).toBeVisible({ timeout: 180_000 });
    // A whole frame that a messenger has stripped is what most people send: nothing is missing from it.
    await openApp(page);
    const frame = readFileSync(new URL('../../fixtures/female/gf024.jpg', import.meta.url));
    await opened(page, 'IMG-4.jpg', await throughMessenger(page, frame));
    await expect(page.getByRole('heading', { name: 'Measuring' })).toBeVisible();
    // Longer than the other took to be said, and shorter than it stays.
    await page.waitForTimeout(3_000);
    await expect(page.getByText('The code at the bottom is missing')).toHaveCount(0);
    await expect(page.locator('.decision, .refused').first()).toBeVisible({ timeout: 180_000 });
  });

  test('where the device shares files, the picture goes to it', async ({ page }) => {
    await page.addInitScript(() => {
      const shared: { name: string; type: string; size: number }[] = [];
      Object.assign(window, { shared });
      Object.assign(navigator, {
        canShare: () => true,
        share: async ({ files }: { files: File[] }) => {
          for (const { name, type, size } of files) shared.push({ name, type, size });
        },
      });
    });
    await openMeasuredSample(page);
    await unfold(page);
    await page.getByRole('button', { name: 'Share as a picture' }).click();
    const shared = () =>
      page.evaluate(
        () => (window as unknown as { shared: { type: string; size: number }[] }).shared,
      );
    await expect.poll(async () => (await shared()).length, { timeout: 30_000 }).toBe(1);
    expect((await shared())[0].type).toBe('image/jpeg');
    expect((await shared())[0].size).toBeGreaterThan(20_000);
  });
});
