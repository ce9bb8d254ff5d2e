import { expect, type Page } from '@playwright/test';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { sheetToFile } from '../../src/journey/8-sheet/sheet-file';
import { exampleSheet } from '../journey/8-sheet/example';
import { chooseFile, openApp } from './support';
import { test } from './window';

/** Files from people who wish no good: nothing of them runs, nothing of them stops the page. */

const markup =
  '<img src=x onerror="window.hurt=1"><script>window.hurt=1</script><svg onload="window.hurt=1">';

let parts: Record<string, Uint8Array>;
test.beforeAll(async () => {
  const made = sheetToFile(await exampleSheet());
  if (!made.ok) throw new Error(made.reason);
  parts = unzipSync(made.value);
});

// biome-ignore lint/suspicious/noExplicitAny: the JSON is bent in ways no type allows
type Raw = any;

/** The example sheet with its JSON changed, as a file. */
function hostile(change: (raw: Raw) => unknown) {
  const raw = JSON.parse(strFromU8(parts['sheet.json']!));
  const json = JSON.stringify(change(raw) ?? raw);
  const buffer = Buffer.from(zipSync({ ...parts, 'sheet.json': strToU8(json) }));
  return { name: 'sheet.crestwise', mimeType: 'application/octet-stream', buffer };
}

/** Every string that is not one of the sheet's own keywords becomes markup. */
function markUp(value: Raw, key = ''): Raw {
  const keywords =
    /^(format|id|createdAt|updatedAt|at|kind|system|state|source|side|hand|field|reading|verdict|end|seat|taper|measuredBy|measuredAt|endTypes|asked|missing)$/;
  if (typeof value === 'string') return keywords.test(key) ? value : markup.slice(0, 120);
  if (Array.isArray(value)) return key === 'notes' ? value : value.map((item) => markUp(item, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, markUp(v, k)]));
}

async function expectUnhurt(page: Page): Promise<void> {
  const found = await page.evaluate(() => ({
    hurt: 'hurt' in window || 'polluted' in {},
    injected: document.querySelectorAll('img[src="x"], svg[onload], [onerror]').length,
  }));
  expect(found).toEqual({ hurt: false, injected: 0 });
}

test('markup in every string stays text on every screen and in the printed page', async ({
  page,
}) => {
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  await openApp(page);
  await chooseFile(
    page,
    hostile((raw) =>
      markUp({
        ...raw,
        remarks: 'x',
        counter: {
          verdict: 'open',
          remarks: 'x',
          parts: [{ number: 'x', note: 'x' }],
          at: raw.createdAt,
        },
      }),
    ),
  );
  await expect(page.locator('.decision')).toBeVisible();
  await expect(page.locator('main')).toContainText('<img src=x');
  await expectUnhurt(page);
  const { id } = JSON.parse(strFromU8(parts['sheet.json']!));
  await page.goto(`./#/result/${id}`);
  await expect(page.locator('main')).toContainText('<img src=x');
  await expectUnhurt(page);
  await page.goto('./#/drawer');
  await expect(page.locator('main')).toContainText('<img src=x');
  await expectUnhurt(page);
  await page.reload();
  await expect(page.locator('main')).toContainText('<img src=x');
  await expectUnhurt(page);
  expect(complaints).toEqual([]);
});

test('prototype keys change nothing', async ({ page }) => {
  await openApp(page);
  const file = hostile((raw) => ({ ...raw, title: 'Prototype' }));
  const json = strFromU8(unzipSync(file.buffer)['sheet.json']!).replace(
    '"format"',
    '"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},"format"',
  );
  const buffer = Buffer.from(zipSync({ ...parts, 'sheet.json': strToU8(json) }));
  await chooseFile(page, { ...file, buffer });
  await expect(page.locator('.decision')).toBeVisible();
  await expectUnhurt(page);
});

test('huge arrays, swollen archives and damaged photos are refused, and the page goes on', async ({
  page,
}) => {
  await openApp(page);
  const files = [
    hostile((raw) => {
      raw.shots[0].overlay.outline = [Array.from({ length: 300_000 }, () => [1, 2])];
    }),
    hostile((raw) => ({
      ...raw,
      readings: Array.from({ length: 200_000 }, () => raw.readings[0]),
    })),
    hostile((raw) => ({ ...raw, version: 99 })),
    {
      ...hostile(() => undefined),
      buffer: Buffer.from(zipSync({ 'sheet.json': new Uint8Array(60e6) }, { level: 9 })),
    },
    {
      ...hostile(() => undefined),
      buffer: Buffer.from(zipSync({ ...parts, 'photo-1.jpg': Uint8Array.of(0xff, 0xd8, 1, 2) })),
    },
  ];
  for (const file of files) {
    await chooseFile(page, file);
    await expect(
      page.locator('[role=status], [role=alert]').filter({ hasText: /\S/ }),
    ).not.toHaveCount(0);
    await expectUnhurt(page);
    await page.reload();
    await expect(page.locator('main h1').first()).toBeVisible();
  }
  await page.goto('./#/drawer');
  await expect(page.locator('main')).toContainText('Nothing here yet');
  await page.goto('./#/');
  await chooseFile(
    page,
    hostile(() => undefined),
  );
  await expect(page.locator('.decision')).toBeVisible();
});
