/** Typings of only what src/vision calls. Names and argument orders are OpenCV's own
 *  (docs.opencv.org, 4.12, modules core, imgproc, objdetect). */
declare module '*/wasm/build/opencv.js' {
  interface Deletable {
    delete(): void;
  }

  export interface Mat extends Deletable {
    readonly rows: number;
    readonly cols: number;
    /** Views into the wasm heap: invalid as soon as any call lets the heap grow. */
    readonly data: Uint8Array;
    readonly data32S: Int32Array;
    readonly data32F: Float32Array;
    readonly data64F: Float64Array;
    convertTo(target: Mat, type: number): void;
  }

  export interface MatVector extends Deletable {
    size(): number;
    /** A new Mat, to be deleted by the caller. */
    get(index: number): Mat;
  }

  interface ArucoDetector extends Deletable {
    detectMarkers(image: Mat, corners: MatVector, ids: Mat, rejected?: MatVector): void;
  }

  type Size = { readonly width: number; readonly height: number };

  export interface OpenCv {
    readonly CV_8U: number;
    readonly CV_8UC1: number;
    readonly CV_32F: number;
    readonly CV_32S: number;
    readonly BORDER_REPLICATE: number;
    readonly INTER_AREA: number;
    readonly INTER_LINEAR: number;
    readonly DICT_4X4_50: number;

    readonly HEAPU8: Uint8Array;

    readonly Mat: new (rows?: number, cols?: number, type?: number) => Mat;
    readonly MatVector: new () => MatVector;
    readonly aruco_ArucoDetector: new (
      dictionary: Deletable,
      parameters: Deletable,
      refine: Deletable,
    ) => ArucoDetector;
    readonly aruco_DetectorParameters: new () => Deletable;
    readonly aruco_RefineParameters: new (
      minRepDistance: number,
      errorCorrectionRate: number,
      checkAllOrders: boolean,
    ) => Deletable;
    getPredefinedDictionary(name: number): Deletable;

    connectedComponentsWithStats(
      image: Mat,
      labels: Mat,
      stats: Mat,
      centroids: Mat,
      connectivity: 4 | 8,
      labelType: number,
    ): number;
    GaussianBlur(
      source: Mat,
      target: Mat,
      kernel: Size,
      sigmaX: number,
      sigmaY: number,
      border: number,
    ): void;
    resize(
      source: Mat,
      target: Mat,
      size: Size,
      fx: number,
      fy: number,
      interpolation: number,
    ): void;
    exceptionFromPtr(pointer: number): { readonly code: number; readonly msg: string };
  }

  /** Emscripten's module factory, with the one hook we use. */
  export default function load(module: {
    instantiateWasm(
      imports: WebAssembly.Imports,
      receive: (instance: WebAssembly.Instance, module: WebAssembly.Module) => void,
    ): object;
    print(text: string): void;
    printErr(text: string): void;
  }): Promise<OpenCv>;
}
