import type { OpenCv } from '../../wasm/build/opencv.js';
import type { GreyImage } from './grey-image';
import { withScope } from './scope';

type Corner = readonly [x: number, y: number];

export interface DetectedMarker {
  readonly id: number;
  /** Of the marker's black border, in the order top left, top right, bottom right, bottom left as
   *  printed. Pixels of the image searched. Whole-pixel quality: OpenCV traces them on pixel
   *  centres of the dark side, so they lie about half a pixel inwards; refine on the full image. */
  readonly corners: readonly [Corner, Corner, Corner, Corner];
}

export interface Detection {
  readonly markers: readonly DetectedMarker[];
  /** Squares that looked like markers but carry no code of the dictionary. */
  readonly rejectedCount: number;
}

export interface DetectOptions {
  /** Look for markers seen through glass from behind, or flipped by a front camera. Their corners
   *  are reported where they are in the image given; the order stays the printed one, so it runs
   *  anticlockwise. Ids 8, 9 and 17 are their own mirror images: they prove nothing. */
  readonly mirrored?: boolean;
}

/** Finds markers of DICT_4X4_50 (S. Garrido-Jurado et al., Pattern Recognition 47, 2014, as
 *  implemented in OpenCV's objdetect), without corner refinement. */
export function detectMarkers(
  cv: OpenCv,
  image: GreyImage,
  { mirrored = false }: DetectOptions,
): Detection {
  return withScope(cv, ({ own, mat, vector, upload }) => {
    const detector = own(
      new cv.aruco_ArucoDetector(
        own(cv.getPredefinedDictionary(cv.DICT_4X4_50)),
        own(new cv.aruco_DetectorParameters()),
        own(new cv.aruco_RefineParameters(10, 3, true)),
      ),
    );
    const corners = vector();
    const ids = mat();
    const rejected = vector();
    detector.detectMarkers(upload(mirrored ? flipped(image) : image), corners, ids, rejected);
    const x = (value: number) => (mirrored ? image.width - 1 - value : value);
    const markers = Array.from({ length: corners.size() }, (_, index) => {
      const found = own(corners.get(index)).data32F;
      const at = (corner: number): Corner => [x(found[2 * corner]), found[2 * corner + 1]];
      return { id: ids.data32S[index], corners: [at(0), at(1), at(2), at(3)] as const };
    });
    return {
      markers: markers.sort((a, b) => a.id - b.id),
      rejectedCount: rejected.size(),
    };
  });
}

function flipped(image: GreyImage): GreyImage {
  const data = image.data.slice();
  for (let y = 0; y < image.height; y++) {
    data.subarray(y * image.width, (y + 1) * image.width).reverse();
  }
  return { ...image, data };
}
