import { stripJpeg } from '../journey/8-sheet/jpeg-strip';
import type { SheetWithPhotos } from '../journey/8-sheet/sheet-file';
import { ok, type Result, refuse } from '../quantity/result';
import { type PictureRefusal, readPicture, sheetOfPicture } from './picture';

/** Pictures larger than this on a side are read scaled down; messengers send less. */
const readLongEdgePx = 2400;
const cutQuality = 0.95;

/** The sheet in a shared picture, with its photo cut out. `no-code` means an ordinary photo.
 *  Browser only (OffscreenCanvas). */
export async function openPicture(
  file: Blob,
): Promise<Result<SheetWithPhotos, PictureRefusal | 'unreadable'>> {
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return refuse('unreadable', 'This picture cannot be opened: ask for it again.');
  }
  try {
    const factor = Math.min(1, readLongEdgePx / Math.max(bitmap.width, bitmap.height));
    const width = Math.max(1, Math.round(bitmap.width * factor));
    const height = Math.max(1, Math.round(bitmap.height * factor));
    const context = new OffscreenCanvas(width, height).getContext('2d', {
      willReadFrequently: true,
    });
    if (!context) return refuse('unreadable', 'This device lacks the memory for this picture.');
    context.drawImage(bitmap, 0, 0, width, height);
    const read = await readPicture(context.getImageData(0, 0, width, height));
    if (!read.ok) return read;
    const { photo } = read.value;
    if (!photo) {
      const sheet = sheetOfPicture(read.value, { widthPx: 1, heightPx: 1 });
      return sheet.ok ? ok({ sheet: sheet.value, photos: [] }) : sheet;
    }
    const cut = await cutPhoto(bitmap, photo.widthPx / factor, photo.heightPx / factor);
    const stripped = stripJpeg(cut);
    if (!stripped.ok) return refuse('unreadable', stripped.advice);
    const sheet = sheetOfPicture(read.value, stripped.value);
    if (!sheet.ok) return sheet;
    const photos = sheet.value.shots.length > 0 ? [stripped.value.bytes] : [];
    return ok({ sheet: sheet.value, photos });
  } finally {
    bitmap.close();
  }
}

async function cutPhoto(
  bitmap: ImageBitmap,
  widthPx: number,
  heightPx: number,
): Promise<Uint8Array> {
  const canvas = new OffscreenCanvas(Math.floor(widthPx), Math.floor(heightPx));
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0);
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: cutQuality });
  return new Uint8Array(await blob.arrayBuffer());
}
