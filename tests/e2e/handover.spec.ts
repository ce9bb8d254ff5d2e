import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { chooseFile, decidedThread, measureSample, onBothSizes, openApp } from './support';

/** What a messenger does: at most 1280 px on the long side, JPEG of quality 60, no metadata. */
async function throughMessenger(page: Page, picture: Buffer): Promise<Buffer> {
  const base64 = await page.evaluate(async (sent) => {
    const bytes = Uint8Array.from(atob(sent), (c) => c.charCodeAt(0));
    const image = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
    const factor = 1280 / Math.max(image.width, image.height);
    const canvas = new OffscreenCanvas(
      Math.round(image.width * factor),
      Math.round(image.height * factor),
    );
    const context = canvas.getContext('2d')!;
    context.imageSmoothingQuality = 'high';
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.6 });
    let text = '';
    for (const byte of new Uint8Array(await blob.arrayBuffer())) text += String.fromCharCode(byte);
    return btoa(text);
  }, picture.toString('base64'));
  return Buffer.from(base64, 'base64');
}

async function sharedPicture(page: Page): Promise<Buffer> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Share as a picture' }).click();
  return readFileSync(await (await download).path());
}

const pitchOf = async (page: Page) =>
  Number.parseFloat(await page.locator('.numbers dd').first().innerText());

onBothSizes(() => {
  test('a shared picture, recompressed, opens at the counter; the answer comes back', async ({
    page,
    browser,
  }) => {
    await openApp(page);
    await measureSample(page);
    const pitch = await pitchOf(page);
    const thread = await decidedThread(page).innerText();
    const sent = await throughMessenger(page, await sharedPicture(page));

    const counterContext = await browser.newContext({ locale: 'en-GB' });
    const counter = await counterContext.newPage();
    await openApp(counter);
    await chooseFile(counter, { name: 'IMG-1.jpg', mimeType: 'image/jpeg', buffer: sent });
    await expect(counter.locator('.decision')).toBeVisible({ timeout: 60_000 });
    await expect(decidedThread(counter)).toContainText(thread.split(' ')[0]);
    expect(await pitchOf(counter)).toBeCloseTo(pitch, 3);
    await expect(counter.locator('.photo-stage img')).toBeVisible();

    await counter.getByLabel('Another reading').selectOption('seat');
    await counter.locator('[data-seat="o-ring-at-hex"]').click();
    await counter.getByRole('link', { name: 'Result' }).click();
    await counter.getByRole('button', { name: 'Confirm' }).click();
    await counter.getByLabel(/Our part numbers/).fill('K-4711');
    await counter.getByLabel('Notes').fill('two in stock');
    await counter.getByLabel('Notes').blur();
    await expect(counter.getByText('confirmed', { exact: true })).toBeVisible();
    const answer = await throughMessenger(counter, await sharedPicture(counter));
    await counterContext.close();

    await page.goto('./#/');
    await chooseFile(page, { name: 'IMG-2.jpg', mimeType: 'image/jpeg', buffer: answer });
    await expect(page.getByText('confirmed at the counter')).toBeVisible({ timeout: 60_000 });
    await page.getByRole('link', { name: 'Result' }).click();
    await expect(page.getByLabel(/Our part numbers/)).toHaveValue('K-4711');
    // What was measured from the full photo has stayed.
    await page.getByRole('link', { name: 'Back to the identification' }).click();
    expect(await pitchOf(page)).toBe(pitch);
    await page.goto('./#/drawer');
    await expect(page.locator('.sheet-card')).toHaveCount(1);
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
    await openApp(page);
    await measureSample(page);
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
