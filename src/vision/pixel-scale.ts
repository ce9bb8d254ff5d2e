/** Where a pixel coordinate of a resized image lies in the image it was made from.
 *  With centres at integers both images share their outer border at −0.5, not their first
 *  centre, so a bare multiplication is off by half a pixel of either image:
 *  x_from = (x_to + 0.5)·(from/to) − 0.5, as cv::resize maps for INTER_AREA and INTER_LINEAR. */
export function rescaleCoordinate(x: number, toSize: number, fromSize: number): number {
  return ((x + 0.5) * fromSize) / toSize - 0.5;
}
