import { expect, type Page } from '@playwright/test';
import { withPdf } from '../scale-card/rasterise';
import {
  axeViolationsInBothSchemes,
  chooseFile,
  keptPictures,
  onSize,
  openApp,
  openMeasuredSample,
  photosFolder,
} from './support';
import { type UsedPhoto, usedPart } from './used-part';
import { test } from './window';

const finding = (page: Page) => page.locator('.wear-finding');
const level = (page: Page, is: 'replace' | 'gauge' | 'none' | 'nothing') =>
  expect(finding(page)).toHaveAttribute('data-level', is);
const reason = (page: Page, name: string) => page.locator(`[data-reason="${name}"]`);
const answer = (page: Page, question: string, words: string) =>
  page.locator(`[data-question="${question}"]`).getByLabel(words, { exact: true }).check();
const caliper = async (page: Page, ...mm: string[]) => {
  for (const [i, place] of ['Free end', 'Middle', 'Last full turn'].entries())
    await page.getByRole('textbox', { name: place }).fill(mm[i]!);
  await page.getByRole('textbox', { name: 'Last full turn' }).press('Enter');
};

async function openUsed(page: Page, ...photos: UsedPhoto[]): Promise<void> {
  await openApp(page);
  await chooseFile(page, await usedPart(photos));
  await page.locator('.wear-note').getByRole('link').click();
  await expect(page.locator('.wear')).toBeVisible();
}

async function askUsed(page: Page, thread: string): Promise<void> {
  await openApp(page);
  await page.getByRole('link', { name: 'Is this one still good?' }).click();
  await page.getByLabel('Thread it should have').fill(thread);
  await page.getByLabel('Thread it should have').press('Tab');
}

onSize('phone', () => {
  test('a worn part: below its class, marked, in words and half section, on sheet, result and print', async ({
    page,
  }) => {
    await openUsed(page, { majorMm: 18.4, u: 0.02, shortTurns: [1, 5] });
    await level(page, 'gauge');
    // 19.050 − 0.3 · Td2 − 0.06 ∛p² = 18.7717 (ASME B1.1, 5.8.1), less 18.40.
    await expect(page.locator('.wear-verdict')).toContainText('Below its class by 0.372 ± 0.040');
    await expect(reason(page, 'first-turns-short')).toBeVisible();
    await expect(reason(page, 'crests-short')).toBeVisible();
    await expect(page.locator('.wear-marks [data-state="short"]')).toHaveCount(2);
    await expect(page.locator('.wear-marks [data-state="below"]')).toHaveCount(12);
    await expect(page.locator('.crest-chart [data-state="short"]')).toHaveCount(2);
    // The issue's own figures: 18.40 leaves 0.36 mm a side, 0.54 at the class limit.
    await expect(page.locator('.wear-overlap')).toContainText('0.36');
    await expect(page.locator('.wear-overlap')).toContainText('0.54');
    await expect(page.locator('.overlap-drawing .bears')).toHaveCount(6);
    await page.getByText('3A', { exact: true }).click();
    // 3A has no allowance: 19.050 − 0.239 = 18.811.
    await expect(page.locator('.wear-verdict')).toContainText('0.410 ± 0.040');
    await answer(page, 'notGoRing', 'runs on beyond two turns');
    await level(page, 'replace');
    await page.getByRole('link', { name: /To the sheet/ }).click();
    await level(page, 'replace');
    await page.goto(page.url().replace('#/sheet', '#/result'));
    await expect(page.locator('.result-page .wear-level')).toHaveText('Replace it');
    const printed = await page.pdf({ format: 'A4', preferCSSPageSize: true });
    const text = await withPdf(printed, (document) => document.getPage(0).getText());
    expect(text).toContain('Replace it');
    expect(text).toContain('NOT GO ring runs on beyond two turns');
  });
});

