import { mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname } from 'node:path';
import { type Browser, expect, type Page, test } from '@playwright/test';

const fixturesFolder = new URL('../../fixtures/', import.meta.url);
export const photosFolder = new URL('photos/', fixturesFolder).pathname;

export const sizes = {
  desk: { viewport: { width: 1280, height: 800 } },
  phone: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
} as const;
export type SizeName = keyof typeof sizes;

/** The same tests on a desk and on a phone: for what a size changes. */
export function onBothSizes(body: (size: SizeName) => void): void {
  onSize('desk', body);
  onSize('phone', body);
}

export function onSize(size: SizeName, body: (size: SizeName) => void): void {
  test.describe(size, () => {
    test.use({ ...sizes[size], locale: 'en-GB' });
    body(size);
  });
}

export async function openApp(page: Page, hash = ''): Promise<void> {
  await page.goto(`./${hash}`);
  await expect(page.locator('main h1').first()).toBeVisible();
}

/** Opens a bundled sample and waits for its sheet. */
export async function measureSample(page: Page, name = 'sample-stud'): Promise<void> {
  await page.locator(`[data-sample="${name}"]`).click();
  await expect(page.locator('.decision')).toBeVisible({ timeout: 180_000 });
}

const archiveOf = (name: string) =>
  new URL(`../../test-results/${name}.crestwise-drawer`, import.meta.url).pathname;
const builtPage = new URL('../../dist/index.html', import.meta.url).pathname;

/** Opens the sheet of a bundled sample where a test begins at a measured sheet: of `sample-stud` the photo settles
 *  all, of `sample-cone` the look at the end is still asked for. */
export function openMeasuredSample(page: Page, name = 'sample-stud'): Promise<void> {
  return openMeasured(page, name, (other) => measureSample(other, name));
}

/** Opens the sheet of a photo of fixtures/, chosen on the first page as it stands, where a test begins at a measured
 *  sheet. */
export function openMeasuredPhoto(page: Page, path: string): Promise<void> {
  return openMeasured(page, basename(path, '.jpg'), async (other) => {
    await chooseFile(other, new URL(path, fixturesFolder).pathname);
    await expect(other.locator('.decision')).toBeVisible({ timeout: 180_000 });
  });
}

/** It is measured by the page once for each build; after that the drawer's own import brings it in. */
async function openMeasured(
  page: Page,
  name: string,
  measure: (page: Page) => Promise<void>,
): Promise<void> {
  const archiveFile = archiveOf(name);
  if (!isNewer(archiveFile, builtPage))
    await keepArchive(page.context().browser()!, archiveFile, measure);
  await openApp(page);
  await chooseFile(page, {
    name: 'sample.crestwise-drawer',
    mimeType: 'application/octet-stream',
    buffer: readFileSync(archiveFile),
  });
  await page.locator('.sheet-card a').first().click();
  await expect(page.locator('.decision')).toBeVisible();
}

function isNewer(file: string, than: string): boolean {
  const made = statSync(file, { throwIfNoEntry: false });
  return made !== undefined && made.mtimeMs > statSync(than).mtimeMs;
}

async function keepArchive(
  browser: Browser,
  archiveFile: string,
  measure: (page: Page) => Promise<void>,
): Promise<void> {
  const context = await browser.newContext({ locale: 'en-GB' });
  const page = await context.newPage();
  await openApp(page);
  await measure(page);
  await expect(page.getByText('kept on this device')).toBeVisible();
  await page.goto('./#/drawer');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export all' }).click();
  const archive = readFileSync(await (await download).path());
  await context.close();
  // Whole or not at all: the other worker may read it at any moment.
  const mine = `${archiveFile}.${process.pid}`;
  mkdirSync(dirname(archiveFile), { recursive: true });
  writeFileSync(mine, archive);
  renameSync(mine, archiveFile);
}

/** Gives a file to the start screen as a person would choose it. */
export async function chooseFile(
  page: Page,
  file: string | { name: string; mimeType: string; buffer: Buffer },
): Promise<void> {
  await page.getByLabel('Choose a photo').setInputFiles(file);
}

