import { expect, test } from '@playwright/test';
import { measureSample, onSize, openApp } from './support';

onSize('phone', () => {
  test.use({ serviceWorkers: 'allow' });

  test('after one visit everything works without a network, and nothing is ever sent', async ({
    page,
    context,
  }) => {
    const asked: string[] = [];
    context.on('request', (request) => {
      if (!/^(blob|data):/.test(request.url())) asked.push(`${request.method()} ${request.url()}`);
    });
    await openApp(page);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await expect
      .poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null), {
        timeout: 180_000,
      })
      .toBe(true);
    const origin = new URL(page.url()).origin;
    expect(asked.filter((line) => !line.startsWith(`GET ${origin}/`))).toEqual([]);

    await context.setOffline(true);
    await page.reload();
    await expect(page.locator('main h1')).toBeVisible();
    await measureSample(page);
    for (const hash of ['#/card', '#/standards', '#/drawer', '#/readings']) {
      await page.goto(`./${hash}`);
      await expect(page.locator('main h1')).toBeVisible();
    }
    await page.getByLabel('Language').selectOption('es');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Solo con medidas');
    await context.setOffline(false);
    expect(asked.filter((line) => !line.startsWith(`GET ${origin}/`))).toEqual([]);
  });
});
