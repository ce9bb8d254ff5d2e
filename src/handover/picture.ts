import type { Sheet } from '../journey/8-sheet/sheet-schema';
import { ok, type Result, refuse } from '../quantity/result';
import type { Coded } from './coded-schema';
import {
  type CodeRefusal,
  decodePictureCode,
  encodePictureCode,
  sheetFromCode,
} from './picture-code';
import { layOutPicture, type PictureLayout, photoInPicture, photoPart } from './picture-layout';

/** RGBA, rows from the top; `ImageData` is one. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

export interface PlannedPicture {
  readonly layout: PictureLayout;
  /** Rows of modules, true is black. */
  readonly modules: readonly (readonly boolean[])[];
}

/** Code and layout of the picture that hands over a sheet, for its upright photo's size. */
export async function planPicture(
  sheet: Sheet,
  uprightPhoto: { readonly widthPx: number; readonly heightPx: number } | null,
): Promise<Result<PlannedPicture, 'too-large'>> {
  const photo = photoInPicture(uprightPhoto);
  const text = encodePictureCode(sheet, photo);
  if (!text.ok) return text;
  const { encodeQR } = await import('qr');
  // The library draws at least one module of border; the layout has its own.
  const bordered = encodeQR(text.value, 'raw', {
    ecc: 'medium',
    encoding: 'alphanumeric',
    border: 1,
  });
  const modules = bordered.slice(1, -1).map((row) => row.slice(1, -1));
  return ok({ layout: layOutPicture(photo, modules.length), modules });
}

/** Fills everything below and beside the photo with white and draws the code. */
export function drawCode(picture: Pixels, { layout, modules }: PlannedPicture): void {
  const pixels = new Uint32Array(
    picture.data.buffer,
    picture.data.byteOffset,
    picture.data.length / 4,
  );
  const white = 0xffffffff;
  // Little-endian everywhere that runs a browser: opaque black.
  const black = 0xff000000;
  for (let y = 0; y < picture.height; y++) {
    const from = y < layout.photo.heightPx ? layout.photo.widthPx : 0;
    pixels.fill(white, y * picture.width + from, (y + 1) * picture.width);
  }
  const { xPx, yPx, modulePx } = layout.code;
  modules.forEach((row, r) => {
    row.forEach((isBlack, c) => {
      if (!isBlack) return;
      for (let y = yPx + r * modulePx; y < yPx + (r + 1) * modulePx; y++) {
        const start = y * picture.width + xPx + c * modulePx;
        pixels.fill(black, start, start + modulePx);
      }
    });
  });
}

export type PictureRefusal = 'no-code' | 'cropped-picture' | CodeRefusal;

export interface ReadPicture {
  readonly coded: Coded;
  /** Top left part of the picture that is the photo; null when the sheet came without one. */
  readonly photo: { readonly widthPx: number; readonly heightPx: number } | null;
}

/** The sheet's code in a picture that came through a messenger. `no-code` is the everyday case: the
 *  picture is simply a photo. */
export async function readPicture(picture: Pixels): Promise<Result<ReadPicture, PictureRefusal>> {
  const text = await findCode(picture);
  if (text === null) return refuse('no-code', 'There is no code on this picture.');
  const coded = decodePictureCode(text);
  if (!coded.ok) return coded;
  const [widthPx, heightPx, pictureWidthPx] = coded.value.p;
  if (heightPx === 0) return ok({ coded: coded.value, photo: null });
  const photo = photoPart(
    { widthPx, heightPx, pictureWidthPx },
    { widthPx: picture.width, heightPx: picture.height },
  );
  return photo
    ? ok({ coded: coded.value, photo })
    : refuse('cropped-picture', 'This picture was cropped: ask for it as it was shared.');
}

/** The sheet of a read picture, once its photo part is cut out (px as cut). */
export function sheetOfPicture(
  { coded }: ReadPicture,
  cut: { readonly widthPx: number; readonly heightPx: number },
): Result<Sheet, CodeRefusal> {
  return sheetFromCode(coded, cut);
}

async function findCode(picture: Pixels): Promise<string | null> {
  const { decodeQR } = await import('qr/decode.js');
  try {
    return decodeQR(picture, { format: 'RGBA', timeLimit: 1500, effort: 4 });
  } catch {
    return null;
  }
}
