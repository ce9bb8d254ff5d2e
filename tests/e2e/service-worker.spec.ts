import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { serve } from '../../.ci/serve.mjs';

/** The service worker and the policy, on a small page with what the real one has: a lazy chunk, a
 *  wasm file, a public file. Built in several versions with the project's own configuration. */
const here = new URL('../../test-results/service-worker/', import.meta.url).pathname;
const keepOffline = new URL('../../src/offline/keep-offline.ts', import.meta.url).pathname;
const receiveFiles = new URL('../../src/offline/receive-files.ts', import.meta.url).pathname;
/** Nothing may depend on living at the root of a host. */
const subPath = 'some/where/';

const built = (version: string) => `${here}built-${version}/`;
const live = `${here}live/`;

function build(version: string): void {
  const root = `${here}source-${version}/`;
  mkdirSync(`${root}public`, { recursive: true });
  writeFileSync(
    `${root}index.html`,
    '<!doctype html><html><head><title>t</title></head><body><p id="version"></p><p id="lazy"></p><p id="wasm"></p><script type="module" src="./main.ts"></script></body></html>',
  );
  // The smallest module there is: magic number and version.
  writeFileSync(`${root}empty.wasm`, Uint8Array.of(0, 0x61, 0x73, 0x6d, 1, 0, 0, 0));
  // Named as a decoder that is fetched on first use; with an empty custom section, to be another file.
  writeFileSync(`${root}libheif.wasm`, Uint8Array.of(0, 0x61, 0x73, 0x6d, 1, 0, 0, 0, 0, 1, 0));
  writeFileSync(`${root}public/note.txt`, `note ${version}`);
  writeFileSync(`${root}lazy.ts`, `export const lazy = 'lazy ${version}';`);
  writeFileSync(
    `${root}main.ts`,
    `import { keepOffline } from ${JSON.stringify(keepOffline)};
     import { receiveFiles } from ${JSON.stringify(receiveFiles)};
     import wasm from './empty.wasm?url';
     import seldom from './libheif.wasm?url';
     const put = (id: string, text: string) => { document.getElementById(id)!.textContent = text; };
     put('version', '${version}');
     Object.assign(window, {
       loadLazy: async () => put('lazy', (await import('./lazy')).lazy),
       loadWasm: async () => {
         await WebAssembly.compileStreaming(fetch(wasm));
         put('wasm', 'compiled');
       },
       loadSeldom: async () => {
         await WebAssembly.compileStreaming(fetch(seldom));
         put('wasm', 'seldom compiled');
       },
     });
     const received: string[] = [];
     void receiveFiles(async (file) => { received.push(await file.text()); });
     Object.assign(window, { received });
     keepOffline((takeOver) => Object.assign(window, { takeOver }));`,
  );
  execFileSync('npx', [
    'vite',
    'build',
    root,
    '-c',
    'vite.config.ts',
    '--outDir',
    built(version),
    '--emptyOutDir',
    '--logLevel',
    'warn',
  ]);
}

function deploy(version: string, spoil?: (folder: string) => void): void {
  rmSync(live, { recursive: true, force: true });
  cpSync(built(version), `${live}${subPath}`, { recursive: true });
  spoil?.(`${live}${subPath}`);
}

test.use({ serviceWorkers: 'allow' });
// What is built in one folder serves the whole file.
test.describe.configure({ mode: 'default' });
test.beforeAll(() => {
  rmSync(here, { recursive: true, force: true });
  for (const version of ['one', 'two']) build(version);
});

let site: Awaited<ReturnType<typeof serve>>;
let address: string;
test.beforeEach(async () => {
  deploy('one');
  site = await serve(0, live);
  address = `${site.address}${subPath}`;
});
test.afterEach(() => stop());

function stop(): Promise<void> {
  return new Promise((resolve) => {
    site.server.close(() => resolve());
    site.server.closeAllConnections();
  });
}

async function firstVisit(page: Page): Promise<void> {
  await page.goto(address);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null, null, {
    timeout: 15_000,
  });
}

const hasUpdate = (page: Page) => page.waitForFunction(() => 'takeOver' in window);
const callOnPage = (page: Page, name: string) =>
  page.evaluate((key) => (window as unknown as Record<string, () => unknown>)[key]!(), name);
const checkForUpdate = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update().catch(() => undefined);
  });

test('after one visit everything works with the server gone', async ({ page }) => {
  await firstVisit(page);
  await stop();
  await page.reload();
  await expect(page.locator('#version')).toHaveText('one');
  await callOnPage(page, 'loadLazy');
  await expect(page.locator('#lazy')).toHaveText('lazy one');
  await callOnPage(page, 'loadWasm');
  await expect(page.locator('#wasm')).toHaveText('compiled');
  expect(await page.evaluate(() => fetch('note.txt').then((r) => r.text()))).toBe('note one');
  expect(await page.evaluate(() => fetch('licences.txt').then((r) => r.text()))).toContain('zod');
  // A fresh tab, with the address as people type it.
  const tab = await page.context().newPage();
  await tab.goto(`${address}?utm=x#/card`);
  await expect(tab.locator('#version')).toHaveText('one');
});

