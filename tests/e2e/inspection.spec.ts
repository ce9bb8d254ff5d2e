import { expect, type Page } from '@playwright/test';
import {
  decidedThread,
  onBothSizes,
  onSize,
  openMeasuredSample,
  photosFolder,
  unfold,
} from './support';
import { test } from './window';

const box = (page: Page) => page.locator('.photo-drawing').getAttribute('viewBox');

test.beforeEach(async ({ page }) => {
  await openMeasuredSample(page);
  await unfold(page);
  await page.locator('.photo-stage').scrollIntoViewIfNeeded();
});

onBothSizes((size) => {
  test('zoom and pan by buttons, keys, wheel and drag', async ({ page }) => {
    const whole = await box(page);
    await page.getByRole('button', { name: 'Zoom in' }).click();
    const zoomed = await box(page);
    expect(zoomed).not.toBe(whole);
    const stage = page.locator('.photo-stage');
    await stage.focus();
    await page.keyboard.press('ArrowRight');
    expect(await box(page)).not.toBe(zoomed);
    await page.keyboard.press('0');
    expect(await box(page)).toBe(whole);
    const at = (await stage.boundingBox())!;
    await page.mouse.move(at.x + at.width / 3, at.y + at.height / 3);
    if (size === 'desk') {
      await page.mouse.wheel(0, -300);
      await expect.poll(() => box(page)).not.toBe(whole);
      const before = await box(page);
      await page.mouse.down();
      await page.mouse.move(at.x + at.width / 2, at.y + at.height / 2, { steps: 4 });
      await page.mouse.up();
      expect(await box(page)).not.toBe(before);
    }
    await page.getByRole('button', { name: 'Thread', exact: true }).click();
    const [, , width] = (await box(page))!.split(' ').map(Number);
    expect(width).toBeLessThan(Number(whole!.split(' ')[2]) / 2);
  });
});

onSize('desk', () => {
  test('whoever measures in inches reads inches first', async ({ page }) => {
    const diameter = page.locator('.numbers > div').filter({ hasText: 'Major diameter' });
    const pitch = page.locator('.numbers > div').filter({ hasText: 'Pitch' });
    await expect(diameter).toContainText(/ mm.* in$/s);
    await page.getByRole('button', { name: 'Show it by hand' }).click();
    const panel = page.locator('.help-panel');
    await panel.getByLabel('Use a rule').check();
    await panel.getByText('inch', { exact: true }).click();
    await expect(diameter).toContainText(/ in.* mm$/s);
    await expect(pitch).toContainText(/ tpi.* mm$/s);
    await panel.getByText('mm', { exact: true }).click();
    await expect(diameter).toContainText(/ mm.* in$/s);
  });

  test('a correction by hand measures again, with undo and redo', async ({ page }) => {
    const pitch = page.locator('.numbers dd').first();
    const before = Number.parseFloat(await pitch.innerText());
    await page.getByRole('button', { name: 'Show it by hand' }).click();
    const handle = page.locator('[data-handle="b"]');
    const circle = handle.locator('.ring');
    const place = async () => [await circle.getAttribute('cx'), await circle.getAttribute('cy')];
    const start = await place();
    await handle.focus();
    await page.keyboard.press('Shift+ArrowLeft');
    const moved = await place();
    expect(moved).not.toEqual(start);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await place()).toEqual(start);
    await page.getByRole('button', { name: 'Redo' }).click();
    expect(await place()).toEqual(moved);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.locator('.help-panel').getByRole('button', { name: 'Measure again' }).click();
    await expect(
      page.locator('.help-panel').getByRole('button', { name: 'Measure again' }),
    ).toBeEnabled({
      timeout: 180_000,
    });
    await expect(page.locator('.inspection .alert')).toHaveCount(0);
    const after = Number.parseFloat(await pitch.innerText());
    expect(Math.abs(after / before - 1)).toBeLessThan(0.01);
  });
});

onSize('phone', () => {
  test('layers are switched, and crests are linked between plot and photo', async ({ page }) => {
    const dots = page.locator('.layer-crests .dot');
    await expect(dots).not.toHaveCount(0);
    await page.getByLabel('Crests', { exact: true }).first().uncheck();
    await expect(dots).toHaveCount(0);
    await page.getByLabel('Crests', { exact: true }).first().check();
    await page.locator('.crest-stepper input').fill('3');
    await expect(page.locator('.layer-crests .chosen')).toHaveCount(1);
    await expect(page.locator('.profile-plot .crest.chosen')).toHaveCount(1);
    await expect(page.locator('.crest-said')).toContainText('Crest 4');
  });

  test('another photo of the same fitting is combined; one of another fitting is not', async ({
    page,
  }) => {
    const add = page.getByLabel('Add another photo');
    await add.setInputFiles(`${photosFolder}d26.jpg`);
    await expect(page.getByText('2 photos')).toBeVisible({ timeout: 180_000 });
    await page.getByRole('button', { name: 'Photo 1' }).click();
    await expect(page.locator('.photo-stage img')).toBeVisible();
    // A 1 5/16-12 (its truth file).
    await page.getByLabel('Add another photo').setInputFiles(`${photosFolder}d13.jpg`);
    await expect(page.getByText('The photos do not agree')).toBeVisible({ timeout: 180_000 });
    await expect(page.getByText('2 photos')).toBeVisible();
    // Said where the verdict stands, with the way on.
    const said = page.locator('.sheet-answer').getByRole('alert').filter({
      hasText: 'Two photos disagree',
    });
    await expect(said).toContainText(/gives ⌀ 33\.\d+ × 2\.1\d+ mm/);
    await said.getByRole('button', { name: 'Identify it as another fitting' }).click();
    await expect(decidedThread(page)).toContainText('1 5/16-12', { timeout: 180_000 });
    await expect(said).toHaveCount(0);
  });
});
