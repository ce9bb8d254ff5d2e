import { expect, test } from '@playwright/test';
import { phoneSeeing } from './film-camera';
import { openApp } from './support';

/** A render of a fitting beside a bank card. */
const photo = new URL('../../fixtures/references/gi004.jpg', import.meta.url).pathname;

test.use(phoneSeeing(photo));

test('the guided camera knows a bank card, frames it and shoots by itself', async ({ page }) => {
  await openApp(page, '#/shoot');
  await page.getByRole('radio', { name: 'Bank card' }).check();
  await expect(page.locator('.aim-frame rect')).toBeVisible();
  await expect(page.locator('.checks li', { hasText: 'Card or sheet in view' })).toHaveAttribute(
    'data-state',
    'good',
    { timeout: 180_000 },
  );
  // Taken without a touch, and looked at for what it is: measured or refused, never as a scale card.
  await expect(page.locator('.decision, .refused')).toBeVisible({ timeout: 180_000 });
  await expect(page.getByText('No scale card was found')).toHaveCount(0);
});
