import { readFileSync } from 'node:fs';
import { expect } from '@playwright/test';
import {
  blankPhoto,
  chooseFile,
  measureSample,
  onSize,
  openApp,
  openMeasuredSample,
  photosFolder,
  unfold,
} from './support';
import { test } from './window';

const photo = readFileSync(`${photosFolder}d16.jpg`);

onSize('phone', () => {
  test('a photo without the card is refused with a picture, and can be helped with a rule', async ({
    page,
  }) => {
    await openApp(page);
    const table = { name: 'table.jpg', mimeType: 'image/jpeg', buffer: await blankPhoto(page) };
    await chooseFile(page, table);
    await expect(page.getByRole('heading', { level: 1 })).toContainText('No scale card');
    await expect(page.locator('.refusal-picture svg')).toHaveCount(2);
    await page.getByRole('button', { name: 'Use a rule instead' }).click();
    await expect(page.locator('[data-handle]')).toHaveCount(2);
    // All of the loupe is seen, in however low a view.
    await page.locator('[data-handle="a"]').focus();
    const loupe = (await page.locator('.loupe-rim').boundingBox())!;
    const stage = (await page.locator('.photo-stage').boundingBox())!;
    expect(loupe.y).toBeGreaterThanOrEqual(stage.y);
    expect(loupe.y + loupe.height).toBeLessThanOrEqual(stage.y + stage.height);
    expect(loupe.x).toBeGreaterThanOrEqual(stage.x);
    await page.getByLabel(/Distance between/).fill('20');
    await page.getByRole('button', { name: 'Measure again' }).click();
    await expect(page.getByText('Not measured')).toBeVisible({ timeout: 180_000 });
  });
});

onSize('desk', () => {
  test('a refusal says what to do, and the next photo works', async ({ page }) => {
    await openApp(page);
    await chooseFile(page, {
      name: 'note.jpg',
      mimeType: 'image/jpeg',
      buffer: Buffer.from('only text'),
    });
    await expect(page.getByRole('heading', { level: 1 })).toContainText('cannot be read');
    await expect(page.getByText('Choose the original photo')).toBeVisible();
    await page.getByLabel('Another photo').setInputFiles(`${photosFolder}d16.jpg`);
    await expect(page.locator('.decision')).toBeVisible({ timeout: 180_000 });
  });

  test('a format that cannot be opened is explained', async ({ page }) => {
    await openApp(page);
    // TIFF 6.0, section 2: byte order and 42.
    const tiff = Buffer.concat([Buffer.from('II*\0'), Buffer.alloc(200)]);
    await chooseFile(page, { name: 'IMG.TIF', mimeType: 'image/tiff', buffer: tiff });
    await expect(page.getByRole('heading', { level: 1 })).toContainText('cannot be opened here');
    await expect(page.locator('.refused-todo')).toContainText('save it as a photo');
  });

  test('a photo comes in by drop, and by paste', async ({ page }) => {
    for (const way of ['drop', 'paste'] as const) {
      await openApp(page);
      await expect(page.getByLabel('Choose a photo')).toBeAttached();
      const blank = await blankPhoto(page);
      await page.evaluate(
        ([base64, kind]) => {
          const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
          const data = new DataTransfer();
          data.items.add(new File([bytes], 'photo.jpg', { type: 'image/jpeg' }));
          const event =
            kind === 'drop'
              ? new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true })
              : new ClipboardEvent('paste', { clipboardData: data, bubbles: true });
          document.body.dispatchEvent(event);
        },
        [blank.toString('base64'), way] as const,
      );
      // It was decoded and looked at.
      await expect(page.getByRole('heading', { level: 1 })).toContainText('No scale card', {
        timeout: 180_000,
      });
    }
  });

  test('two tabs see the same sheet', async ({ page, context }) => {
    await openMeasuredSample(page);
    await expect(page.getByText('kept on this device')).toBeVisible();
    const other = await context.newPage();
    await other.goto(page.url());
    await expect(other.locator('.decision')).toBeVisible();
    await other.getByLabel('Name of this sheet').fill('Boom cylinder');
    await other.getByLabel('Name of this sheet').press('Enter');
    await expect(page.getByLabel('Name of this sheet')).toHaveValue('Boom cylinder');
  });
});

