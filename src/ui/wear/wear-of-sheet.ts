import type { Sheet } from '../../journey/8-sheet/sheet-schema';
import { assessWear, type WearAssessment } from '../../journey/wear/assess';
import { noWearReadings } from '../../journey/wear/wear-readings';
import type { WearPart } from '../../journey/wear/wear-schema';
import type { Thread } from '../../standards/thread';
import { findThread } from '../../standards/threads';

export const freshWear = (of: Partial<Omit<WearPart, 'readings'>> = {}): WearPart => ({
  thread: null,
  class: null,
  ...of,
  readings: structuredClone(noWearReadings),
});

/** Which thread the part should have: the one that was named, else the one found. */
export function expectedThread(sheet: Pick<Sheet, 'wear' | 'conclusion'>): Thread | null {
  const name = sheet.wear?.thread ?? sheet.conclusion.decision.thread;
  return name === null ? null : findThread(name);
}

/** Limits and rings here are of male threads. */
export const isFemale = ({ conclusion }: Pick<Sheet, 'conclusion'>): boolean =>
  conclusion.end === 'female';

/** Null while nobody asked, while the thread is open, and for a female end. */
export function wearOfSheet(
  sheet: Pick<Sheet, 'wear' | 'conclusion' | 'measurement' | 'shots'>,
): WearAssessment | null {
  const thread = sheet.wear && !isFemale(sheet) ? expectedThread(sheet) : null;
  if (!sheet.wear || !thread) return null;
  return assessWear({
    thread,
    className: sheet.wear.class,
    measurement: sheet.measurement,
    shots: sheet.shots,
    readings: sheet.wear.readings,
  });
}
