import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import {
  chooseFile,
  decidedConnection,
  decidedThread,
  measureSample,
  onBothSizes,
  onSize,
  openApp,
  openMeasuredSample,
  unfold,
} from './support';
import { test } from './window';

/** What a sheet of a measured photo shows, whatever it leaves open. */
async function showsThread(page: Page, thread: string) {
  await unfold(page);
  await expect(page.locator('.layer-crests .dot')).not.toHaveCount(0);
  await expect(page.locator('.profile-plot svg')).toBeVisible();
  await expect(page.locator('.cautions')).toBeVisible();
  await expect(decidedThread(page)).toContainText(thread);
}

async function isSettled(page: Page, connection: string) {
  await expect(page.locator('.decision[data-state="settled"]')).toBeVisible();
  await expect(decidedConnection(page)).toContainText(connection);
}

/** A computed picture of a 3/4-16 stud end, dash 8, with its O-ring (its truth): the photo settles both its thread and
 *  its end. */
async function studIsSettled(page: Page) {
  await showsThread(page, '3/4-16');
  await isSettled(page, 'ISO 11926 -8');
}

/** One of a 5/8-18 with a 45° cone (its truth): of the two families of that cone the photo leaves both. */
async function coneToSettled(page: Page) {
  await showsThread(page, '5/8-18');
  await expect(decidedConnection(page)).toContainText('open');
  await page.locator('[data-seat="cone-45"]').click();
  await isSettled(page, 'SAE J512 -6');
}

onBothSizes(() => {
  test('first visit, sample, overlay and numbers, asked reading, settled, reload, export, import elsewhere', async ({
    page,
    browser,
  }) => {
    const began = Date.now();
    await openApp(page);
    await expect(page.locator('.how-steps > li')).toHaveCount(3);
    await expect(page.locator('.start-how')).toHaveAttribute('open', '');
    await measureSample(page, 'sample-cone');
    await coneToSettled(page);
    expect(Date.now() - began).toBeLessThan(60_000);

    const pitch = page.locator('.numbers dd').first();
    await expect(pitch).toContainText(/1\.4\d+ ± 0\.0\d+ mm/);
    const numbers = await page.locator('.numbers').innerText();
    await expect(page.getByText('kept on this device')).toBeVisible();

    await page.reload();
    await expect(decidedConnection(page)).toContainText('SAE J512 -6');
    await unfold(page);
    expect(await page.locator('.numbers').innerText()).toBe(numbers);

    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the sheet file' }).click();
    const file = await (await download).path();
    // Nothing of a camera's metadata leaves with the sheet.
    const bytes = readFileSync(file, 'latin1');
    for (const trace of ['Exif\0\0', 'GPSLatitude', 'http://ns.adobe.com/xap'])
      expect(bytes.includes(trace)).toBe(false);

    const fresh = await browser.newContext({ locale: 'en-GB' });
    const other = await fresh.newPage();
    await openApp(other);
    await chooseFile(other, {
      name: 'sheet.crestwise',
      mimeType: 'application/octet-stream',
      buffer: readFileSync(file),
    });
    await expect(decidedConnection(other)).toContainText('SAE J512 -6');
    await expect(other.getByText('Outside cone, 45° to the axis').first()).toBeVisible();
    // What comes from elsewhere is judged; its numbers are a step away.
    await expect(other.locator('.counter-page')).toBeVisible();
    await other.getByRole('link', { name: 'Photo, numbers, readings' }).click();
    await expect(other.locator('.sheet-photo')).toBeVisible();
    await unfold(other);
    expect(await other.locator('.numbers').innerText()).toBe(numbers);
    await fresh.close();
  });
});

onSize('desk', () => {
  test('the result shows seal, assembly and cautions, and prints on one page', async ({ page }) => {
    await openMeasuredSample(page);
    await studIsSettled(page);
    await page.getByRole('link', { name: 'Result' }).click();
    const sheet = page.locator('.result-page');
    await expect(sheet).toContainText('ISO 11926 -8');
    // SAE J1926 / ISO 11926: dash 8 takes AS568-908.
    await expect(sheet).toContainText('AS568-908');
    // A 37° flare nut of dash 8 has the same 3/4-16 thread, and does not seal.
    await expect(sheet.getByText('Never join with').locator('..')).toContainText('ISO 8434-2 -8');
    await expect(sheet.locator('.result-steps li')).toHaveCount(3);
    await expect(sheet.locator('.cautions li')).toHaveCount(5);
    await page.emulateMedia({ media: 'print' });
    const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
  });
});

onSize('phone', () => {
  test('a reading can be removed and brought back', async ({ page }) => {
    await openMeasuredSample(page, 'sample-cone');
    await coneToSettled(page);
    await page.getByRole('button', { name: /^Remove Seat/ }).click();
    await expect(decidedConnection(page)).toContainText('open');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(decidedConnection(page)).toContainText('SAE J512 -6');
  });
});
