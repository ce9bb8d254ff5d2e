import { expect } from '@playwright/test';
import { axeViolations, chooseFile, decidedThread, openApp, sizes, unfold } from './support';
import { test } from './window';

/** Renders of female ends that stand mouth up (fixtures/female, with truth): G 3/8, minor diameter 15.05 mm, and
 *  M12×1.5. Not photographs. */
const female = new URL('../../fixtures/female/', import.meta.url).pathname;

// One photo is measured twice.
test.slow();

test.describe('phone', () => {
  test.use({ ...sizes.phone, locale: 'en-GB' });

  test('a female end: chosen on the first page, shown how, measured inside', async ({ page }) => {
    await openApp(page);
    await expect(page.getByRole('radio', { name: 'Either: the photo tells' })).toBeChecked();
    await page.getByRole('radio', { name: 'Female: thread inside' }).check();
    await expect(page.locator('.ways-to-show li')).toHaveCount(2);
    expect(await axeViolations(page)).toEqual([]);
    // It belongs to the person: a reload keeps it.
    await page.reload();
    await expect(page.getByRole('radio', { name: 'Female: thread inside' })).toBeChecked();

    await chooseFile(page, `${female}gf022.jpg`);
    await expect(decidedThread(page)).toContainText('G3/8', { timeout: 120_000 });
    await unfold(page);
    const numbers = page.locator('.numbers');
    await expect(numbers).toContainText(/Minor diameter.*1[45]\.\d+ ± \d\.\d+ mm/);
    await expect(page.locator('.layer-outline path').first()).toBeAttached();
    await expect(page.locator('.thread-picture')).toBeVisible();
    // Without an axis or a rule by hand, which speak of a thread outside.
    await expect(page.getByRole('button', { name: 'Show it by hand' })).toHaveCount(0);
    for (const word of ['Major diameter', 'Nose half-angle', 'Crest profile', 'Contact lines'])
      await expect(page.getByText(word, { exact: true })).toHaveCount(0);

    await page.goto(page.url().replace('#/sheet', '#/result'));
    await expect(page.locator('.result-middle')).toContainText('Minor diameter');
    await expect(page.locator('.result-middle')).not.toContainText('Major diameter');
  });
});

test.describe('desk', () => {
  test.use({ ...sizes.desk, locale: 'en-GB' });

  test('whoever says nothing of the end gets what the photo shows', async ({ page }) => {
    await openApp(page);
    await expect(page.locator('.ways-to-show')).toHaveCount(0);
    await chooseFile(page, `${female}gf022.jpg`);
    // Taken for a male end it was a 1/2-24 UNS, at 98 %.
    await expect(decidedThread(page)).toContainText('G3/8', { timeout: 120_000 });
    await expect(page.locator('.numbers')).toContainText('Minor diameter');
    await openApp(page);
    await chooseFile(page, new URL('../../fixtures/photos/d26.jpg', import.meta.url).pathname);
    await expect(decidedThread(page)).toContainText('3/4-16 UNF', { timeout: 120_000 });
    await expect(page.locator('.numbers')).toContainText('Major diameter');
  });

  test('the same photo as a male end is refused, and one tap asks for the thread inside', async ({
    page,
  }) => {
    await openApp(page);
    await page.getByRole('radio', { name: 'Male: thread outside' }).check();
    await chooseFile(page, `${female}gf024.jpg`);
    await expect(page.getByText('The scale was found, but no thread.')).toBeVisible({
      timeout: 120_000,
    });
    await page.getByRole('button', { name: 'The thread is inside' }).click();
    await expect(decidedThread(page)).toContainText('M12x1.5', { timeout: 120_000 });
    // What was said of this photo is not said of the next.
    await openApp(page);
    await expect(page.getByRole('radio', { name: 'Male: thread outside' })).toBeChecked();
  });

  test('a male end asked for as female is refused, and the way back is offered', async ({
    page,
  }) => {
    await openApp(page);
    await page.getByRole('radio', { name: 'Female: thread inside' }).check();
    await chooseFile(page, new URL('../../fixtures/photos/d26.jpg', import.meta.url).pathname);
    await expect(page.getByText('no thread inside')).toBeVisible({ timeout: 120_000 });
    await expect(page.locator('.ways-to-show')).toBeVisible();
    await expect(page.getByRole('button', { name: 'Show it by hand' })).toHaveCount(0);
    await page.getByRole('button', { name: 'The thread is outside' }).click();
    await expect(page.locator('.decision')).toBeVisible({ timeout: 120_000 });
    await unfold(page);
    await expect(page.locator('.numbers')).toContainText('Major diameter');
  });
});
