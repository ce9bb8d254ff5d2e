import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import { ok, type Result, refuse } from '../../quantity/result';
import { stripJpeg } from './jpeg-strip';
import { readSheet, type SheetRefusal } from './read-sheet';
import { type Sheet, sheetSchema } from './sheet-schema';

/** A sheet with the bytes of its photos, stripped JPEGs in the order of `sheet.shots`. */
export interface SheetWithPhotos {
  readonly sheet: Sheet;
  readonly photos: readonly Uint8Array[];
}

export const sheetFile = {
  extension: '.crestwise',
  mediaType: 'application/vnd.crestwise.sheet+zip',
} as const;

export type SheetFileRefusal = SheetRefusal | 'too-large' | 'damaged-photo';

const sheetName = 'sheet.json';
const photoName = (shot: number) => `photo-${shot + 1}.jpg`;
const maxSheetBytes = 8e6;
const maxPhotoBytes = 60e6;
const maxFileBytes = 300e6;
/** Fixed, so that equal sheets give equal files. ZIP time starts in 1980. */
const zipTime = new Date(1980, 0, 2);

/** One file to hand over: a ZIP of `sheet.json` and its photos. Photos are stripped again here, so
 *  that no EXIF leaves whatever came before. */
export function sheetToFile({
  sheet,
  photos,
}: SheetWithPhotos): Result<Uint8Array, 'damaged-sheet' | 'damaged-photo'> {
  // Nothing is handed over that could not be opened again.
  if (!sheetSchema.safeParse(sheet).success)
    return refuse('damaged-sheet', 'This sheet holds a value that cannot be kept: measure again.');
  const parts: Zippable = {
    [sheetName]: [strToU8(JSON.stringify(sheet)), { level: 6, mtime: zipTime }],
  };
  for (const [i] of sheet.shots.entries()) {
    const photo = stripJpeg(photos[i] ?? new Uint8Array(0));
    if (!photo.ok) return refuse('damaged-photo', photo.advice);
    parts[photoName(i)] = [photo.value.bytes, { level: 0, mtime: zipTime }];
  }
  return ok(zipSync(parts));
}

export function sheetFromFile(file: Uint8Array): Result<SheetWithPhotos, SheetFileRefusal> {
  if (file.length > maxFileBytes) return tooLarge();
  let parts: Record<string, Uint8Array>;
  let oversized = false;
  try {
    parts = unzipSync(file, {
      // Only what a sheet holds is unpacked, and never more than it may measure.
      filter: ({ name, originalSize }) => {
        const limit = partLimit(name);
        if (originalSize > limit && limit > 0) oversized = true;
        return originalSize <= limit;
      },
    });
  } catch {
    return refuse('not-a-sheet', 'Choose a sheet that Crestwise exported: this is something else.');
  }
  if (oversized) return tooLarge();
  return sheetFromParts(parts[sheetName], (shot) => parts[photoName(shot)]);
}

/** Also used for each sheet of an archive. */
function sheetFromParts(
  json: Uint8Array | undefined,
  photoBytes: (shot: number) => Uint8Array | undefined,
): Result<SheetWithPhotos, SheetFileRefusal> {
  let raw: unknown;
  try {
    raw = JSON.parse(strFromU8(json ?? new Uint8Array(0)));
  } catch {
    return refuse('not-a-sheet', 'Choose a sheet that Crestwise exported: this is something else.');
  }
  const sheet = readSheet(raw);
  if (!sheet.ok) return sheet;
  const photos: Uint8Array[] = [];
  for (const [i, shot] of sheet.value.shots.entries()) {
    const photo = stripJpeg(photoBytes(i) ?? new Uint8Array(0));
    const asStated =
      photo.ok &&
      photo.value.widthPx === shot.photo.widthPx &&
      photo.value.heightPx === shot.photo.heightPx;
    if (!asStated)
      return refuse('damaged-photo', 'The photo in this sheet is damaged: ask for it again.');
    photos.push(photo.value.bytes);
  }
  return ok({ sheet: sheet.value, photos });
}

function partLimit(name: string): number {
  if (name === sheetName) return maxSheetBytes;
  return /^photo-[1-8]\.jpg$/.test(name) ? maxPhotoBytes : 0;
}

const tooLarge = () =>
  refuse('too-large', 'This file is larger than any sheet: check that it is the right one.');