/** Every photo and thumbnail that the browser keeps for this page, as base64. */
export async function keptPictures(page: Page): Promise<Buffer[]> {
  const base64 = await page.evaluate(async () => {
    const found: Blob[] = [];
    const gather = (value: unknown): void => {
      if (value instanceof Blob) found.push(value);
      else if (value instanceof Uint8Array) found.push(new Blob([value.slice()]));
      else if (value instanceof ArrayBuffer) found.push(new Blob([value]));
      else if (Array.isArray(value)) value.forEach(gather);
      else if (value && typeof value === 'object') Object.values(value).forEach(gather);
    };
    for (const { name } of await indexedDB.databases()) {
      const db = await new Promise<IDBDatabase>((done) => {
        const opening = indexedDB.open(name!);
        opening.onsuccess = () => done(opening.result);
      });
      for (const store of db.objectStoreNames) {
        const all = await new Promise<unknown[]>((done) => {
          const getting = db.transaction(store).objectStore(store).getAll();
          getting.onsuccess = () => done(getting.result);
        });
        gather(all);
      }
      db.close();
    }
    return Promise.all(
      found.map(async (blob) => {
        const bytes = new Uint8Array(await blob.arrayBuffer());
        let text = '';
        for (const byte of bytes) text += String.fromCharCode(byte);
        return btoa(text);
      }),
    );
  });
  return base64.map((text) => Buffer.from(text, 'base64'));
}

/** On a phone, parts of a page are folded: opens them all. */
export async function unfold(page: Page): Promise<void> {
  // Both looked at in one moment: a page that waits for a part of itself has no folds.
  const state = () =>
    page.evaluate(() => ({
      shown: document.querySelector('.sheet-more') !== null,
      closed: [...document.querySelectorAll('.fold:not([open]) > summary')].filter((summary) =>
        summary.checkVisibility(),
      ).length,
    }));
  const folded = page.locator('.fold:not([open]) > summary:visible');
  await expect(async () => {
    while ((await state()).closed > 0) await folded.first().click({ timeout: 5_000 });
    expect(await state()).toEqual({ shown: true, closed: 0 });
  }).toPass();
}

export const decidedThread = (page: Page) => page.getByTestId('decided-thread');
export const decidedConnection = (page: Page) => page.getByTestId('decided-connection');

const axeSource = readFileSync(
  createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
  'utf8',
);

interface Violation {
  readonly id: string;
  readonly impact: string | null;
  readonly help: string;
  readonly nodes: readonly { readonly html: string; readonly target: readonly string[] }[];
}

/** What axe finds wrong by WCAG 2.2 A and AA. The page's policy forbids injected scripts, so the
 *  source is evaluated by the browser itself. */
export function axeViolations(page: Page): Promise<string[]> {
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  return runAxe(page, { runOnly: tags });
}

/** The same in light and in dark. Only the rules that look at colours are asked in dark: the
 *  schemes differ in nothing else. */
export async function axeViolationsInBothSchemes(page: Page): Promise<string[]> {
  await page.emulateMedia({ colorScheme: 'light' });
  const inLight = await axeViolations(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  const rules = ['color-contrast', 'link-in-text-block'];
  const inDark = await runAxe(page, { runOnly: { type: 'rule', values: rules } });
  await page.emulateMedia({ colorScheme: 'light' });
  return [...inLight, ...inDark.map((found) => `dark: ${found}`)];
}

async function runAxe(page: Page, options: unknown): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeSource);
  // The whole page at once: what the bar at the bottom covers for now would count as too small.
  const size = page.viewportSize()!;
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width: size.width, height: Math.max(height, size.height) });
  const found = await page.evaluate(async (asked) => {
    const { axe } = window as unknown as {
      axe: { run: (options: unknown) => Promise<{ violations: Violation[] }> };
    };
    return (await axe.run(asked)).violations;
  }, options);
  await page.setViewportSize(size);
  return found.map(
    ({ id, impact, nodes }) =>
      `${impact} ${id}: ${nodes.map((node) => node.target.join(' ')).join(' | ')}`,
  );
}

/** Sum of layout shifts that no input caused (CLS's raw sum, an upper bound of the metric). */
export async function watchLayoutShift(page: Page): Promise<() => Promise<number>> {
  await page.addInitScript(() => {
    const state = window as unknown as { shift: number };
    state.shift = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as unknown as {
        value: number;
        hadRecentInput: boolean;
      }[])
        if (!entry.hadRecentInput) state.shift += entry.value;
    }).observe({ type: 'layout-shift', buffered: true });
  });
  return () => page.evaluate(() => (window as unknown as { shift: number }).shift);
}

/** A table without a card on it. */
export async function blankPhoto(page: Page): Promise<Buffer> {
  const bytes = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(1200, 900);
    const context = canvas.getContext('2d')!;
    context.fillStyle = '#8a7f70';
    context.fillRect(0, 0, 1200, 900);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
    return [...new Uint8Array(await blob.arrayBuffer())];
  });
  return Buffer.from(bytes);
}
