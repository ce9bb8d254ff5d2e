import wasmUrl from '../../wasm/build/opencv.wasm?url';
import { loadVision } from '../vision/load-vision';
import type { Vision } from '../vision/vision';
import { streamWasm } from './stream-wasm';

/** OpenCV compiled while it arrives. */
export function loadWorkerVision(): Promise<Vision> {
  return loadVision(async (imports) => {
    const module = await streamWasm(wasmUrl);
    return { module, instance: await WebAssembly.instantiate(module, imports) };
  });
}
