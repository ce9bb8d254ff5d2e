import { expect, test } from '@playwright/test';
import { phoneSeeing } from './film-camera';
import { decidedThread, openApp, photosFolder } from './support';

test.use(phoneSeeing(`${photosFolder}d26.jpg`));

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