test('a decoder fetched on first use is kept from then on, and over a new version', async ({
  page,
}) => {
  await firstVisit(page);
  const kept = () =>
    page.evaluate(async () => {
      const caches = await Promise.all(
        (await window.caches.keys()).map(async (name) => (await window.caches.open(name)).keys()),
      );
      return caches.flat().some(({ url }) => url.includes('libheif'));
    });
  expect(await kept()).toBe(false);
  await page.reload();
  await callOnPage(page, 'loadSeldom');
  await expect(page.locator('#wasm')).toHaveText('seldom compiled');
  expect(await kept()).toBe(true);
  deploy('two');
  await checkForUpdate(page);
  await expect
    .poll(() => page.evaluate(() => (window as { takeOver?: unknown }).takeOver !== undefined))
    .toBe(true);
  await callOnPage(page, 'takeOver');
  await expect(page.locator('#version')).toHaveText('two');
  await stop();
  await page.reload();
  await callOnPage(page, 'loadSeldom');
  await expect(page.locator('#wasm')).toHaveText('seldom compiled');
});

test('a file shared into the installed app reaches the page, once', async ({ page }) => {
  await firstVisit(page);
  await page.evaluate(async () => {
    const form = new FormData();
    form.append('file', new File(['a sheet'], 'x.crestwise'));
    await fetch('share-target', { method: 'POST', body: form });
  });
  const received = () =>
    page.evaluate(() => (window as unknown as { received: string[] }).received);
  await page.reload();
  await expect.poll(received).toEqual(['a sheet']);
  await page.reload();
  await page.waitForTimeout(300);
  expect(await received()).toEqual([]);
});

test('a new version waits until it is wanted, then takes all tabs at once', async ({
  page,
  context,
}) => {
  await firstVisit(page);
  const other = await context.newPage();
  await other.goto(address);
  deploy('two');
  await checkForUpdate(page);
  await hasUpdate(page);
  // Until then even what is loaded late is of the old version.
  await callOnPage(other, 'loadLazy');
  await expect(other.locator('#lazy')).toHaveText('lazy one');
  await other.reload();
  await expect(other.locator('#version')).toHaveText('one');

  await callOnPage(page, 'takeOver');
  for (const tab of [page, other]) {
    await expect(tab.locator('#version')).toHaveText('two');
    await callOnPage(tab, 'loadLazy');
    await expect(tab.locator('#lazy')).toHaveText('lazy two');
  }
  expect(await cacheCount(page)).toBe(1);
  await stop();
  await page.reload();
  await expect(page.locator('#version')).toHaveText('two');
});

test('a half-finished deployment is not taken', async ({ page }) => {
  await firstVisit(page);
  deploy('two', (folder) => {
    const asset = readdirSync(`${folder}assets`).find((name) => /^lazy.*\.js$/.test(name))!;
    writeFileSync(`${folder}assets/${asset}`, 'truncated');
  });
  await checkForUpdate(page);
  await page.waitForTimeout(1500);
  expect(await page.evaluate(() => 'takeOver' in window)).toBe(false);
  await stop();
  await page.reload();
  await callOnPage(page, 'loadLazy');
  await expect(page.locator('#lazy')).toHaveText('lazy one');
  expect(await cacheCount(page)).toBe(1);
});

test('the policy stops inline code, eval and other hosts', async ({ page }) => {
  const html = readFileSync(`${built('one')}index.html`, 'utf8');
  const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1];
  expect(policy).not.toMatch(/unsafe-inline|[^-]unsafe-eval|https?:|\*/);
  expect(html.indexOf('Content-Security-Policy')).toBeLessThan(html.indexOf('<script'));
  await page.goto(address);
  const outcome = await page.evaluate(async () => {
    const violations: string[] = [];
    document.addEventListener('securitypolicyviolation', (event) => {
      violations.push(event.effectiveDirective);
    });
    const tryOut = (work: () => unknown) => {
      try {
        work();
        return 'allowed';
      } catch {
        return 'stopped';
      }
    };
    const inline = document.createElement('script');
    inline.textContent = 'window.inlineRan = true';
    document.head.append(inline);
    const image = document.createElement('div');
    image.innerHTML = '<img src="x" onerror="window.handlerRan = true">';
    document.body.append(image);
    await fetch('http://localhost:1/').catch(() => undefined);
    await new Promise((resolve) => setTimeout(resolve, 300));
    // Only here: the debugger's own call, up to its first wait, is exempt from the policy.
    const evaluated = tryOut(() => new Function('return 1')());
    await new Promise((resolve) => setTimeout(resolve, 100));
    return {
      evaluated,
      inline: 'inlineRan' in window,
      handler: 'handlerRan' in window,
      violations,
    };
  });
  expect(outcome).toMatchObject({ evaluated: 'stopped', inline: false, handler: false });
  expect(outcome.violations).toEqual(
    expect.arrayContaining(['script-src', 'script-src-elem', 'script-src-attr', 'connect-src']),
  );
});

function cacheCount(page: Page): Promise<number> {
  return page.evaluate(async () => (await caches.keys()).length);
}
