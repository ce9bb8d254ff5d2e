/** 8-bit grey image, row-major, pixel centres at integers, x right, y down. */
export interface GreyImage {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}
