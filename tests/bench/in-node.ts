import { readFile } from 'node:fs/promises';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { defaultOptions } from '../../src/journey/identification';
import { identifyPhoto } from '../../src/journey/identify';
import type { Timed } from './photos';

/** A process of its own for each photo, so that peak memory is that photo's: `in-node PATH ROUNDS`
 *  prints one line of JSON. */
const [path, rounds] = process.argv.slice(2);
const start = performance.now();
const tools = { vision: await loadNodeVision(), decoders: nodeDecoders };
const loadMs = performance.now() - start;
const results: Timed[] = [];
for (let i = 0; i <= Number(rounds); i++) {
  const began = performance.now();
  const bytes = new Uint8Array(await readFile(path));
  const signal = new AbortController().signal;
  const { timingsMs } = await identifyPhoto(signal, bytes, defaultOptions, tools, () => {});
  results.push({ totalMs: performance.now() - began, stagesMs: timingsMs });
}
const [first, ...warm] = results;
const peakMb = process.resourceUsage().maxRSS / 1024;
console.log(JSON.stringify({ loadMs, firstMs: first.totalMs, warm, peakMb }));
