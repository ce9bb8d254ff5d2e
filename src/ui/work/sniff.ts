/** Sheet files and archives are ZIPs (APPNOTE.TXT 4.3.7: local file header). */
export function isZip(head: Uint8Array): boolean {
  return head[0] === 0x50 && head[1] === 0x4b && head[2] === 3 && head[3] === 4;
}

/** HEIC and AVIF (and video) come in the boxes of ISO/IEC 14496-12, the first of which is `ftyp`. */
export function isBoxed(head: Uint8Array): boolean {
  return String.fromCharCode(...head.subarray(4, 8)) === 'ftyp';
}

/** A shared picture is a JPEG that no camera wrote: one with a focal length in its EXIF is a
 *  fresh photo, and looking for a code in it would only cost time. Messengers may turn the
 *  picture into WebP. */
export async function mayBeSharedPicture(file: Blob): Promise<boolean> {
  const bytes = new Uint8Array(await file.slice(0, 256 * 1024).arrayBuffer());
  const jpeg = bytes[0] === 0xff && bytes[1] === 0xd8;
  const webp = String.fromCharCode(...bytes.subarray(8, 12)) === 'WEBP';
  const png = bytes[0] === 0x89 && bytes[1] === 0x50;
  if (!jpeg) return webp || png;
  const { cameraFactsOf } = await import('../../journey/8-sheet/jpeg-camera-facts');
  return cameraFactsOf(bytes).focal35Mm === null;
}
