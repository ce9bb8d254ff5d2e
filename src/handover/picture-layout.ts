import type { PhotoInPicture } from './coded-sheet';

/** Messengers shrink pictures to this long edge, px, or more (common practice). */
const messengerLongEdgePx = 1280;
/** A module must keep this many pixels after that: QR readers want 3, JPEG blur takes one. */
const modulePxAfter = 4;
/** Bare paper around a QR symbol, modules (ISO/IEC 18004:2015, 6.3.8). */
const quietModules = 4;
const photoLongEdgePx = 2048;
/** Above this share of its height a photo is wide enough for the largest code. */
const narrowest = 0.55;
/** Width of a picture without photo. */
const barePictureWidthPx = 1280;

export interface PictureLayout {
  readonly widthPx: number;
  readonly heightPx: number;
  /** The photo starts at the picture's top left corner. */
  readonly photo: { readonly widthPx: number; readonly heightPx: number };
  /** Of the symbol without its quiet zone, px from the top left corner. */
  readonly code: { readonly xPx: number; readonly yPx: number; readonly modulePx: number };
  /** Where words may go, beside the code. */
  readonly words: {
    readonly xPx: number;
    readonly yPx: number;
    readonly widthPx: number;
    readonly heightPx: number;
  };
}

/** Size of the photo within the picture, for an upright photo; null without one. */
export function photoInPicture(
  photo: { readonly widthPx: number; readonly heightPx: number } | null,
): PhotoInPicture {
  if (!photo)
    return { widthPx: barePictureWidthPx, heightPx: 0, pictureWidthPx: barePictureWidthPx };
  const factor = Math.min(1, photoLongEdgePx / Math.max(photo.widthPx, photo.heightPx));
  const widthPx = Math.max(1, Math.round(photo.widthPx * factor));
  const heightPx = Math.max(1, Math.round(photo.heightPx * factor));
  return {
    widthPx,
    heightPx,
    pictureWidthPx: Math.max(widthPx, Math.ceil(heightPx * narrowest), 480),
  };
}

/** Photo above, a white strip below with the code at its left. */
export function layOutPicture(photo: PhotoInPicture, modules: number): PictureLayout {
  const side = modules + 2 * quietModules;
  let modulePx = modulePxAfter;
  const longEdge = () => Math.max(photo.pictureWidthPx, photo.heightPx + side * modulePx);
  while (modulePx * messengerLongEdgePx < modulePxAfter * longEdge()) modulePx++;
  const quietPx = quietModules * modulePx;
  const stripPx = side * modulePx;
  return {
    widthPx: Math.max(photo.pictureWidthPx, stripPx),
    heightPx: photo.heightPx + stripPx,
    photo: { widthPx: photo.widthPx, heightPx: photo.heightPx },
    code: { xPx: quietPx, yPx: photo.heightPx + quietPx, modulePx },
    words: {
      xPx: stripPx,
      yPx: photo.heightPx + quietPx,
      widthPx: Math.max(0, photo.pictureWidthPx - stripPx - quietPx),
      heightPx: stripPx - 2 * quietPx,
    },
  };
}

/** The photo's part of a picture that may have been scaled since, px; null when it was cropped. */
export function photoPart(
  photo: PhotoInPicture,
  picture: { readonly widthPx: number; readonly heightPx: number },
): { widthPx: number; heightPx: number } | null {
  const scale = picture.widthPx / photo.pictureWidthPx;
  const part = {
    widthPx: Math.round(photo.widthPx * scale),
    heightPx: Math.round(photo.heightPx * scale),
  };
  const codeHeightPx = picture.heightPx - part.heightPx;
  return part.widthPx < 1 || codeHeightPx < picture.widthPx * 0.1 ? null : part;
}
