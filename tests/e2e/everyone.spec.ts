import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import {
  axeViolationsInBothSchemes,
  onBothSizes,
  onSize,
  openApp,
  openMeasuredSample,
  unfold,
  watchLayoutShift,
} from './support';
import { test } from './window';

const quietScreens = [
  '',
  '#/shoot',
  '#/readings',
  '#/used',
  '#/card',
  '#/drawer',
  '#/standards',
  '#/about',
];

onBothSizes(() => {
  test('axe finds nothing on any screen, in light and in dark', async ({ page }) => {
    for (const hash of quietScreens) {
      await openApp(page, hash);
      await page.waitForLoadState('networkidle');
      expect(await axeViolationsInBothSchemes(page), `screen ${hash || 'start'}`).toEqual([]);
    }
    await openMeasuredSample(page);
    await unfold(page);
    await expect(page.locator('.candidate').first()).toBeVisible();
    expect(await axeViolationsInBothSchemes(page), 'sheet').toEqual([]);
    await page.getByRole('button', { name: 'Show it by hand' }).click();
    expect(await axeViolationsInBothSchemes(page), 'help').toEqual([]);
    await page.goto(page.url().replace('#/sheet', '#/result'));
    await expect(page.locator('.result-page')).toBeVisible();
    expect(await axeViolationsInBothSchemes(page), 'result').toEqual([]);
    await openApp(page);
    await page.getByLabel('Choose a photo').setInputFiles({
      name: 'x.jpg',
      mimeType: 'image/jpeg',
      buffer: Buffer.from('text'),
    });
    await expect(page.locator('.refused')).toBeVisible({ timeout: 180_000 });
    expect(await axeViolationsInBothSchemes(page), 'refused').toEqual([]);
  });

  test('the layout does not shift, however late a part of the page arrives', async ({ page }) => {
    const shift = await watchLayoutShift(page);
    const parts = await deliverPartsLate(page);
    for (const hash of quietScreens) {
      await openApp(page, hash);
      await parts.arrived();
      expect(await shift(), `screen ${hash || 'start'}`).toBeLessThan(0.05);
    }
    // All but the first screen are loaded on demand.
    expect(parts.count()).toBeGreaterThanOrEqual(quietScreens.length - 1);
  });
});

/** Holds each script and style that is loaded on demand until the page has been drawn without it,
 *  as a slow network does. */
async function deliverPartsLate(page: Page) {
  let held = 0;
  let seen = 0;
  const drawn = () =>
    page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
  const first = readFileSync(new URL('../../dist/index.html', import.meta.url), 'utf8');
  await page.route(/\/assets\/[^/]*\.(js|css)$/, async (route) => {
    const name = new URL(route.request().url()).pathname.split('/').at(-1)!;
    if (!first.includes(name)) {
      held++;
      seen++;
      await drawn().finally(() => held--);
    }
    await route.continue();
  });
  return {
    count: () => seen,
    /** Nothing is on its way, and what came has been drawn. */
    arrived: () =>
      expect
        .poll(async () => {
          const before = seen;
          await drawn();
          const images = await page.evaluate(() =>
            [...document.images].every((one) => one.complete),
          );
          return held === 0 && seen === before && images;
        })
        .toBe(true),
  };
}

onSize('desk', () => {
  test('by keyboard alone: skip link, sample, reading', async ({ page }) => {
    await openApp(page);
    await page.keyboard.press('Tab');
    await expect(page.getByRole('button', { name: 'Skip to the content' })).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(page.locator('main')).toBeFocused();
    await page.locator('[data-sample="sample-cone"]').focus();
    await page.keyboard.press('Enter');
    await expect(page.locator('.decision')).toBeVisible({ timeout: 180_000 });
    await page.locator('[data-seat="cone-45"]').focus();
    await page.keyboard.press('Enter');
    await expect(page.locator('.decision[data-state="settled"]')).toBeVisible();
  });
});

