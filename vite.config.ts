import solid from 'vite-plugin-solid';
import { defineConfig } from 'vitest/config';
import { licencesPlugin } from './src/offline/licences-plugin.ts';
import { precachePlugin } from './src/offline/precache-plugin.ts';
import { securityPolicyPlugin } from './src/offline/security-policy-plugin.ts';
import { LongestFirst } from './tests/longest-first.ts';
import { ensureOpenCv } from './wasm/split.mjs';

ensureOpenCv();

/** What computes for long, or watches memory or time: each file in a process of its own, since code compiled for what
 *  others did is slower for what it does. */
const alone = [
  'tests/accuracy/**/*.test.ts',
  'tests/vision/*.test.ts',
  'tests/cli/fit-*.test.ts',
  'tests/journey/ruler-*.test.ts',
  'tests/journey/{1-photo,2-reference}/*.test.ts',
  'tests/journey/7-next-reading/{bench,conclude-anything}.test.ts',
  'tests/scale-card/card-pdf.test.ts',
  'tests/standards/walk-rows.test.ts',
];

/** What measures photos by the whole journey, in processes that go on from file to file: the journey is compiled once
 *  in each, and a photo that several files ask about is measured once (tests/measured.ts). */
const photos = [
  'tests/cli/{measure*,identify}.test.ts',
  'tests/journey/*.test.ts',
  'tests/journey/4-limbs/*.test.ts',
  'tests/handover/{painted-photo,picture}.test.ts',
];

/** `npm run test:fast`: the rest, which keeps nothing between files either. */
const fast = ['tests/**/*.test.ts'];

const projects = [
  { name: 'alone', include: alone, isolate: true },
  { name: 'photos', include: photos, exclude: alone, isolate: false },
  { name: 'fast', include: fast, exclude: [...alone, ...photos], isolate: false },
];

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
    projects: projects.map((test) => ({ extends: true as const, test })),
  },
});
