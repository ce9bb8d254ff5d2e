import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin, type Rolldown } from 'vite';
import type { Build } from './build-list';

const scriptName = 'service-worker.js';
const source = fileURLToPath(new URL('./service-worker.ts', import.meta.url));

/** Builds the service worker and writes into it the list of all files of this build. */
export function precachePlugin(): Plugin {
  let outDir = 'dist';
  return {
    name: 'crestwise-precache',
    apply: 'build',
    configResolved: (config) => {
      outDir = resolve(config.root, config.build.outDir);
    },
    writeBundle: {
      order: 'post',
      sequential: true,
      async handler() {
        const list = JSON.stringify(describeBuild(outDir));
        const code = await serviceWorkerCode();
        writeFileSync(join(outDir, scriptName), `const crestwiseBuild=${list};\n${code}`);
      },
    },
  };
}

/** Bundled by itself: a chunk shared with the page would make it a module, which not every browser
 *  takes as a service worker. */
async function serviceWorkerCode(): Promise<string> {
  const built = (await build({
    configFile: false,
    publicDir: false,
    logLevel: 'warn',
    build: {
      write: false,
      rolldownOptions: { input: source, output: { format: 'iife' } },
    },
  })) as Rolldown.RolldownOutput;
  const [chunk] = built.output;
  return chunk.code;
}

/** The decoders of HEIC and AVIF: 2.7 MB beside the 12 MB that everyone gets, for photos that most
 *  people never meet (telephones turn their own into JPEG for a page that asks for one). */
const seldomNeeded = /^assets\/(libheif|avif_dec)[^/]*\.(js|wasm)$/;

function describeBuild(outDir: string): Build {
  const all = readdirSync(outDir, { recursive: true, withFileTypes: true })
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
  const [onDemand, files] = [true, false].map((wanted) =>
    all.filter(({ path }) => seldomNeeded.test(path) === wanted),
  );
  const version = createHash('sha256').update(JSON.stringify(all)).digest('hex').slice(0, 16);
  return { version, files, onDemand };
}
