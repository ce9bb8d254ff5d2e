/** `npm run screenshots`: every screen, phone and desk, light and dark, into screenshots/. */
import { execFileSync } from 'node:child_process';
import { copyFileSync, mkdirSync, rmSync } from 'node:fs';
import { type BrowserContext, chromium, type Page } from '@playwright/test';
import { serve } from '../../.ci/serve.mjs';
import { blankPhoto, unfold } from '../e2e/support';

const root = new URL('../../', import.meta.url).pathname;
const folder = `${root}screenshots/`;
const only = process.argv[2] ?? '';

const sizes = {
  phone: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
  desk: { viewport: { width: 1280, height: 800 } },
} as const;

execFileSync('npx', ['vite', 'build', '--logLevel', 'error'], { cwd: root, stdio: 'inherit' });
if (!only) rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const { address, server } = await serve(0);
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-background-networking',
    '--use-fake-ui-for-media-stream',
    '--use-fake-device-for-media-stream',
  ],
});

for (const [size, settings] of Object.entries(sizes))
  for (const colorScheme of ['light', 'dark'] as const) {
    const prefix = `${size}-${colorScheme}`;
    if (!prefix.includes(only)) continue;
    const context = await browser.newContext({
      ...settings,
      colorScheme,
      reducedMotion: 'reduce',
      locale: 'en-GB',
      permissions: ['camera'],
    });
    await tour(context, prefix);
    await context.close();
  }
await browser.close();
server.close();

async function tour(context: BrowserContext, prefix: string): Promise<void> {
  const page = await context.newPage();
  page.on('pageerror', (error) => console.error(prefix, error.message));
  let count = 0;
  const take = async (name: string, of = page) => {
    count += 1;
    await of.waitForTimeout(250);
    const number = String(count).padStart(2, '0');
    await of.screenshot({ path: `${folder}${prefix}-${number}-${name}.png`, fullPage: true });
    const over = await of.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (over > 0) console.error(`${prefix} ${name}: ${over} px too wide`);
  };
  const keep = (name: string, picture: string) => {
    copyFileSync(picture, `${folder}${prefix}-${name}.jpg`);
  };
  const open = async (hash: string) => {
    await page.goto(`${address}${hash}`);
    await page.locator('main h1').first().waitFor({ state: 'attached' });
    await page.waitForLoadState('networkidle');
  };

  await open('');
  await take('start-first-visit');
  await sheetScreens(page, open, { take, keep });
  await open('#/shoot');
  await page.waitForTimeout(1500);
  await take('shoot');
  await open('#/readings');
  await take('readings');
  await page.getByRole('button', { name: 'Identify' }).click();
  await take('readings-wrong');
  await open('#/used');
  await page.getByLabel('Thread it should have').fill('3/4-16 UNF');
  await page.getByLabel('Thread it should have').press('Tab');
  await take('used');
  await page.getByRole('button', { name: 'Go on with readings' }).click();
  await page.locator('[data-question="seal"]').getByLabel('scratched').check();
  await take('wear-from-readings');
  await open('#/card');
  await page.getByRole('textbox', { name: 'Long bar' }).fill('150.4');
  await page.getByRole('textbox', { name: 'Short bar' }).fill('100.2');
  await page.getByLabel('Name of this card').fill('Workshop printer');
  await page.getByRole('button', { name: 'Keep this check' }).click();
  await take('card');
  await open('#/drawer');
  await take('drawer');
  await open('#/standards');
  await page.getByLabel('Search').fill('16');
  await take('tables-threads');
  await page.getByRole('button', { name: 'Connections', exact: true }).click();
  await page.getByLabel('Search').fill('-16');
  await take('tables-connections');
  await open('#/about');
  await take('about');
  await open('');
  await take('start-later');
  for (const code of ['de', 'fr', 'es']) {
    await page.locator('.language-picker select').selectOption(code);
    await take(`start-${code}`);
  }
}

interface Camera {
  readonly take: (name: string, of?: Page) => Promise<void>;
  readonly keep: (name: string, picture: string) => void;
}

