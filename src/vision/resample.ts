import type { OpenCv } from '../../wasm/build/opencv.js';
import type { GreyImage } from './grey-image';
import { download, withScope } from './scope';

/** Area average when both sides shrink (no aliasing), bilinear otherwise.
 *  The borders of the two images coincide, not their first pixel centres:
 *  map coordinates with rescaleCoordinate. */
export function resize(cv: OpenCv, image: GreyImage, width: number, height: number): GreyImage {
  return withScope(cv, ({ mat, upload }) => {
    const shrinks = width <= image.width && height <= image.height;
    const target = mat();
    const method = shrinks ? cv.INTER_AREA : cv.INTER_LINEAR;
    cv.resize(upload(image), target, { width, height }, 0, 0, method);
    return download(target);
  });
}

/** Gaussian, edges replicated; rounded to whole grey levels. σ in pixels, > 0.
 *  By way of floats: without SIMD, OpenCV's 8-bit path takes three times as long. */
export function blur(cv: OpenCv, image: GreyImage, sigmaPx: number): GreyImage {
  return withScope(cv, ({ mat, upload }) => {
    const floats = mat();
    const target = mat();
    const automatic = { width: 0, height: 0 };
    upload(image).convertTo(floats, cv.CV_32F);
    cv.GaussianBlur(floats, floats, automatic, sigmaPx, sigmaPx, cv.BORDER_REPLICATE);
    floats.convertTo(target, cv.CV_8U);
    return download(target);
  });
}
