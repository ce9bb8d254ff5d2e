import { defineConfig } from '@playwright/test';

const port = Number(process.env.CRESTWISE_PORT ?? 4174);

/** Browser tests run against dist/, as users get it. */
export default defineConfig({
  testDir: 'tests/e2e',
  testMatch: '**/*.spec.ts',
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
    trace: 'retain-on-failure',
  },
  webServer: {
    command: `node .ci/serve.mjs ${port}`,
    port,
    reuseExistingServer: true,
  },
});
