import type { OpenCv } from '../../wasm/build/opencv.js';
import type { GreyImage } from './grey-image';
import { withScope } from './scope';

export interface Component {
  /** Value of its pixels in `labels`. */
  readonly label: number;
  readonly areaPx: number;
  readonly bbox: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
}

export interface Components {
  /** Largest first. */
  readonly components: readonly Component[];
  /** Per pixel; 0 where the mask is 0. Holds the labels of small components too. */
  readonly labels: Int32Array;
}

/** 8-connected regions of non-zero pixels with at least `minAreaPx` pixels. */
export function findComponents(cv: OpenCv, mask: GreyImage, minAreaPx: number): Components {
  return withScope(cv, ({ mat, upload }) => {
    const labels = mat();
    const stats = mat();
    const centroids = mat();
    const count = cv.connectedComponentsWithStats(
      upload(mask),
      labels,
      stats,
      centroids,
      8,
      cv.CV_32S,
    );
    const components: Component[] = [];
    for (let label = 1; label < count; label++) {
      const [x, y, width, height, areaPx] = stats.data32S.subarray(5 * label, 5 * label + 5);
      if (areaPx < minAreaPx) continue;
      components.push({ label, areaPx, bbox: { x, y, width, height } });
    }
    return {
      components: components.sort((a, b) => b.areaPx - a.areaPx || a.label - b.label),
      labels: labels.data32S.slice(),
    };
  });
}
