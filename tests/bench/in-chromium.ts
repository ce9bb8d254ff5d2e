import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from '@playwright/test';
import { findChromium } from '../../.ci/install.mjs';
import { serve } from '../../.ci/serve.mjs';
import type { Timed } from './photos';

const built = fileURLToPath(new URL('../../test-results/harness/', import.meta.url));

export interface ChromiumFigures {
  /** From navigation to OpenCV ready: nothing cached, and everything cached. */
  readonly coldMs: number;
  readonly cachedMs: number;
  readonly photos: readonly { readonly warm: readonly Timed[]; readonly firstMs: number }[];
  readonly peakMb: number;
  /** One live frame, 1280 px wide, from picture to judgement. */
  readonly guidanceMs: readonly number[];
}

export async function benchChromium(
  paths: readonly string[],
  rounds: number,
): Promise<ChromiumFigures> {
  execFileSync('npx', [
    'vite',
    'build',
    'tests/harness',
    '-c',
    'vite.config.ts',
    '--outDir',
    built,
    '--emptyOutDir',
    '--logLevel',
    'warn',
  ]);
  const { server, address } = await serve(0, built);
  const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  try {
    const page = await browser.newPage();
    const load = async () => {
      const start = performance.now();
      await page.goto(address);
      await page.evaluate(() => window.harness.ready());
      return performance.now() - start;
    };
    const coldMs = await load();
    // Chromium keeps compiled wasm from the second visit on.
    await load();
    const cachedMs = await load();
    const photos = [];
    for (const path of paths) {
      const photo = readFileSync(path).toString('base64');
      const [first, ...warm] = await page.evaluate(
        ([bytes, count]) => window.harness.time(bytes, count),
        [photo, rounds + 1] as const,
      );
      photos.push({ firstMs: first.totalMs, warm });
    }
    const live = readFileSync(paths[0]).toString('base64');
    const guidanceMs = await page.evaluate((bytes) => window.harness.timeGuidance(bytes, 20), live);
    return { guidanceMs, coldMs, cachedMs, photos, peakMb: await rendererPeakMb(browser) };
  } finally {
    await browser.close();
    server.close();
  }
}

/** High-water mark of the largest renderer process; Linux only, NaN elsewhere. */
async function rendererPeakMb(browser: Browser): Promise<number> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  const peaks = processInfo
    .filter(({ type }) => type === 'renderer')
    .map(({ id }) => {
      try {
        const status = readFileSync(`/proc/${id}/status`, 'utf8');
        return Number(/VmHWM:\s+(\d+)/.exec(status)?.[1]) / 1024;
      } catch {
        return Number.NaN;
      }
    });
  return Math.max(...peaks);
}
