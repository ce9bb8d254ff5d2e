import load, { type OpenCv } from '../../wasm/build/opencv.js';
import { detectMarkers } from './detect-markers';
import { morph } from './disc-morphology';
import { findComponents, findContours, otsuLevel } from './regions';
import { blur, resize, warpPerspective } from './resample';
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
    warpPerspective: (image, matrix, width, height, outside) =>
      warpPerspective(cv, image, matrix, width, height, outside),
    components: (mask, minAreaPx) => findComponents(cv, mask, minAreaPx),
    open: (mask, radiusPx) => morph(mask, 'open', radiusPx),
    close: (mask, radiusPx) => morph(mask, 'close', radiusPx),
    contours: (mask) => findContours(cv, mask),
    otsu: (image) => otsuLevel(cv, image),
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