onSize('phone', () => {
  test('a photo in hand survives a reload and goes on by itself', async ({ page }) => {
    await openApp(page);
    await chooseFile(page, {
      name: 'note.jpg',
      mimeType: 'image/jpeg',
      buffer: photo.subarray(0, 3000),
    });
    await expect(page.locator('.refused')).toBeVisible();
    await page.goto('./#/');
    await page.reload();
    await expect(page.getByRole('heading', { name: 'Work in progress' })).toBeVisible();
    await page.getByRole('button', { name: 'Go on with it' }).click();
    await expect(page.locator('.refused')).toBeVisible();
    await page.goto('./#/');
    await page.reload();
    await page.getByRole('button', { name: 'Discard' }).click();
    await expect(page.getByRole('heading', { name: 'Work in progress' })).toHaveCount(0);
    await page.reload();
    await expect(page.locator('main h1')).toBeVisible();
    await expect(page.getByRole('heading', { name: 'Work in progress' })).toHaveCount(0);
  });

  test('cancel stops the measuring and keeps the photo', async ({ page }) => {
    await openApp(page);
    await page.route('**/*.wasm', async (route) => {
      await new Promise((done) => setTimeout(done, 1500));
      await route.continue().catch(() => undefined);
    });
    await chooseFile(page, { name: 'a.jpg', mimeType: 'image/jpeg', buffer: photo });
    await page.getByRole('button', { name: 'Cancel' }).click();
    await expect(page.getByText('Cancelled. The photo is still here.')).toBeVisible();
    await page.unroute('**/*.wasm');
    await page.getByRole('button', { name: 'Measure again' }).click();
    await expect(page.locator('.decision')).toBeVisible({ timeout: 180_000 });
  });

  test('a worker that dies is said so, and the photo can be measured again', async ({ page }) => {
    await page.addInitScript(() => {
      const made: Worker[] = [];
      Object.assign(window, { made });
      window.Worker = class extends Worker {
        constructor(...given: ConstructorParameters<typeof Worker>) {
          super(...given);
          made.push(this);
        }
      };
    });
    await page.route('**/*.wasm', async (route) => {
      await new Promise((done) => setTimeout(done, 2000));
      await route.continue().catch(() => undefined);
    });
    await openApp(page);
    await chooseFile(page, { name: 'a.jpg', mimeType: 'image/jpeg', buffer: photo });
    await expect(page.locator('.stages')).toBeVisible();
    // Let it announce its life first; then end it as a system short of memory would.
    await page.waitForTimeout(700);
    await page.evaluate(() => {
      for (const one of (window as unknown as { made: Worker[] }).made) one.terminate();
    });
    await expect(page.getByText('The measuring part stopped')).toBeVisible({ timeout: 30_000 });
    await page.getByRole('button', { name: 'Measure again' }).click();
    await expect(page.locator('.decision')).toBeVisible({ timeout: 180_000 });
  });

  test.describe('on a device', () => {
    test.use({ ownWindow: true });

    test('storage full: the sheet stays on the screen and can be saved', async ({ page }) => {
      await openApp(page);
      const session = await page.context().newCDPSession(page);
      await session.send('Storage.overrideQuotaForOrigin', {
        origin: new URL(page.url()).origin,
        quotaSize: 1000,
      });
      await measureSample(page);
      await expect(page.getByText('no room left for the sheet')).toBeVisible();
      await expect(page.getByText('not kept')).toBeVisible();
      const download = page.waitForEvent('download');
      await unfold(page);
      await page.getByRole('button', { name: 'Save the sheet file' }).click();
      expect((await download).suggestedFilename()).toMatch(/^crestwise-.*\.crestwise$/);
    });
  });
});
