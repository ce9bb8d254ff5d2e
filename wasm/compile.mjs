/** Compiles convolve.c, and keeps the bytes as a TypeScript module, so that nobody else needs a compiler:
 *  `node wasm/compile.mjs` (apt-get install clang lld). Plain node, no dependencies. */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const sourceFile = fileURLToPath(new URL('convolve.c', import.meta.url));
const moduleFile = fileURLToPath(new URL('../src/quantity/convolve-wasm.ts', import.meta.url));

// Plain SIMD, not the relaxed one, and no products fused with sums: the same bits in every engine.
const flags =
  '--target=wasm32 -msimd128 -O3 -ffp-contract=off -nostdlib -Wl,--no-entry,--strip-all,--export=__heap_base';

/** The compiler's version, or null where there is none. */
export function compilerVersion() {
  try {
    return /clang version (\S+)/.exec(
      execFileSync('clang', ['--version'], { encoding: 'utf8' }),
    )[1];
  } catch {
    return null;
  }
}

export const sourceSha256 = () =>
  createHash('sha256').update(readFileSync(sourceFile)).digest('hex');

/** The compiled bytes. */
export function compiled() {
  const folder = mkdtempSync(join(tmpdir(), 'convolve-'));
  try {
    const out = join(folder, 'convolve.wasm');
    execFileSync('clang', [...flags.split(' '), '-o', out, sourceFile]);
    return readFileSync(out);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function writeModule() {
  const lines = [
    '/** Written by wasm/compile.mjs; not by hand. */',
    `export const compiler = 'clang ${compilerVersion()}';`,
    '/** Of wasm/convolve.c, SHA-256. */',
    `export const source =\n  '${sourceSha256()}';`,
    '/** The compiled module in base64. */',
    `export const convolveWasm =\n  '${compiled().toString('base64')}';`,
  ];
  writeFileSync(moduleFile, `${lines.join('\n')}\n`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeModule();
