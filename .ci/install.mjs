/** Makes a fresh clone able to run. Plain node: nothing may be installed yet. */
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../', import.meta.url));

/** Runs a command in the project, its output shown; returns its exit code. */
export function run(command, args, env = {}) {
  const done = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
  });
  if (done.error) throw done.error;
  return done.status ?? 1;
}

/** Installs the packages of package-lock.json unless they are there and as new as it. */
export async function installPackages() {
  const installed = `${root}node_modules/.package-lock.json`;
  const wanted = `${root}package-lock.json`;
  const fresh = existsSync(installed) && statSync(installed).mtimeMs >= statSync(wanted).mtimeMs;
  if (!fresh && run('npm', ['ci', '--no-audit', '--no-fund']) !== 0) {
    throw new Error('the packages could not be installed');
  }
  const { ensureOpenCv } = await import('../wasm/split.mjs');
  ensureOpenCv();
}

/** A Chromium to test with: named by CHROMIUM_PATH, the system's, Playwright's own; on Debian as
 *  root it is installed when there is none. */
export function findChromium() {
  const found = process.env.CHROMIUM_PATH ?? systemChromium() ?? playwrightChromium();
  if (found) return found;
  if (existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    run('apt-get', ['update', '-q']);
    run('apt-get', ['install', '-y', '-q', 'chromium']);
    const installed = systemChromium();
    if (installed) return installed;
  }
  throw new Error('no Chromium found: name one in CHROMIUM_PATH');
}

function systemChromium() {
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
  const folders = (process.env.PATH ?? '').split(':');
  const applications = [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ];
  return [
    ...names.flatMap((name) => folders.map((folder) => `${folder}/${name}`)),
    ...applications,
  ].find((path) => existsSync(path));
}

function playwrightChromium() {
  const { chromium } = createRequire(import.meta.url)('@playwright/test');
  const path = chromium.executablePath();
  return path && existsSync(path) ? path : undefined;
}
