import { createSignal } from 'solid-js';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { go } from '../shell/route';
import { keep, onElsewhere, recall } from './keep';
import type { Sheet, SheetWithPhotos } from './open-sheet';

const [open, setOpen] = createSignal<SheetWithPhotos | null>(null);
const [saving, setSaving] = createSignal<'saved' | 'saving' | 'failed'>('saved');

/** The sheet on the screen. */
export const openSheet = open;
export const savingState = saving;

/** Changes the sheet on the screen at once, and keeps it. */
export async function change(
  update: (now: SheetWithPhotos) => { sheet: Sheet; photos?: readonly Uint8Array[] },
): Promise<void> {
  const now = open();
  if (!now) return;
  const { sheet, photos } = update(now);
  const next: SheetWithPhotos = {
    sheet: { ...sheet, updatedAt: new Date().toISOString() },
    photos: photos ?? now.photos,
  };
  setOpen(next);
  await store(next);
}

/** A sheet just made, or one that came from elsewhere: kept as it is, and shown unless `stay`. */
export async function adopt(
  arrived: SheetWithPhotos,
  how: 'push' | 'replace' | 'stay' = 'push',
  screen: 'sheet' | 'result' | 'counter' | 'wear' = 'sheet',
): Promise<void> {
  if (how === 'stay') {
    await store(arrived);
    return;
  }
  setOpen(arrived);
  await store(arrived);
  go({ screen, id: arrived.sheet.id }, how);
}

export async function openById(id: string): Promise<boolean> {
  if (open()?.sheet.id === id) return true;
  const kept = await recall(id);
  if (kept) setOpen(kept);
  return kept !== null;
}

let queue: Promise<unknown> = Promise.resolve();

/** A device without room keeps the sheet on the screen and says so: nothing shown is lost by it. */
function store(next: SheetWithPhotos): Promise<void> {
  setSaving('saving');
  const done = queue.then(async () => {
    const kept = await keep(next);
    setSaving(kept === 'kept' ? 'saved' : 'failed');
    if (kept === 'no-room') notify(t().shell.storageFull);
    else if (kept === 'newer-drawer') notify(t().shared.newer);
    else if (kept !== 'kept') notify(t().shell.storageOff);
  });
  queue = done;
  return done;
}

/** Follows what another tab does to the sheet that is open here. Called once. */
export function followOtherTabs(): void {
  void onElsewhere(async ({ kind, id }) => {
    if (kind !== 'kept' || open()?.sheet.id !== id || saving() === 'saving') return;
    const kept = await recall(id);
    if (kept) setOpen(kept);
  });
}
