import solid from 'vite-plugin-solid';
import { defineConfig } from 'vitest/config';
import { licencesPlugin } from './src/offline/licences-plugin.ts';
import { precachePlugin } from './src/offline/precache-plugin.ts';
import { securityPolicyPlugin } from './src/offline/security-policy-plugin.ts';
import { LongestFirst } from './tests/longest-first.ts';
import { ensureOpenCv } from './wasm/split.mjs';

ensureOpenCv();

/** What measures photos, or walks through all the tables. */
const slowTests = [
  'tests/{accuracy,cli,vision}/**',
  'tests/journey/*.test.ts',
  'tests/journey/{1-photo,2-reference,4-limbs}/**',
  'tests/journey/7-next-reading/{bench,conclude-anything}.test.ts',
  'tests/handover/{painted-photo,picture}.test.ts',
  'tests/scale-card/card-pdf.test.ts',
  'tests/standards/walk-rows.test.ts',
];
const allTests = ['tests/**/*.test.ts'];

export default defineConfig({
  // Relative, so that dist/ works from any sub-path.
  base: './',
  plugins: [solid(), securityPolicyPlugin(), licencesPlugin(), precachePlugin()],
  worker: { format: 'es', plugins: () => [] },
  build: {
    target: 'es2022',
    // As files, never as base64 text: wasm is compiled while it arrives.
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 600,
  },
  test: {
    environment: 'node',
    testTimeout: 60_000,
    // Two workers load OpenCV side by side without crowding a small machine.
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
    projects: [
      // Each file in a process of its own: OpenCV's heap, and code compiled for what others did before.
      {
        extends: true,
        test: {
          name: 'slow',
          include: slowTests.map((path) => path.replace(/\*\*$/, '**/*.test.ts')),
        },
      },
      // They leave nothing behind, and half of their time was starting processes.
      {
        extends: true,
        test: {
          name: 'fast',
          include: allTests,
          exclude: ['tests/e2e/**', ...slowTests],
          isolate: false,
        },
      },
    ],
  },
});
