import { readFileSync } from 'node:fs';
import { expect } from '@playwright/test';
import { onSize, openApp, openMeasuredSample, unfold } from './support';
import { test } from './window';

onSize('phone', () => {
  test('list, search, filter, delete with undo, export all, import elsewhere', async ({
    page,
    browser,
  }) => {
    await openMeasuredSample(page);
    await page.getByLabel('Name of this sheet').fill('Boom cylinder');
    await page.getByLabel('Name of this sheet').press('Enter');
    await expect(page.getByText('kept on this device')).toBeVisible();
    await page.goto('./#/readings');
    await page.getByRole('textbox', { name: 'Pitch' }).fill('12');
    await page.getByRole('textbox', { name: 'Outside diameter' }).fill('36.4');
    await page.getByRole('button', { name: 'Identify' }).click();
    await expect(page.locator('.decision')).toBeVisible();
    await expect(page.getByText('kept on this device')).toBeVisible();

    await page.getByRole('link', { name: 'Drawer' }).first().click();
    const cards = page.locator('.sheet-card');
    await expect(cards).toHaveCount(2);
    await expect(cards.locator('img')).toHaveCount(1);
    await page.getByLabel('Search').fill('boom');
    await expect(cards).toHaveCount(1);
    await page.getByLabel('Search').fill('');
    await page.getByLabel('State').selectOption('confirmed');
    await expect(cards).toHaveCount(0);
    await page.getByLabel('State').selectOption('all');

    await page.getByRole('button', { name: 'Delete Boom cylinder' }).click();
    await expect(cards).toHaveCount(1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(cards).toHaveCount(2);

    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export all' }).click();
    const archive = readFileSync(await (await download).path());
    await expect(page.getByText('used on this device')).toBeVisible();

    const fresh = await browser.newContext({ locale: 'en-GB' });
    const other = await fresh.newPage();
    await openApp(other, '#/drawer');
    await expect(other.getByText('Nothing here yet')).toBeVisible();
    await other
      .getByLabel('Import')
      .setInputFiles({ name: 'all.crestwise-drawer', mimeType: '', buffer: archive });
    await expect(other.locator('.sheet-card')).toHaveCount(2);
    await other.getByRole('link', { name: /Boom cylinder/ }).click();
    await expect(other.locator('.decision')).toBeVisible();
    await unfold(other);
    await expect(other.locator('.photo-stage img')).toBeVisible();
    await fresh.close();
  });

  test('a page closed in the middle of a write leaves a whole sheet', async ({ page, context }) => {
    await openMeasuredSample(page);
    await expect(page.getByText('kept on this device')).toBeVisible();
    const names = ['Pump', 'Valve', 'Ram'];
    for (const [i, name] of names.entries()) {
      const hasty = await context.newPage();
      await openApp(hasty, '#/drawer');
      await hasty.locator('.sheet-card a').first().click();
      await hasty.getByLabel('Name of this sheet').fill(name);
      await hasty.getByLabel('Name of this sheet').press('Enter');
      await hasty.waitForTimeout(4 * i);
      await hasty.close();
    }
    await page.close();
    const later = await context.newPage();
    await openApp(later, '#/drawer');
    await expect(later.locator('.sheet-card')).toHaveCount(1);
    await later.locator('.sheet-card a').first().click();
    await expect(later.locator('.decision')).toBeVisible();
    await unfold(later);
    await expect(later.locator('.photo-stage img')).toBeVisible();
    // The last write came through or it did not; nothing in between.
    expect(['', ...names]).toContain(await later.getByLabel('Name of this sheet').inputValue());
    await later.getByLabel('Name of this sheet').fill('After all');
    await later.getByLabel('Name of this sheet').press('Enter');
    // Another tab hears of it once it is kept.
    const other = await context.newPage();
    await openApp(other, '#/drawer');
    await expect(other.locator('.sheet-card').filter({ hasText: 'After all' })).toBeVisible();
    await later.reload();
    await expect(later.getByLabel('Name of this sheet')).toHaveValue('After all');
  });
});