async function sheetScreens(
  page: Page,
  open: (hash: string) => Promise<void>,
  camera: Camera,
): Promise<void> {
  const { take } = camera;
  await page.locator('[data-sample="sample-cone"]').click();
  await page.locator('.stages').waitFor();
  await take('measuring');
  await page.locator('.decision').waitFor({ timeout: 60_000 });
  await page.locator('.thread-picture image').waitFor({ state: 'attached' });
  await take('sheet-asked');
  await acrossTheCounter(page, open, camera);
  await page.getByRole('link', { name: 'Back to the identification' }).click();
  await unfold(page);
  await page.getByRole('button', { name: 'Thread', exact: true }).click();
  await page.locator('.crest-stepper input').fill('4');
  await page.getByRole('button', { name: 'Show it by hand' }).click();
  await take('sheet-by-hand');
  await open('');
  await page.locator('[data-sample="sample-stud"]').click();
  await page.locator('.decision[data-state="settled"]').waitFor({ timeout: 60_000 });
  await unfold(page);
  await page.locator('.candidate').first().waitFor();
  await take('sheet-settled');
  await page.getByRole('link', { name: 'Result' }).click();
  await page.locator('.result-page').waitFor();
  await take('result');
  await page.goto(page.url().replace('#/result', '#/wear'));
  await page.locator('.crest-chart').waitFor();
  await take('wear');
  await open('#/readings');
  await page.getByRole('textbox', { name: 'Pitch' }).fill('11');
  await page.getByRole('textbox', { name: 'Outside diameter' }).fill('33.1');
  await page.getByRole('button', { name: 'Identify' }).click();
  await unfold(page);
  await page.locator('.candidate').first().waitFor();
  await take('sheet-from-readings');
  await open('');
  await page.getByLabel('Choose a photo').setInputFiles({
    name: 'table.jpg',
    mimeType: 'image/jpeg',
    buffer: await blankPhoto(page),
  });
  await page.locator('.refused').waitFor({ timeout: 60_000 });
  await take('refused');
}

/** The open sheet goes out as a picture, is judged elsewhere, and its answer is read. */
async function acrossTheCounter(
  page: Page,
  open: (hash: string) => Promise<void>,
  { take, keep }: Camera,
): Promise<void> {
  const picture = async (from: Page, button: string) => {
    const download = from.waitForEvent('download');
    await from.getByRole('button', { name: button }).click();
    return (await download).path();
  };
  await unfold(page);
  await page.getByLabel('Remarks for the counter').fill('Boom cylinder, two of them');
  await page.getByRole('button', { name: 'let the counter decide' }).click();
  await page.locator('.result-page').waitFor();
  await take('result-open');
  const sent = await picture(page, 'Send to the counter');
  keep('picture-sent', sent);
  const colorScheme = await page.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches);
  const context = await browser.newContext({
    viewport: page.viewportSize(),
    colorScheme: colorScheme ? 'dark' : 'light',
    reducedMotion: 'reduce',
    locale: 'en-GB',
  });
  const counter = await context.newPage();
  await counter.goto(address);
  await counter.getByLabel('Choose a photo').setInputFiles(sent);
  await counter.locator('.counter-page .thread-picture image').waitFor({ state: 'attached' });
  await take('counter', counter);
  const flare = counter.locator('.judge option', { hasText: 'SAE J512 -6' }).first();
  await counter.getByLabel('It is').selectOption((await flare.getAttribute('value'))!);
  await counter.getByLabel('Your name').fill('Desk 2');
  await counter.getByRole('button', { name: 'Confirm' }).click();
  await counter.getByLabel(/Our part numbers/).fill('K-4711');
  await take('counter-confirmed', counter);
  const answer = await picture(counter, 'Send the answer back');
  keep('picture-answered', answer);
  await open('');
  await page.getByLabel('Choose a photo').setInputFiles(answer);
  await page.locator('.answer').waitFor();
  await take('answer');
  await context.close();
}
