import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { stripJpeg } from '../../src/journey/8-sheet/jpeg-strip';
import { decidedThread, openApp, photosFolder, sizes } from './support';

/** Chromium plays a file of JPEGs as its camera: a fixture photo, held perfectly still. */
const film = new URL('../../test-results/camera.mjpeg', import.meta.url).pathname;
mkdirSync(new URL('../../test-results/', import.meta.url), { recursive: true });
const still = stripJpeg(new Uint8Array(readFileSync(`${photosFolder}d26.jpg`)));
if (still.ok) writeFileSync(film, Buffer.concat([still.value.bytes, still.value.bytes]));

test.use({
  ...sizes.phone,
  locale: 'en-GB',
  permissions: ['camera'],
  launchOptions: {
    executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
    args: [
      '--no-sandbox',
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-video-capture=${film}`,
    ],
  },
});

test('the guided camera shoots by itself and the photo is measured', async ({ page }) => {
  await openApp(page, '#/shoot');
  await page.getByRole('button', { name: 'Start the camera' }).click();
  await expect(page.locator('.checks li[data-state="good"]').first()).toBeVisible({
    timeout: 60_000,
  });
  await expect(page.locator('.decision')).toBeVisible({ timeout: 60_000 });
  // d26 is a 3/4-16 (its truth file).
  await expect(decidedThread(page)).toContainText('3/4-16');
});

test('a shot by hand is measured too', async ({ page }) => {
  await openApp(page, '#/shoot');
  await page.getByLabel('Shoot by itself').uncheck();
  await page.getByRole('button', { name: 'Start the camera' }).click();
  await expect(page.getByRole('button', { name: 'Shoot now' })).toBeEnabled();
  await page.locator('video').evaluate(
    (video: HTMLVideoElement) =>
      new Promise<void>((done) => {
        if (video.videoWidth > 0) done();
        else video.addEventListener('loadeddata', () => done(), { once: true });
      }),
  );
  await page.getByRole('button', { name: 'Shoot now' }).click();
  await expect(page.locator('.decision')).toBeVisible({ timeout: 60_000 });
});
