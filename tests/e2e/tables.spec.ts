import { expect, test } from '@playwright/test';
import { onBothSizes, openApp } from './support';

onBothSizes(() => {
  test('tables are searched, sorted and shown in inches', async ({ page }) => {
    await openApp(page, '#/standards');
    await page.getByLabel('Search').fill('9/16-18 UNF');
    await expect(page.getByRole('row')).toHaveCount(2);
    // ASME B1.1: 9/16 in is 14.2875 mm basic major.
    await expect(page.getByRole('row').nth(1)).toContainText('14.288');
    await page.getByLabel('Lengths in').selectOption('in');
    await expect(page.getByRole('row').nth(1)).toContainText('0.5625');
    await page.getByLabel('Search').fill('');
    await page.getByRole('button', { name: 'Sort by Major, in' }).click();
    await page.getByRole('button', { name: 'Sort by Major, in' }).click();
    await expect(page.locator('th[aria-sort="descending"]')).toContainText('Major');
    await page.getByRole('button', { name: 'Connections', exact: true }).click();
    await page.getByLabel('Search').fill('ISO 8434-3 -16');
    await expect(page.getByRole('row').nth(1)).toContainText('1 7/16-12');
    // As the trade calls it (common practice).
    await page.getByLabel('Search').fill('ORFS -16');
    await expect(page.getByRole('row').nth(1)).toContainText('ISO 8434-3');
    await page.getByLabel('Search').fill('JIC swivel');
    await expect(page.getByRole('row').nth(1)).toContainText('ISO 8434-2');
  });
});
