import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import type { Build } from './build-list';

const scriptName = 'service-worker.js';

/** Builds the service worker and writes into it the list of all files of this build. */
export function precachePlugin(): Plugin {
  let outDir = 'dist';
  return {
    name: 'crestwise-precache',
    apply: 'build',
    configResolved: (config) => {
      outDir = resolve(config.root, config.build.outDir);
    },
    buildStart() {
      this.emitFile({
        type: 'chunk',
        id: fileURLToPath(new URL('./service-worker.ts', import.meta.url)),
        fileName: scriptName,
      });
    },
    writeBundle: {
      order: 'post',
      sequential: true,
      handler() {
        const script = join(outDir, scriptName);
        const build = describeBuild(outDir);
        const code = readFileSync(script, 'utf8');
        writeFileSync(script, `const crestwiseBuild=${JSON.stringify(build)};\n${code}`);
      },
    },
  };
}

export function describeBuild(outDir: string): Build {
  const files = readdirSync(outDir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(outDir, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter((path) => path !== scriptName && !path.endsWith('.map'))
    .sort()
    .map((path) => ({
      path: path === 'index.html' ? '' : path,
      sha256: createHash('sha256')
        .update(readFileSync(join(outDir, path)))
        .digest('hex'),
    }));
  const version = createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16);
  return { version, files };
}
