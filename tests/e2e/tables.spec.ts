import { expect, type Page } from '@playwright/test';
import { onBothSizes, onSize, openApp } from './support';
import { test } from './window';

onBothSizes((size) => {
  /** A row of the table, or the two lines that stand for it on a telephone. */
  const rows = (page: Page) =>
    size === 'desk' ? page.locator('.standards-table tbody tr') : page.locator('.row-list li');

  test('tables are searched, sorted and shown in inches', async ({ page }) => {
    await openApp(page, '#/standards');
    await page.getByLabel('Search').fill('9/16-18 UNF');
    await expect(rows(page)).toHaveCount(1);
    // ASME B1.1: 9/16 in is 14.2875 mm basic major.
    await expect(rows(page)).toContainText('14.288');
    await page.getByLabel('Lengths in').selectOption('in');
    await expect(rows(page)).toContainText('0.5625');
    await page.getByLabel('Search').fill('');
    if (size === 'desk') {
      await page.getByRole('button', { name: 'Sort by Major, in' }).click();
      await page.getByRole('button', { name: 'Sort by Major, in' }).click();
      await expect(page.locator('th[aria-sort="descending"]')).toContainText('Major');
    } else {
      // ASME B1.1: #0-80 is the smallest of all.
      await page.getByLabel('Order').selectOption('Major, in');
      await expect(rows(page).first()).toContainText('0.06');
    }
    await page.getByRole('button', { name: 'Connections', exact: true }).click();
    await page.getByLabel('Search').fill('ISO 8434-3 -16');
    await expect(rows(page).first()).toContainText('1 7/16-12');
    // As the trade calls it (common practice).
    await page.getByLabel('Search').fill('ORFS -16');
    await expect(rows(page).first()).toContainText('ISO 8434-3');
    await page.getByLabel('Search').fill('JIC swivel');
    await expect(rows(page).first()).toContainText('ISO 8434-2');
  });

  test('threads of hydraulic connections come first, marked, and are found by a trade name', async ({
    page,
  }) => {
    await openApp(page, '#/standards');
    await expect(rows(page).first()).toContainText('flare');
    await page.getByLabel('Search').fill('JIC');
    // ISO 8434-2: size -8 has a 3/4-16.
    await expect(rows(page).filter({ hasText: '3/4-16' })).toHaveCount(1);
    await page.getByLabel('Search').fill('#0-80');
    await expect(rows(page)).toHaveCount(1);
    if (size === 'phone') {
      await rows(page).locator('summary').click();
      await expect(rows(page).locator('dl')).toContainText('ASME B1.1');
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over).toBeLessThanOrEqual(0);
    }
  });
});

onSize('desk', () => {
  test('every column of a table, its sources too, is there without scrolling sideways', async ({
    page,
  }) => {
    await openApp(page, '#/standards');
    for (const code of ['en', 'de', 'fr', 'es']) {
      await page.locator('.language-picker select').selectOption(code);
      await expect(page.locator('html')).toHaveAttribute('lang', code);
      for (const tab of [0, 1])
        for (const unit of ['mm', 'in']) {
          await page.locator('.standards-tools button').nth(tab).click();
          await page.locator('.standards-tools select').selectOption(unit);
          await expect(page.locator('.standards-table thead')).toContainText(`, ${unit}`);
          const more = page.locator('.standards-screen p > button');
          if (await more.isVisible()) await more.click();
          expect(
            await page.locator('.standards-table tbody tr').count(),
            'all rows, or the widest may be missing',
          ).toBeGreaterThan(500);
          const over = await page
            .locator('.table-scroll')
            .evaluate((box) => box.scrollWidth - box.clientWidth);
          expect(over, `${code}, table ${tab}, ${unit}`).toBeLessThanOrEqual(0);
        }
    }
  });
});

test.describe('between telephone and desk', () => {
  test.use({ viewport: { width: 820, height: 1180 }, locale: 'de-DE' });

  test('a table is a list of rows, which open', async ({ page }) => {
    await openApp(page, '#/standards');
    await page.getByLabel('Suchen').fill('9/16-18 UNF');
    await page.locator('.row-list summary').click();
    await expect(page.locator('.row-list dl')).toContainText('ASME B1.1');
  });
});
