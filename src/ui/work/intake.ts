import { createSignal } from 'solid-js';
import { isWholeFrame } from '../../journey/frame-shape';
import type { MeasureOptions } from '../../journey/identification';
import type { WearPart } from '../../journey/wear/wear-schema';
import { receiveFiles } from '../../offline/receive-files';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { go } from '../shell/route';
import { arrive } from './arrive';
import { measureNew } from './job';
import { drawerAccess } from './keep';
import { isZip, mayBeSharedPicture } from './sniff';

const [hovering, setHovering] = createSignal(false);
/** A file is being dragged over the page. */
export const dropping = hovering;

/** One way in for whatever is chosen, dropped, pasted or shared into the page: a sheet file, an
 *  archive, a shared picture, else a photo to measure. */
export async function takeIn(
  file: Blob,
  options: Partial<MeasureOptions> = {},
  wear?: WearPart,
): Promise<'sheet' | 'archive' | 'photo' | 'failed'> {
  try {
    return await takeInKnown(file, options, wear);
  } catch (cause) {
    // A file that vanished while being read (an unplugged card), or a fault of our own.
    console.error(cause);
    notify(t().shell.error);
    return 'failed';
  }
}

async function takeInKnown(
  file: Blob,
  options: Partial<MeasureOptions>,
  wear: WearPart | undefined,
): Promise<'sheet' | 'archive' | 'photo' | 'failed'> {
  const head = new Uint8Array(await file.slice(0, 4).arrayBuffer());
  if (isZip(head)) return openSheetOrArchive(file);
  if (isNoPhoto(file)) {
    notify(t().loop.noSheet);
    return 'failed';
  }
  if (await mayBeSharedPicture(file)) {
    const { openPicture } = await import('../../handover/open-picture');
    const opened = await openPicture(file);
    if (opened.ok) {
      await arrive(opened.value);
      notify(t().shared.pictureOpened);
      return 'sheet';
    }
    if (opened.reason === 'newer-version') notify(t().shared.newer);
    else if (opened.reason === 'cropped-picture') notify(t().shared.cropped);
    else if (opened.reason === 'no-code') void tellOfMissingCode(file);
  }
  await measureNew(file, options, wear);
  return 'photo';
}

/** A whole frame without EXIF is a photo that a messenger has stripped. Another shape may be a shared picture that
 *  somebody has cut off. */
async function tellOfMissingCode(file: Blob): Promise<void> {
  const bitmap = await createImageBitmap(file).catch(() => null);
  if (bitmap && !isWholeFrame(bitmap.width, bitmap.height)) notify(t().loop.noCode);
  bitmap?.close();
}

/** By its own name or kind. What calls itself a photo is tried as one, and refused with a reason. */
function isNoPhoto(file: Blob): boolean {
  const name = file instanceof File ? file.name : '';
  return (
    /\.crestwise(-drawer)?$/.test(name) ||
    /^(text|audio|video)\/|^application\/(pdf|json)/.test(file.type)
  );
}

async function openSheetOrArchive(file: Blob): Promise<'sheet' | 'archive'> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const { sheetFromFile } = await import('../../journey/8-sheet/sheet-file');
  const sheet = sheetFromFile(bytes);
  if (sheet.ok) {
    await arrive(sheet.value);
    notify(t().shared.sheetOpened);
    return 'sheet';
  }
  const { drawer, importDrawer, makeThumbnail } = await drawerAccess();
  const imported = await importDrawer(drawer, bytes, (photo) =>
    makeThumbnail(new Blob([photo.slice()], { type: 'image/jpeg' })),
  );
  if (imported.ok) {
    notify(t().drawer.imported(imported.value.added + imported.value.replaced));
    go({ screen: 'drawer' });
  } else if (imported.reason === 'no-room') notify(t().shell.storageFull);
  else if (sheet.reason === 'newer-version' || imported.reason === 'newer-version')
    notify(t().shared.newer);
  else notify(t().drawer.importBad);
  return 'archive';
}

/** Listens for as long as the page lives. */
export function acceptDropsAndPastes(): void {
  void receiveFiles((file) => void takeIn(file));
  addEventListener('dragover', (event) => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    setHovering(true);
  });
  addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) setHovering(false);
  });
  addEventListener('drop', (event) => {
    setHovering(false);
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    void takeIn(file);
  });
  addEventListener('paste', (event) => {
    const file = event.clipboardData?.files[0];
    if (!file) return;
    event.preventDefault();
    void takeIn(file);
  });
}
