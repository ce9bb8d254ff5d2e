import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { stripJpeg } from '../../src/journey/8-sheet/jpeg-strip';
import { openApp, sizes } from './support';

/** Chromium plays a file of JPEGs as its camera: a render of a fitting beside a bank card, held still. */
const film = new URL('../../test-results/bank-card.mjpeg', import.meta.url).pathname;
mkdirSync(new URL('../../test-results/', import.meta.url), { recursive: true });
const still = stripJpeg(
  new Uint8Array(readFileSync(new URL('../../fixtures/references/gi004.jpg', import.meta.url))),
);
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

test('the guided camera knows a bank card, frames it and shoots by itself', async ({ page }) => {
  await openApp(page, '#/shoot');
  await page.getByRole('radio', { name: 'Bank card' }).check();
  await page.getByRole('button', { name: 'Start the camera' }).click();
  await expect(page.locator('.aim-frame rect')).toBeVisible();
  await expect(page.locator('.checks li', { hasText: 'Card or sheet in view' })).toHaveAttribute(
    'data-state',
    'good',
    { timeout: 60_000 },
  );
  // Taken without a touch, and looked at for what it is: measured or refused, never as a scale card.
  await expect(page.locator('.decision, .refused')).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText('No scale card was found')).toHaveCount(0);
});