onSize('desk', () => {
  test('not decidable: said before it is relied on, with what would decide; a caliper does', async ({
    page,
  }) => {
    await openUsed(page, { majorMm: 18.9, u: 0.12 });
    await expect(page.locator('.wear-beforehand.alert')).toContainText('±\u00a00.24');
    await expect(page.locator('.wear-beforehand.alert')).toContainText(
      'A caliper at three places decides',
    );
    await expect(page.locator('.wear-verdict')).toHaveAttribute('data-state', 'not-decidable');
    await level(page, 'gauge');
    await caliper(page, '18.90', 'about 19', '');
    await expect(page.getByRole('alert')).toContainText('not a value I can read');
    await expect(page.getByRole('textbox', { name: 'Middle' })).toHaveValue('about 19');
    await caliper(page, '18.90', '18.91', '18.92');
    await expect(page.getByRole('alert')).toHaveCount(0);
    await expect(page.locator('.wear-verdict')).toHaveAttribute('data-state', 'within');
    // Taken back again.
    await caliper(page, '', '', '');
    await expect(page.locator('.wear-verdict')).toHaveAttribute('data-state', 'not-decidable');
  });

  // ASME B1.20.1, 8.1: flush with the ring's face within one turn.
  test('a taper: its gauge ring judges it, no class and no crests', async ({ page }) => {
    await askUsed(page, '1/2 npt');
    await expect(
      page.getByText('A taper is judged by how far its gauge ring runs on'),
    ).toBeVisible();
    await expect(page.getByText('Class', { exact: true })).toHaveCount(0);
    await page.getByRole('button', { name: 'Go on with readings' }).click();
    await level(page, 'nothing');
    await expect(page.locator('[data-question="goRing"]')).toHaveCount(0);
    const turns = page.getByRole('textbox', { name: 'Turns' });
    await turns.fill('many');
    await turns.press('Enter');
    await expect(page.getByRole('alert')).toContainText('number of turns');
    await turns.fill('2');
    await turns.press('Enter');
    await level(page, 'replace');
    await expect(reason(page, 'plane-deep')).toBeVisible();
    await page.getByText('turns short of it', { exact: true }).click();
    await expect(reason(page, 'plane-short')).toBeVisible();
    await level(page, 'gauge');
    await turns.fill('0');
    await turns.press('Enter');
    await level(page, 'none');
  });

  test('two photos: of an even part they agree, of an uneven one the smaller diameter counts', async ({
    page,
  }) => {
    await openUsed(page, { majorMm: 18.92, u: 0.03 }, { majorMm: 18.88, u: 0.03 });
    await expect(page.getByText('no more than chance')).toBeVisible();
    await expect(page.locator('.wear-verdict')).toHaveAttribute('data-state', 'within');
    await openUsed(page, { majorMm: 18.92, u: 0.03 }, { majorMm: 18.6, u: 0.03 });
    await expect(page.getByText('worn unevenly, or not the same part')).toBeVisible();
    await expect(page.locator('.wear-verdict')).toHaveAttribute('data-state', 'below');
    await expect(reason(page, 'uneven')).toBeVisible();
    await page.getByRole('button', { name: 'Photo 2' }).click();
    await expect(page.locator('.crest-chart [data-state="below"]')).toHaveCount(14);
  });
});

