import { heicAsJpeg } from './engine';
import { isBoxed } from './sniff';

/** The photo as this browser can show it: itself, or a JPEG of it where the browser does not know the
 *  format. What neither knows stays as it is. */
export async function showable(photo: Blob): Promise<Blob> {
  if (!isBoxed(new Uint8Array(await photo.slice(0, 8).arrayBuffer()))) return photo;
  const shown = await createImageBitmap(photo).then(
    (bitmap) => {
      bitmap.close();
      return true;
    },
    () => false,
  );
  if (shown) return photo;
  return (await heicAsJpeg(photo).catch(() => null)) ?? photo;
}
