import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import { serve } from '../../.ci/serve.mjs';

/** dist/ as a static site. */
const root = fileURLToPath(new URL('../../', import.meta.url));

test.use({ serviceWorkers: 'allow' });

test('works from a sub-path', async ({ page }) => {
  const { server, address } = await serve(0, root);
  try {
    const missing: string[] = [];
    page.on('response', (response) => {
      if (response.status() >= 400) missing.push(response.url());
    });
    const wasm = page.waitForResponse(/opencv[^/]*\.wasm$/);
    await page.goto(`${address}dist/`);
    await expect(page.getByRole('heading').first()).toBeVisible();
    expect((await wasm).headers()['content-type']).toBe('application/wasm');
    expect(missing).toEqual([]);
  } finally {
    server.close();
  }
});

test('first visit: 150 kB of script before OpenCV, 4 MB in all, both compressed', async ({
  page,
}) => {
  const scripts = new Map<string, Promise<number>>();
  const others = new Map<string, Promise<number>>();
  page.on('response', (response) => {
    const isPageScript = /\.js$/.test(response.url()) && !/\/serve-/.test(response.url());
    const size = response.body().then(
      (body) => gzipSync(body).length,
      () => 0,
    );
    (isPageScript ? scripts : others).set(response.url(), size);
  });
  const wasm = page.waitForResponse(/opencv[^/]*\.wasm$/);
  await page.goto('/');
  await (await wasm).finished();
  const total = async (sizes: Map<string, Promise<number>>) =>
    (await Promise.all(sizes.values())).reduce((sum, size) => sum + size, 0);
  expect(scripts.size).toBeGreaterThan(0);
  expect(await total(scripts)).toBeLessThan(150_000);
  expect((await total(scripts)) + (await total(others))).toBeLessThan(4_000_000);
});