onSize('phone', () => {
  // d26: a 3/4-16 as made (its truth file), a computed photo.
  test('a new part: what a photo is worth is said first, and no finding is no clearance', async ({
    page,
  }) => {
    await askUsed(page, '3/4-16 unf');
    await expect(page.getByLabel('Thread it should have')).toHaveValue('3/4-16 UNF');
    // 0.239 mm over 1.65 (ISO 14253-1, computed).
    await expect(page.locator('.wear-beforehand')).toContainText('0.24\u00a0mm wide');
    await expect(page.locator('.wear-beforehand')).toContainText('±\u00a00.15');
    await page
      .locator('.used')
      .getByLabel('Choose a photo')
      .setInputFiles(`${photosFolder}d26.jpg`);
    await expect(page.locator('.wear')).toBeVisible({ timeout: 180_000 });
    await expect(page.locator('.wear-beforehand')).toContainText('This photo is good to ±');
    await expect(page.locator('.crest-chart .crest')).not.toHaveCount(0);
    expect(['within', 'not-decidable']).toContain(
      await page.locator('.wear-verdict').getAttribute('data-state'),
    );
    await caliper(page, '18.92', '18.90', '18.91');
    await expect(page.locator('.wear-verdict')).toHaveAttribute('data-state', 'within');
    await answer(page, 'seal', 'unmarked');
    await answer(page, 'firstTurns', 'whole');
    await answer(page, 'byHand', 'runs free, no rocking');
    await answer(page, 'goRing', 'runs on');
    await answer(page, 'notGoRing', 'holds within two turns');
    await level(page, 'none');
    await expect(finding(page)).toContainText('does not pass the thread');
    await expect(reason(page, 'crest-within')).toBeVisible();
    await expect(page.locator('.cautions')).toBeVisible();
    await page.reload();
    await level(page, 'none');
    await expect(page.getByRole('textbox', { name: 'Middle' })).toHaveValue('18.90mm');
  });

  test('readings only: every answer counts, can be taken back, and the drawer keeps it', async ({
    page,
  }) => {
    await openApp(page, '#/used');
    await page.getByRole('button', { name: 'Go on with readings' }).click();
    await expect(page.getByRole('alert')).toContainText('which thread it should have');
    await page.getByLabel('Thread it should have').fill('M22 by 1.5');
    await page.getByLabel('Thread it should have').press('Tab');
    await expect(page.getByRole('alert').first()).toContainText('Write it like');
    await page.getByLabel('Thread it should have').fill('m22 × 1,5');
    await page.getByLabel('Thread it should have').press('Tab');
    await page.getByRole('button', { name: 'Go on with readings' }).click();
    await level(page, 'nothing');
    await answer(page, 'seal', 'scratched');
    await level(page, 'replace');
    await answer(page, 'seal', 'not looked at');
    await level(page, 'nothing');
    await answer(page, 'byHand', 'rocks');
    await level(page, 'gauge');
    await caliper(page, '21.5', '21.6', '21.6');
    // 21.732 − 21.5 (ISO 965-1 6g, computed).
    await expect(page.locator('.wear-verdict')).toContainText('Below its class by 0.23');
    await page.goto('./#/drawer');
    await page.getByLabel('Search').fill('m22x1.5 6g');
    await expect(page.locator('.sheet-card')).toContainText('Is this one still good? M22x1.5');
    await page.getByRole('link', { name: /M22x1.5 6g/ }).click();
    await level(page, 'gauge');
    await page.locator('.wear-note').getByRole('link').click();
    await expect(page.locator('[data-question="byHand"]').getByLabel('rocks')).toBeChecked();
    await page.getByRole('link', { name: 'Leave this question out' }).click();
    await expect(page.locator('.wear-finding')).toHaveCount(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await level(page, 'gauge');
  });
});

// The sample and d26 are two computed photos of one part.
test('a second photo is measured and combined on this page', async ({ page }) => {
  await openMeasuredSample(page);
  await page.locator('.wear-note').getByRole('link').click();
  await page.getByLabel('Add a photo, turned by a quarter').setInputFiles(`${photosFolder}d26.jpg`);
  await expect(page.getByRole('button', { name: 'Photo 2' })).toBeVisible({ timeout: 180_000 });
  await expect(page.locator('[data-uneven]')).toContainText('The photos differ by');
});

// A reload in between loses neither the photo nor what was asked of it.
test('without a thread named, the one that the photo finds is taken or offered', async ({
  page,
}) => {
  await openApp(page, '#/used');
  await page.locator('.used').getByLabel('Choose a photo').setInputFiles(`${photosFolder}d26.jpg`);
  const measuring = page.getByRole('heading', { name: 'Measuring' });
  await expect(measuring).toBeVisible();
  // Not before it is known that no bank card lies in it is a photo kept.
  await expect
    .poll(async () => (await keptPictures(page)).length, { timeout: 180_000, intervals: [50] })
    .toBe(1);
  await page.reload();
  await expect(measuring).toBeVisible();
  await expect(page.locator('.wear')).toBeVisible({ timeout: 180_000 });
  const offered = page.locator('.wear-suggested button').filter({ hasText: '3/4-16 UNF' });
  await offered.click();
  await expect(offered).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByLabel('Thread it should have')).toHaveValue('3/4-16 UNF');
  await expect(finding(page)).toBeVisible();
});

test('the question in four languages, without a word of English left', async ({ page }) => {
  await openUsed(page, { majorMm: 18.4, u: 0.02 });
  const english = await page.locator('.wear').innerText();
  for (const code of ['de', 'fr', 'es']) {
    await page.locator('.language-picker select').selectOption(code);
    await expect(page.locator('html')).toHaveAttribute('lang', code);
    const here = await page.locator('.wear').innerText();
    const lines = (text: string) => text.split('\n').filter((one) => one.split(' ').length > 3);
    const kept = lines(here).filter((one) => lines(english).includes(one));
    expect(
      kept.filter((one) => !/Boom cylinder/.test(one)),
      code,
    ).toEqual([]);
    expect(here).toMatch(/0,372/);
  }
});

test('axe finds nothing on the page of a worn part, in light and in dark, nor does it overflow', async ({
  page,
}) => {
  await openUsed(page, { majorMm: 18.4, u: 0.02, shortTurns: [1] });
  expect(await axeViolationsInBothSchemes(page)).toEqual([]);
  for (const width of [320, 390, 768, 2560]) {
    await page.setViewportSize({ width, height: 900 });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(over, `${width} px`).toBeLessThanOrEqual(0);
  }
});
