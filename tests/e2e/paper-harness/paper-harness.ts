import '../../../src/offline/without-eval';
import { connectDrawer, type DrawerChange } from '../../../src/drawer/drawer-connection';
import { keepSheet, listDrawer, recallSheet } from '../../../src/drawer/kept-sheets';
import { makeThumbnail } from '../../../src/drawer/thumbnail';
import { openPicture } from '../../../src/handover/open-picture';
import { sharedPicture } from '../../../src/handover/share-picture';
import { cameraFactsOf, withCameraFacts } from '../../../src/journey/8-sheet/jpeg-camera-facts';
import { stripJpeg } from '../../../src/journey/8-sheet/jpeg-strip';
import type { Sheet } from '../../../src/journey/8-sheet/sheet-schema';

const drawer = connectDrawer('paper-harness');
const heard: DrawerChange[] = [];
drawer.onElsewhere((change) => heard.push(change));

const fromBase64 = (text: string) => Uint8Array.from(atob(text), (char) => char.charCodeAt(0));
async function toBase64(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let text = '';
  for (let i = 0; i < bytes.length; i += 0x8000)
    text += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(text);
}

const jpegBlob = (bytes: Uint8Array) => new Blob([bytes.slice()], { type: 'image/jpeg' });

/** A small grey copy, to compare two pictures of one scene. */
async function miniature(photo: Blob): Promise<number[]> {
  const bitmap = await createImageBitmap(photo, { imageOrientation: 'from-image' });
  const context = new OffscreenCanvas(32, 24).getContext('2d')!;
  context.imageSmoothingQuality = 'high';
  context.drawImage(bitmap, 0, 0, 32, 24);
  const { data } = context.getImageData(0, 0, 32, 24);
  return Array.from({ length: 32 * 24 }, (_, i) => data[4 * i + 1]!);
}

export const paper = {
  /** The sheet with this camera photo as its only shot, shared as a picture. */
  async share(sheet: Sheet, photoBase64: string): Promise<string> {
    const camera = fromBase64(photoBase64);
    const stripped = stripJpeg(camera);
    if (!stripped.ok) throw new Error(stripped.reason);
    const facts = cameraFactsOf(camera);
    const { widthPx, heightPx } = stripped.value;
    const photo = { widthPx, heightPx, ...facts, recompressed: false };
    const shots = sheet.shots.map((shot) => ({ ...shot, photo }));
    const upright = jpegBlob(withCameraFacts(stripped.value.bytes, facts));
    const words = {
      stamp: { kind: 'open' as const, word: 'open' },
      heading: 'Face seal, size −6',
      lines: ['11/16-16 UN'],
      more: [],
      foot: ['Open here'],
      dimensions: null,
    };
    const picture = await sharedPicture({ ...sheet, shots }, upright, words);
    if (!picture.ok) throw new Error(picture.reason);
    return toBase64(picture.value);
  },

  async open(pictureBase64: string, originalBase64: string) {
    const opened = await openPicture(jpegBlob(fromBase64(pictureBase64)));
    if (!opened.ok) return opened;
    const { sheet, photos } = opened.value;
    const [was, is] = await Promise.all([
      miniature(jpegBlob(fromBase64(originalBase64))),
      miniature(jpegBlob(photos[0]!)),
    ]);
    const from = (other: number[]) =>
      was.reduce((sum, v, i) => sum + Math.abs(v - other[i]!), 0) / was.length;
    const upsideDown = [...is].reverse();
    return {
      ok: true as const,
      sheet,
      photos: photos.length,
      difference: from(is),
      differenceTurned: from(upsideDown),
    };
  },

  async keep(sheet: Sheet, photoBase64: string) {
    const photo = stripJpeg(fromBase64(photoBase64));
    if (!photo.ok) throw new Error(photo.reason);
    const thumbnail = await makeThumbnail(jpegBlob(photo.value.bytes));
    return keepSheet(drawer, sheet, [photo.value.bytes], thumbnail);
  },

  /** Keeps one sheet after the other until the page is gone. */
  async keepForEver(sheet: Sheet, photoBase64: string): Promise<void> {
    const photo = stripJpeg(fromBase64(photoBase64));
    if (!photo.ok) throw new Error(photo.reason);
    for (;;) {
      const id = crypto.randomUUID();
      await keepSheet(drawer, { ...sheet, id }, [photo.value.bytes], null);
    }
  },

  /** Every entry with what became of its sheet and photo. */
  async inventory() {
    const list = await listDrawer(drawer);
    if (!list.ok) return list;
    const entries = [];
    for (const { id, photoBytes, thumbnail } of list.value) {
      const read = await recallSheet(drawer, id);
      const photo = read.ok ? stripJpeg(read.value.photos[0] ?? new Uint8Array(0)) : null;
      const whole = photo?.ok === true && photo.value.bytes.length === photoBytes;
      entries.push({ id, whole, thumbnailBytes: thumbnail?.length ?? 0 });
    }
    return { ok: true as const, entries };
  },

  heard: () => heard,
};

declare global {
  interface Window {
    paper: typeof paper;
  }
}
window.paper = paper;
