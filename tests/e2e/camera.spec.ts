import { expect, type Page, test } from '@playwright/test';
import { phoneSeeing } from './film-camera';
import { decidedThread, openApp, photosFolder } from './support';

test.use(phoneSeeing(`${photosFolder}d26.jpg`));

/** What would be felt or heard. */
async function watchSignals(page: Page, vibrates: boolean): Promise<() => Promise<string[]>> {
  await page.addInitScript((can) => {
    const signals: string[] = [];
    Object.assign(window, { signals });
    Object.defineProperty(navigator, 'vibrate', {
      value: can
        ? () => {
            signals.push('felt');
            return true;
          }
        : undefined,
    });
    window.AudioContext = class extends AudioContext {
      override createOscillator() {
        signals.push('heard');
        return super.createOscillator();
      }
    };
  }, vibrates);
  return () => page.evaluate(() => (window as unknown as { signals: string[] }).signals);
}

test('the guided camera starts at once, shoots by itself, and the photo is measured', async ({
  page,
}) => {
  const signals = await watchSignals(page, true);
  await openApp(page);
  await page.getByRole('link', { name: 'Guided camera' }).click();
  await expect(page.locator('.aim-frame')).toBeVisible();
  await expect(page.locator('.checks li[data-state="good"]').first()).toBeVisible({
    timeout: 180_000,
  });
  await expect(page.locator('.decision')).toBeVisible({ timeout: 180_000 });
  expect(await signals()).toEqual(['felt']);
  // d26 is a 3/4-16 (its truth file).
  await expect(decidedThread(page)).toContainText('3/4-16');
});

test('a shot by hand is measured too, and heard where nothing vibrates', async ({ page }) => {
  const signals = await watchSignals(page, false);
  // Without its wasm the guidance cannot judge, and leaves the shot to the hand.
  await page.route(/opencv[^/]*\.wasm/, (route) => route.abort());
  await openApp(page, '#/shoot');
  await expect(page.getByRole('button', { name: 'Shoot now' })).toBeEnabled();
  await page.getByLabel('Shoot by itself').uncheck();
  await page.unroute(/opencv[^/]*\.wasm/);
  await page.locator('video').evaluate(
    (video: HTMLVideoElement) =>
      new Promise<void>((done) => {
        if (video.videoWidth > 0) done();
        else video.addEventListener('loadeddata', () => done(), { once: true });
      }),
  );
  await page.getByRole('button', { name: 'Shoot now' }).click();
  await expect(page.locator('.decision')).toBeVisible({ timeout: 180_000 });
  expect(await signals()).toEqual(['heard']);
});
