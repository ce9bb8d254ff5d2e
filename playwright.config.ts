import { defineConfig } from '@playwright/test';

const port = Number(process.env.CRESTWISE_PORT ?? 4174);

/** Each runs in one worker from end to end, on a page of its own that it builds. */
const longest = '**/{worker,service-worker,paper}.spec.ts';

/** Browser tests run against dist/, as users get it. */
export default defineConfig({
  testDir: 'tests/e2e',
  outputDir: 'test-results/browser',
  // One for each of two cores: measuring is the work of one thread.
  workers: 2,
  // Test by test, so that neither waits for the other's long file.
  fullyParallel: true,
  timeout: 240_000,
  expect: { timeout: 15_000 },
  use: {
    baseURL: `http://localhost:${port}/`,
    launchOptions: {
      executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
      args: ['--no-sandbox'],
    },
    // A trace is written of every test, not only of those that fail: a quarter of the work. For one
    // that fails, `npx playwright test FILE --trace on`.
    trace: 'off',
    // It would fetch all of dist/ again in each test. Tests of it allow it.
    serviceWorkers: 'block',
    // What moves is drawn anew for every frame while a photo is measured.
    contextOptions: { reducedMotion: 'reduce' },
  },
  // The longest first, or one of the two waits for them in the end.
  projects: [
    { name: 'long', testMatch: longest },
    { name: 'page', testMatch: '**/*.spec.ts', testIgnore: longest },
  ],
  webServer: {
    command: `node .ci/serve.mjs ${port}`,
    port,
    reuseExistingServer: true,
  },
});
