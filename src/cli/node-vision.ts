import { readFile } from 'node:fs/promises';
import { ensureOpenCv, wasmFile } from '../../wasm/split.mjs';
import type { Vision } from '../vision/vision';

/** The same OpenCV as in the browser, read from disk. */
export async function loadNodeVision(): Promise<Vision> {
  ensureOpenCv();
  // Imported only now: its glue may just have been written.
  const { loadVision } = await import('../vision/load-vision');
  const bytes = await readFile(wasmFile);
  return loadVision((imports) => WebAssembly.instantiate(bytes, imports));
}
