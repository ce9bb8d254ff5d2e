import { stripJpeg } from '../journey/8-sheet/jpeg-strip';
import type { Sheet } from '../journey/8-sheet/sheet-schema';
import { ok, type Result, refuse } from '../quantity/result';
import { paintCrop } from './crop-drawing';
import { drawCode, planPicture } from './picture';
import { drawLabel, type PictureLabel } from './picture-label';
import { threadCrop } from './thread-crop';

const jpegQuality = 0.9;
const cropPxPerUnit = 2;

/** The picture that hands a sheet over: photo, code and label as one JPEG without metadata. The
 *  photo is one that the browser turns upright. Browser only (OffscreenCanvas). */
export async function sharedPicture(
  sheet: Sheet,
  photo: Blob | null,
  label: PictureLabel,
): Promise<Result<Blob, 'too-large' | 'unreadable'>> {
  let bitmap: ImageBitmap | null = null;
  try {
    bitmap = photo && (await createImageBitmap(photo, { imageOrientation: 'from-image' }));
  } catch {
    return refuse(
      'unreadable',
      'The photo of this sheet cannot be drawn: hand over the sheet file.',
    );
  }
  const size = bitmap && { widthPx: bitmap.width, heightPx: bitmap.height };
  const planned = await planPicture(sheet, size);
  if (!planned.ok) return planned;
  const { layout } = planned.value;
  const canvas = new OffscreenCanvas(layout.widthPx, layout.heightPx);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context)
    return refuse('too-large', 'This device lacks the memory for it: hand over the sheet file.');
  if (bitmap) {
    context.imageSmoothingQuality = 'high';
    context.drawImage(bitmap, 0, 0, layout.photo.widthPx, layout.photo.heightPx);
  }
  const crop = threadCrop(sheet.shots[0]?.overlay ?? null, label.seats?.features);
  const image = bitmap && crop && paintCrop(bitmap, crop, cropPxPerUnit);
  bitmap?.close();
  const pixels = context.getImageData(0, 0, layout.widthPx, layout.heightPx);
  drawCode(pixels, planned.value);
  context.putImageData(pixels, 0, 0);
  drawLabel(context, layout.words, label, crop && image ? { crop, image } : null);
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: jpegQuality });
  // Browsers add a colour profile.
  const stripped = stripJpeg(new Uint8Array(await blob.arrayBuffer()));
  if (!stripped.ok) return refuse('unreadable', stripped.advice);
  return ok(new Blob([stripped.value.bytes.slice()], { type: 'image/jpeg' }));
}
