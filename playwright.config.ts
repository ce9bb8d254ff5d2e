import { defineConfig } from '@playwright/test';

const port = Number(process.env.CRESTWISE_PORT ?? 4174);

/** Browser tests run against dist/, as users get it. */
export default defineConfig({
  testDir: 'tests/e2e',
  testMatch: '**/*.spec.ts',
  outputDir: 'test-results/browser',
  // OpenCV and the page share two cores on the machines this runs on.
  workers: 1,
  timeout: 90_000,
  expect: { timeout: 15_000 },
  use: {
    baseURL: `http://localhost:${port}/`,
    launchOptions: {
      executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
      args: ['--no-sandbox'],
    },
    trace: 'retain-on-failure',
  },
  webServer: {
    command: `node .ci/serve.mjs ${port}`,
    port,
    reuseExistingServer: true,
  },
});
