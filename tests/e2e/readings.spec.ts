import { expect } from '@playwright/test';
import { decidedConnection, decidedThread, onSize, openApp, unfold } from './support';
import { test } from './window';

onSize('desk', () => {
  // Common practice: 1 7/16 in and 12 tpi outside is the dash 16 face seal.
  test('readings alone, male end', async ({ page }) => {
    await openApp(page, '#/readings');
    await page.getByRole('textbox', { name: 'Pitch' }).fill('12');
    await page.getByText('inch', { exact: true }).click();
    await page.getByRole('textbox', { name: 'Outside diameter' }).fill('1 7/16');
    await page.getByRole('button', { name: 'Identify' }).click();
    await expect(page.locator('.decision')).toBeVisible();
    await unfold(page);
    await expect(page.locator('.candidate').first()).toContainText('ISO 8434-3 -16');
    await expect(page.getByText('1 7/16-12').first()).toBeVisible();
    await expect(page.locator('.cautions')).toBeVisible();
  });
});

onSize('phone', () => {
  // Common practice: 1 3/8 in across the crests of a female end and 12 tpi is the same.
  test('readings alone, female end, then the asked reading settles it', async ({ page }) => {
    await openApp(page, '#/readings');
    await page.getByLabel('Female: thread inside').check();
    await page.getByRole('textbox', { name: 'Pitch' }).fill('12');
    await page.getByText('inch', { exact: true }).click();
    await page.getByRole('textbox', { name: 'Inside diameter' }).fill('1 3/8');
    await page.getByRole('button', { name: 'Identify' }).click();
    await unfold(page);
    await expect(page.locator('.candidate').first()).toContainText('ISO 8434-3 -16');
    await expect(page.getByRole('heading', { name: 'Look at the end' })).toBeVisible();
    await page.locator('[data-seat="flat-face-o-ring"]').click();
    await expect(page.locator('.decision[data-state="settled"]')).toBeVisible();
    await expect(decidedThread(page)).toContainText('1 7/16-12');
    await expect(decidedConnection(page)).toContainText('ISO 8434-3 -16');
  });

  test('a value that cannot be read is said so and kept', async ({ page }) => {
    await openApp(page, '#/readings');
    await page.getByRole('textbox', { name: 'Pitch' }).fill('sixteen');
    await page.getByRole('textbox', { name: 'Outside diameter' }).fill('900');
    await page.getByRole('button', { name: 'Identify' }).click();
    await expect(page.getByRole('alert')).toHaveCount(2);
    await expect(page.getByRole('textbox', { name: 'Pitch' })).toHaveValue('sixteen');
    await expect(page).toHaveURL(/#\/readings$/);
    await page.reload();
    await expect(page.getByRole('textbox', { name: 'Pitch' })).toHaveValue('sixteen');
  });
});
