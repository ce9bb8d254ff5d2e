import wasmUrl from '../../wasm/build/opencv.wasm?url';
import { loadVision } from '../vision/load-vision';
import type { Vision } from '../vision/vision';

/** OpenCV compiled while it arrives. */
export function loadWorkerVision(): Promise<Vision> {
  return loadVision(async (imports) => {
    const response = fetch(wasmUrl, { credentials: 'same-origin' });
    try {
      return await WebAssembly.instantiateStreaming(response, imports);
    } catch (error) {
      // A server that does not label the file application/wasm forbids streaming, nothing else.
      const again = await fetch(wasmUrl, { credentials: 'same-origin' });
      if (!again.ok) throw error;
      return WebAssembly.instantiate(await again.arrayBuffer(), imports);
    }
  });
}