onSize('phone', () => {
  test('the page answers before OpenCV has loaded', async ({ page }) => {
    let release = () => {};
    const held = new Promise<void>((done) => {
      release = done;
    });
    await page.route('**/*.wasm', async (route) => {
      await held;
      await route.continue().catch(() => undefined);
    });
    await openApp(page);
    await page.getByRole('button', { name: 'Enter readings' }).click();
    await expect(page.getByRole('heading', { name: 'From readings alone' })).toBeVisible();
    release();
  });

  test('languages: German with its decimal comma, kept over a reload', async ({ page }) => {
    await openApp(page);
    await page.getByLabel('Language').selectOption('de');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Welches Gewinde ist das?');
    await expect(page.locator('html')).toHaveAttribute('lang', 'de');
    await page.goto('./#/readings');
    await page.getByRole('textbox', { name: 'Steigung' }).fill('14');
    await page.getByRole('textbox', { name: 'Außendurchmesser' }).fill('26,4');
    await page.getByRole('button', { name: 'Bestimmen' }).click();
    await expect(page.locator('.decision')).toBeVisible();
    await unfold(page);
    await page.getByLabel('Anderer Messwert').waitFor();
    await expect(page.getByText(/\d,\d{3} mm/).first()).toBeVisible();
    await page.reload();
    await expect(page.getByRole('link', { name: 'Ablage' }).first()).toBeVisible();
    for (const [code, word] of [
      ['fr', 'Mes fiches'],
      ['es', 'Archivo'],
      ['en', 'Drawer'],
    ] as const) {
      await page.locator('.language-picker select').selectOption(code);
      await expect(page.getByRole('link', { name: word }).first()).toBeVisible();
    }
  });
});

test('nothing overflows from 320 to 2560 px', async ({ page }) => {
  await openMeasuredSample(page);
  const sheet = new URL(page.url()).hash;
  for (const width of [320, 768, 2560]) {
    await page.setViewportSize({ width, height: 900 });
    for (const hash of [...quietScreens, sheet, sheet.replace('sheet', 'result')]) {
      await page.goto(`./${hash}`);
      await expect(page.locator('main h1').first()).toBeAttached();
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over, `${hash || 'start'} at ${width} px`).toBeLessThanOrEqual(0);
    }
  }
});

test('in every language nothing overflows at 320 px, and no button cuts its words', async ({
  page,
}) => {
  test.slow();
  await page.setViewportSize({ width: 320, height: 720 });
  await openMeasuredSample(page, 'sample-cone');
  const sheet = new URL(page.url()).hash;
  for (const code of ['de', 'fr', 'es']) {
    await page.locator('.language-picker select').selectOption(code);
    await expect(page.locator('html')).toHaveAttribute('lang', code);
    for (const hash of [
      ...quietScreens,
      sheet,
      ...['result', 'counter'].map((one) => sheet.replace('sheet', one)),
    ]) {
      await page.goto(`./${hash}`);
      await expect(page.locator('main h1').first()).toBeAttached();
      const found = await page.evaluate(() => ({
        over: document.documentElement.scrollWidth - innerWidth,
        cut: [...document.querySelectorAll('button, .button, th, dt, dd, h1, h2, .places a')]
          .filter(
            (one) =>
              one.checkVisibility() && one.clientWidth > 1 && one.scrollWidth > one.clientWidth + 1,
          )
          .map((one) => one.textContent),
      }));
      expect(found, `${hash || 'start'} in ${code}`).toEqual({ over: expect.any(Number), cut: [] });
      expect(found.over, `${hash || 'start'} in ${code}`).toBeLessThanOrEqual(0);
    }
  }
});

test('touch targets are at least 44 px high on a phone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  for (const hash of quietScreens) {
    await openApp(page, hash);
    const small = await page
      .locator(
        'main button, main a.button, main select, main input:not([type=checkbox], [type=radio], [type=file]), .places a',
      )
      .evaluateAll((all) =>
        all
          .filter(
            (one) => one.getClientRects().length > 0 && one.getBoundingClientRect().height < 44,
          )
          .map((one) => one.outerHTML.slice(0, 80)),
      );
    expect(small, hash).toEqual([]);
  }
});
