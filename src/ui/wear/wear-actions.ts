import type { WearPart } from '../../journey/wear/wear-schema';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { change, openSheet } from '../work/sheets';
import { freshWear } from './wear-of-sheet';

export function changeWear(update: (now: WearPart) => WearPart): Promise<void> {
  return change(({ sheet }) => ({ sheet: { ...sheet, wear: update(sheet.wear ?? freshWear()) } }));
}

export function changeWearReadings(
  update: (now: WearPart['readings']) => Partial<WearPart['readings']>,
): Promise<void> {
  return changeWear((wear) => ({
    ...wear,
    readings: { ...wear.readings, ...update(wear.readings) },
  }));
}

/** Takes the question off the sheet; what was answered can be brought back. */
export async function leaveOutWear(): Promise<void> {
  const before = openSheet()?.sheet.wear;
  if (!before) return;
  await change(({ sheet }) => ({ sheet: { ...sheet, wear: null } }));
  notify(t().wear.stopped, { label: t().drawer.undo, run: () => void changeWear(() => before) });
}
