import type { DrawerChange, DrawerRefusal } from '../../drawer/drawer-connection';
import type { SheetWithPhotos } from './open-sheet';
import { uprightPhoto } from './photo-bytes';

export const drawerAccess = () => import('./drawer-access');

export type KeepOutcome = 'kept' | DrawerRefusal | 'damaged-sheet';

/** Which photos are already kept, so that a reading does not write megabytes again. */
const written = new Map<string, readonly Uint8Array[]>();

export async function keep({ sheet, photos }: SheetWithPhotos): Promise<KeepOutcome> {
  const { drawer, keepSheet, makeThumbnail } = await drawerAccess();
  const same = written.get(sheet.id) === photos;
  const first = photos[0];
  const thumbnail =
    same || !first ? undefined : await makeThumbnail(await uprightPhoto(first, sheet.shots[0]));
  const kept = await keepSheet(drawer, sheet, same ? undefined : photos, thumbnail);
  if (!kept.ok) return kept.reason;
  written.set(sheet.id, photos);
  return 'kept';
}

export async function recall(id: string): Promise<SheetWithPhotos | null> {
  const { drawer, recallSheet } = await drawerAccess();
  const kept = await recallSheet(drawer, id);
  if (!kept.ok) return null;
  written.set(id, kept.value.photos);
  return kept.value;
}

/** Hears of changes that other tabs make, for as long as the page lives. */
export async function onElsewhere(heard: (change: DrawerChange) => void): Promise<void> {
  const { drawer } = await drawerAccess();
  drawer.onElsewhere(heard);
}
