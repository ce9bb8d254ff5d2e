const longEdgePx = 240;

/** A small JPEG of a photo for the drawer's list; null where the browser cannot decode it. */
export async function makeThumbnail(photo: Blob): Promise<Uint8Array | null> {
  try {
    const bitmap = await createImageBitmap(photo, { imageOrientation: 'from-image' });
    const factor = Math.min(1, longEdgePx / Math.max(bitmap.width, bitmap.height));
    const width = Math.max(1, Math.round(bitmap.width * factor));
    const height = Math.max(1, Math.round(bitmap.height * factor));
    const canvas = new OffscreenCanvas(width, height);
    const context = canvas.getContext('2d');
    if (!context) return null;
    context.imageSmoothingQuality = 'high';
    context.drawImage(bitmap, 0, 0, width, height);
    bitmap.close();
    const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.8 });
    return new Uint8Array(await blob.arrayBuffer());
  } catch {
    return null;
  }
}
