import load, { type OpenCv } from '../../wasm/build/opencv.js';
import { detectMarkers } from './detect-markers';
import { close } from './disc-morphology';
import { findComponents } from './regions';
import { blur, resize } from './resample';
import type { Vision } from './vision';

/** Compiles and instantiates opencv.wasm with the glue's imports. The environment decides how:
 *  from disk in Node, streaming in a worker. */
export type InstantiateOpenCv = (
  imports: WebAssembly.Imports,
) => Promise<WebAssembly.WebAssemblyInstantiatedSource>;

/** Rejects with the reason when the wasm cannot be had or compiled. */
export async function loadVision(instantiate: InstantiateOpenCv): Promise<Vision> {
  const cv = await loadOpenCv(instantiate);
  return {
    detectMarkers: (image, options = {}) => detectMarkers(cv, image, options),
    resize: (image, width, height) => resize(cv, image, width, height),
    blur: (image, sigmaPx) => blur(cv, image, sigmaPx),
    components: (mask, minAreaPx) => findComponents(cv, mask, minAreaPx),
    close,
    heapBytes: () => cv.HEAPU8.length,
  };
}

function loadOpenCv(instantiate: InstantiateOpenCv): Promise<OpenCv> {
  return new Promise((resolve, reject) => {
    load({
      instantiateWasm(imports, receive) {
        instantiate(imports).then(({ instance, module }) => receive(instance, module), reject);
        return {};
      },
      // OpenCV reports through exceptions; what it prints besides is of no use to anyone here.
      print() {},
      printErr() {},
    }).then(resolve, reject);
  });
}
