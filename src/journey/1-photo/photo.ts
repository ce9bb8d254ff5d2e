import type { GreyImage } from '../../vision/grey-image';

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** 35 mm equivalents are stated for the diagonal of 36 × 24 mm (CIPA DCG-001, from memory). */
export const diagonal35Mm = 43.267;

/** A photo as all later stages see it: upright, luma of ITU-R BT.601 (JPEG's own Y), no colour. */
export interface Photo {
  readonly grey: GreyImage;
  /** EXIF's 35 mm equivalent, as the camera states it; null when absent, absurd, or contradicted
   *  by a crop after the shot. Good to about 3 %, and of no use when a viewer has cropped and
   *  rewritten the sizes too. */
  readonly f35Mm: number | null;
  /** By EXIF; false when the file does not say. */
  readonly flashFired: boolean;
  /** Of the file, upright: twice that of `grey` when the file was too large to be held in full. */
  readonly originalSize: Size;
}

/** The decoders' compiled code, as the environment supplies it: read from disk in Node, compiled
 *  while it arrives in a worker. Each is asked for only when a file of its kind is met, and rejects
 *  when it cannot be had: those for HEIC and AVIF are fetched on first use. */
export interface Decoders {
  jpeg(): Promise<WebAssembly.Module>;
  png(): Promise<WebAssembly.Module>;
  webp(): Promise<WebAssembly.Module>;
  heic(): Promise<WebAssembly.Module>;
  avif(): Promise<WebAssembly.Module>;
}

/** Held in full up to here, pixels: a 12 MP photo is the usual case, 48 MP the largest common one. */
export const fullSizeLimitPx = 50_000_000;
/** JPEGs up to here are decoded at half size, which its transform does by itself; so are HEICs, of which
 *  only the luma is decoded in full. */
export const reducedLimitPx = 200_000_000;
/** Below this long side a thread has too few pixels per turn even when it fills the window. */
export const coarsestLongSidePx = 600;
/** A strip narrower than this shows no card. */
export const coarsestShortSidePx = 200;
