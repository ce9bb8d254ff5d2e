import type { Detection, DetectOptions } from './detect-markers';
import type { GreyImage } from './grey-image';
import type { Components } from './regions';

/** Everything the journey asks of OpenCV. Images go in and come out as plain arrays; nothing that
 *  lives on the wasm heap leaves this folder. Frames: pixels, x right, y down, pixel centres at
 *  integers. A mask is a grey image whose non-zero pixels are set (255 in results).
 *  The functions behind it carry the details. */
export interface Vision {
  detectMarkers(image: GreyImage, options?: DetectOptions): Detection;
  resize(image: GreyImage, width: number, height: number): GreyImage;
  blur(image: GreyImage, sigmaPx: number): GreyImage;
  components(mask: GreyImage, minAreaPx: number): Components;
  close(mask: GreyImage, radiusPx: number): GreyImage;
  /** Size of the wasm heap, which only ever grows. */
  heapBytes(): number;
}
