import { execFileSync, spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { benchChromium } from './in-chromium';
import { benchPhotos, median, medianStages, rounds, type Timed } from './photos';
import { warmUps, wasmSteps } from './wasm-steps';

/** `npm run bench`: what a photo costs here, in Node, in Chromium, and with native OpenCV.
 *  All in one run, one after the other, so that the figures compare. */
const paths = benchPhotos.map(({ path }) => path);

console.log('Photos: path-traced renders (fixtures/photos), not photographs.');
console.log(`Median of ${rounds} rounds after one to warm up, milliseconds.\n`);

const inNode = benchPhotos.map(({ path }) => runInNode(path));
const inChromium = await benchChromium(paths, rounds);

printLoad();
benchPhotos.forEach(({ label, name }, i) => {
  printStages(`${label} (${name}), Node`, inNode[i].warm, inNode[i].firstMs, inNode[i].peakMb);
  const { warm, firstMs } = inChromium.photos[i];
  printStages(`${label} (${name}), Chromium`, warm, firstMs, inChromium.peakMb);
});
await printAgainstNative();

function runInNode(path: string): {
  loadMs: number;
  firstMs: number;
  warm: Timed[];
  peakMb: number;
} {
  const script = fileURLToPath(new URL('in-node.ts', import.meta.url));
  const output = execFileSync('npx', ['tsx', script, path, String(rounds)], { encoding: 'utf8' });
  return JSON.parse(output);
}

function printLoad(): void {
  const { coldMs, cachedMs, guidanceMs } = inChromium;
  console.log('Load, until OpenCV is ready');
  console.log(
    `  Node, from disk                 ${ms(median(inNode.map(({ loadMs }) => loadMs)))}`,
  );
  console.log(`  Chromium, nothing cached        ${ms(coldMs)}`);
  console.log(`  Chromium, compiled code cached  ${ms(cachedMs)}\n`);
  const frameMs = median(guidanceMs);
  console.log(
    `Live guidance, 1280 × 960: ${ms(frameMs)}, ${(1000 / frameMs).toFixed(0)} frames per second\n`,
  );
}

function printStages(title: string, warm: readonly Timed[], firstMs: number, peakMb: number): void {
  const stages = medianStages(warm);
  const total = median(warm.map(({ totalMs }) => totalMs));
  console.log(`${title}: ${ms(total)} warm, ${ms(firstMs)} first, peak ${peakMb.toFixed(0)} MB`);
  for (const [name, time] of Object.entries(stages))
    console.log(`  ${name.padEnd(16)} ${ms(time)}`);
  console.log();
}

async function printAgainstNative(): Promise<void> {
  const native = nativeSteps();
  console.log(
    `OpenCV steps alone: wasm in Node, ${warmUps} rounds to warm up / native python3-opencv, one thread`,
  );
  if (native === null) {
    console.log(
      '  python3-opencv is not installed (apt-get install python3-opencv): no comparison',
    );
    return;
  }
  for (const [i, { label, path }] of benchPhotos.entries()) {
    const wasm = await wasmSteps(path, rounds);
    const sum = (times: Record<string, number>) =>
      Object.values(times).reduce((total, time) => total + time, 0);
    const ratio = (sum(wasm) / sum(native[i])).toFixed(2);
    console.log(`  ${label}: ${ms(sum(wasm))} / ${ms(sum(native[i]))} = ${ratio}`);
    for (const [name, time] of Object.entries(wasm)) {
      console.log(`    ${name.padEnd(14)} ${ms(time)} / ${ms(native[i][name])}`);
    }
  }
}

/** Null where python3-opencv is missing. */
function nativeSteps(): Record<string, number>[] | null {
  const script = fileURLToPath(new URL('native_steps.py', import.meta.url));
  for (const python of ['/usr/bin/python3', 'python3']) {
    const { status, stdout } = spawnSync(python, [script, String(rounds), ...paths], {
      encoding: 'utf8',
    });
    if (status === 0)
      return stdout
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line));
  }
  return null;
}

function ms(time: number): string {
  return `${time.toFixed(time < 10 ? 1 : 0)} ms`.padStart(8);
}
