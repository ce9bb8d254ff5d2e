import { stripJpeg } from '../journey/8-sheet/jpeg-strip';
import type { Sheet } from '../journey/8-sheet/sheet-schema';
import { ok, type Result, refuse } from '../quantity/result';
import { drawCode, planPicture } from './picture';

/** Words beside the code, in the sender's language. */
export interface PictureWords {
  readonly heading: string;
  /** What was found, a line each. */
  readonly lines: readonly string[];
  /** How the receiver opens it. */
  readonly hint: string;
}

const jpegQuality = 0.9;

/** The picture that hands a sheet over: photo, code and words as one JPEG without metadata. The
 *  photo is one that the browser turns upright. Browser only (OffscreenCanvas). */
export async function sharedPicture(
  sheet: Sheet,
  photo: Blob | null,
  words: PictureWords,
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
    bitmap.close();
  }
  const pixels = context.getImageData(0, 0, layout.widthPx, layout.heightPx);
  drawCode(pixels, planned.value);
  context.putImageData(pixels, 0, 0);
  drawWords(context, layout.words, words);
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: jpegQuality });
  // Browsers add a colour profile.
  const stripped = stripJpeg(new Uint8Array(await blob.arrayBuffer()));
  if (!stripped.ok) return refuse('unreadable', stripped.advice);
  return ok(new Blob([stripped.value.bytes.slice()], { type: 'image/jpeg' }));
}

function drawWords(
  context: OffscreenCanvasRenderingContext2D,
  box: { xPx: number; yPx: number; widthPx: number; heightPx: number },
  { heading, lines, hint }: PictureWords,
): void {
  const rows = [
    { text: heading, share: 1.5, weight: 600 },
    ...lines.map((text) => ({ text, share: 1, weight: 400 })),
    { text: hint, share: 0.7, weight: 400 },
  ];
  const shares = rows.reduce((sum, row) => sum + 1.35 * row.share, 0);
  const unitPx = Math.min(box.heightPx / shares, box.heightPx / 9);
  context.fillStyle = '#000';
  context.textBaseline = 'top';
  let y = box.yPx;
  for (const { text, share, weight } of rows) {
    context.font = `${weight} ${Math.floor(unitPx * share)}px system-ui, sans-serif`;
    // The last argument narrows what would run out of the picture.
    if (box.widthPx > 0) context.fillText(text, box.xPx, y, box.widthPx);
    y += 1.35 * share * unitPx;
  }
}
