import { createRequire } from 'node:module';

interface Owned {
  delete(): void;
}
export interface Mat extends Owned {
  readonly rows: number;
  readonly data: Uint8Array;
  readonly data32F: Float32Array;
  readonly data32S: Int32Array;
}
interface Dictionary extends Owned {
  generateImageMarker(id: number, sidePx: number, into: Mat, borderModules: number): void;
}

/** What the card's tests call; the package's own types leave markers out. */
export interface DetectingOpenCv {
  readonly Mat: new () => Mat;
  readonly MatVector: new () => Owned & { get(i: number): Mat };
  readonly CV_8UC1: number;
  readonly DICT_4X4_50: number;
  readonly CORNER_REFINE_SUBPIX: number;
  matFromArray(rows: number, columns: number, type: number, data: Uint8Array): Mat;
  getPredefinedDictionary(name: number): Dictionary;
  readonly aruco_DetectorParameters: new () => Owned & { cornerRefinementMethod: number };
  readonly aruco_RefineParameters: new (distance: number, rate: number, all: boolean) => Owned;
  readonly aruco_ArucoDetector: new (
    dictionary: Dictionary,
    parameters: Owned,
    refine: Owned,
  ) => Owned & { detectMarkers(image: Mat, corners: Owned, ids: Mat): void };
}

/** The stock OpenCV build, whole, as an independent detector for printed cards. */
export async function stockOpenCv(): Promise<DetectingOpenCv> {
  // The package's Node branch looks for CommonJS globals that an ES module lacks.
  const scope = globalThis as Record<string, unknown>;
  scope.require ??= createRequire(import.meta.url);
  scope.__dirname ??= import.meta.dirname;
  const { loadOpenCV } = await import('@opencvjs/web');
  return (await loadOpenCV()) as unknown as DetectingOpenCv;
}
