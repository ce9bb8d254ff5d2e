import { readFileSync } from 'node:fs';
import { expect } from '@playwright/test';
import { chooseFile, decidedThread, onSize, openApp, unfold } from './support';
import { test } from './window';

/** A quarter-turned d26 as telephones store it (fixtures/heif/make.py); Chromium shows AVIF, but not HEIC. */
const heif = new URL('../../fixtures/heif/', import.meta.url).pathname;

onSize('phone', () => {
  test('a HEIC photo is measured, shown, kept and measured again', async ({ page }) => {
    const fetched: string[] = [];
    page.on('request', (request) => fetched.push(request.url()));
    const policy: string[] = [];
    page.on('console', (message) => {
      if (/Content Security Policy/.test(message.text())) policy.push(message.text());
    });
    await openApp(page);
    expect(fetched.filter((url) => /libheif|avif/.test(url))).toEqual([]);
    await chooseFile(page, `${heif}d26.heic`);
    await expect(page.locator('.decision')).toBeVisible({ timeout: 180_000 });
    // d26 is a 3/4-16 (its truth file).
    await expect(decidedThread(page)).toContainText('3/4-16');
    expect(fetched.filter((url) => /libheif[^/]*\.wasm/.test(url)).length).toBeGreaterThan(0);
    expect(policy).toEqual([]);
    await unfold(page);
    const shown = page.locator('.photo-stage img');
    await expect(shown).toBeVisible();
    const natural = await shown.evaluate(async (img: HTMLImageElement) => {
      await img.decode();
      return [img.naturalWidth, img.naturalHeight];
    });
    expect(natural).toEqual([1500, 2000]);
    // The focal length came along: without it this note would stand here.
    await expect(page.getByText('does not say its focal length')).toHaveCount(0);
    // From the kept copy, after a reload, it measures the same within its coding.
    await page.reload();
    await unfold(page);
    const pitch = page.locator('.numbers dd').first();
    const before = Number.parseFloat(await pitch.innerText());
    await page.getByRole('button', { name: 'Show it by hand' }).click();
    const again = page.locator('.help-panel').getByRole('button', { name: 'Measure again' });
    await again.click();
    await expect(again).toBeEnabled({ timeout: 180_000 });
    await expect(page.locator('.inspection .alert')).toHaveCount(0);
    await expect(page.getByText('does not say its focal length')).toHaveCount(0);
    expect(Math.abs(Number.parseFloat(await pitch.innerText()) / before - 1)).toBeLessThan(0.01);
  });
});

onSize('phone', () => {
  test('a photo in tiles is measured, and shown upright', async ({ page }) => {
    await openApp(page);
    await chooseFile(page, `${heif}d26-tiles.heic`);
    await expect(decidedThread(page)).toContainText('3/4-16', { timeout: 180_000 });
    await unfold(page);
    const shown = page.locator('.photo-stage img');
    const natural = await shown.evaluate(async (img: HTMLImageElement) => {
      await img.decode();
      return [img.naturalWidth, img.naturalHeight];
    });
    expect(natural).toEqual([1500, 2000]);
    await expect(page.getByText('does not say its focal length')).toHaveCount(0);
  });

  test('a photo in tiles that was received in part is refused with the way on', async ({
    page,
  }) => {
    const buffer = readFileSync(`${heif}d26-tiles.heic`);
    buffer.fill(0, buffer.length >> 1);
    await openApp(page);
    await chooseFile(page, { name: 'IMG.heic', mimeType: 'image/heic', buffer });
    const said = page.getByRole('heading', { level: 1 });
    await expect(said).toContainText('cannot be read', { timeout: 180_000 });
    await expect(page.locator('.refused')).toContainText('send it again', { ignoreCase: true });
  });

  test('a photo of 48 megapixels is looked at, and the page goes on', async ({ page }) => {
    await openApp(page);
    await chooseFile(page, `${heif}48-megapixel.heic`);
    // One tile 192 times shows no card; it was opened, or another refusal would stand here.
    const said = page.getByRole('heading', { level: 1 });
    await expect(said).toContainText('No scale card', { timeout: 180_000 });
    await openApp(page);
    await chooseFile(page, `${heif}d26-tiles.heic`);
    await expect(decidedThread(page)).toContainText('3/4-16', { timeout: 180_000 });
  });
});

onSize('desk', () => {
  test('an AVIF photo is measured and shown', async ({ page }) => {
    await openApp(page);
    await chooseFile(page, `${heif}d26.avif`);
    await expect(decidedThread(page)).toContainText('3/4-16', { timeout: 180_000 });
    await unfold(page);
    const natural = await page
      .locator('.photo-stage img')
      .evaluate(async (img: HTMLImageElement) => {
        await img.decode();
        return [img.naturalWidth, img.naturalHeight];
      });
    expect(natural).toEqual([1500, 2000]);
    await expect(page.getByText('does not say its focal length')).toHaveCount(0);
  });

  test('without the part that opens it, a HEIC photo is refused with the way on', async ({
    page,
  }) => {
    await page.route(/libheif[^/]*\.wasm/, (route) => route.abort());
    await openApp(page);
    await chooseFile(page, `${heif}d26.heic`);
    await expect(page.getByRole('heading', { level: 1 })).toContainText('not loaded yet', {
      timeout: 180_000,
    });
    await page.unroute(/libheif[^/]*\.wasm/);
    await page.getByRole('button', { name: 'Measure again' }).click();
    await expect(decidedThread(page)).toContainText('3/4-16', { timeout: 180_000 });
  });
});
