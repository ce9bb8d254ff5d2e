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
  readonly centroid: readonly [x: number, y: number];
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
      const [cx, cy] = centroids.data64F.subarray(2 * label, 2 * label + 2);
      components.push({ label, areaPx, bbox: { x, y, width, height }, centroid: [cx, cy] });
    }
    return {
      components: components.sort((a, b) => b.areaPx - a.areaPx || a.label - b.label),
      labels: labels.data32S.slice(),
    };
  });
}

export type PixelPoint = readonly [x: number, y: number];

/** Outer borders of the non-zero regions, every border pixel in turn, closed, longest first. */
export function findContours(cv: OpenCv, mask: GreyImage): PixelPoint[][] {
  return withScope(cv, ({ own, mat, vector, upload }) => {
    const found = vector();
    cv.findContours(upload(mask), found, mat(), cv.RETR_EXTERNAL, cv.CHAIN_APPROX_NONE);
    const contours = Array.from({ length: found.size() }, (_, index) => {
      const flat = own(found.get(index)).data32S;
      return Array.from(
        { length: flat.length / 2 },
        (_, i): PixelPoint => [flat[2 * i], flat[2 * i + 1]],
      );
    });
    return contours.sort((a, b) => b.length - a.length);
  });
}

/** Level that best parts the grey levels in two classes, the lower one including it
 *  (N. Otsu, IEEE Trans. SMC 9, 1979). */
export function otsuLevel(cv: OpenCv, image: GreyImage): number {
  return withScope(cv, ({ mat, upload }) =>
    cv.threshold(upload(image), mat(), 0, 255, cv.THRESH_BINARY + cv.THRESH_OTSU),
  );
}
