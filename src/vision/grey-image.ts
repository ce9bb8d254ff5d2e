/** 8-bit luma, row by row from the top, no padding: pixel (x, y) is data[y·width + x].
 *  Pixel centres lie at integers: the image spans −0.5 … width − 0.5. */
export interface GreyImage {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}
