import type { Mat, MatVector, OpenCv } from '../../wasm/build/opencv.js';
import type { GreyImage } from './grey-image';

interface Deletable {
  delete(): void;
}

/** Owner of everything allocated on the wasm heap during one call. */
export interface Scope {
  readonly cv: OpenCv;
  own<T extends Deletable>(thing: T): T;
  mat(): Mat;
  vector(): MatVector;
  /** A copy of the image on the wasm heap. */
  upload(image: GreyImage): Mat;
}

/** Runs one vision operation; whatever it allocated is freed when it ends, also by a throw.
 *  OpenCV throws bare pointers; they leave here as errors with OpenCV's own message. */
export function withScope<T>(cv: OpenCv, operation: (scope: Scope) => T): T {
  const owned: Deletable[] = [];
  const own = <D extends Deletable>(thing: D): D => {
    owned.push(thing);
    return thing;
  };
  try {
    return operation({
      cv,
      own,
      mat: () => own(new cv.Mat()),
      vector: () => own(new cv.MatVector()),
      upload(image) {
        const mat = own(new cv.Mat(image.height, image.width, cv.CV_8UC1));
        mat.data.set(image.data);
        return mat;
      },
    });
  } catch (thrown) {
    throw typeof thrown === 'number' ? new Error(cv.exceptionFromPtr(thrown).msg) : thrown;
  } finally {
    for (const thing of owned.reverse()) thing.delete();
  }
}

/** A copy of an 8-bit single-channel matrix outside the wasm heap. */
export function download(mat: Mat): GreyImage {
  return { width: mat.cols, height: mat.rows, data: mat.data.slice() };
}
