/** `npm test`: everything that must hold, from a fresh clone. Arguments go to vitest
 *  (`npm test -- tests/vision`), and then the browser tests are left out. */
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { findChromium, installPackages, root, run } from './install.mjs';

await installPackages();
const only = process.argv.slice(2);
const results = `${root}test-results/`;
rmSync(results, { recursive: true, force: true });
mkdirSync(results, { recursive: true });

const unit = `${results}unit.json`;
const browser = `${results}browser.json`;
let failed = false;

const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${unit}`];
failed = run('npx', ['vitest', 'run', ...reporters, ...only]) !== 0 || failed;

if (only.length === 0) {
  const env = { CHROMIUM_PATH: findChromium(), PLAYWRIGHT_JSON_OUTPUT_NAME: browser };
  failed = run('npx', ['vite', 'build', '--logLevel', 'warn']) !== 0 || failed;
  failed = run('npx', ['playwright', 'test', '--reporter=list,json'], env) !== 0 || failed;
}

const counts = [countUnit(), ...(only.length === 0 ? [countBrowser()] : [])];
const sum = (key) => counts.reduce((total, count) => total + count[key], 0);
// A run that broke before it could count is a failure too.
const lost = failed && sum('failed') === 0 ? 1 : 0;
console.log(`\n${sum('passed')} passed, ${sum('failed') + lost} failed, ${sum('skipped')} skipped`);
process.exit(failed ? 1 : 0);

function countUnit() {
  const { numPassedTests, numFailedTests, numPendingTests } = read(unit);
  return {
    passed: numPassedTests ?? 0,
    failed: numFailedTests ?? 0,
    skipped: numPendingTests ?? 0,
  };
}

function countBrowser() {
  const { expected = 0, flaky = 0, unexpected = 0, skipped = 0 } = read(browser).stats ?? {};
  return { passed: expected + flaky, failed: unexpected, skipped };
}

function read(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    failed = true;
    return {};
  }
}
