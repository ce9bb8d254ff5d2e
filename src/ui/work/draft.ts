import { type DBSchema, openDB } from 'idb';
import type { MeasureOptions } from '../../journey/identification';
import type { WearPart } from '../../journey/wear/wear-schema';
import { heldInMemory, holdInMemory } from '../../offline/worker-memory';

/** The photo in hand, kept until it is measured, so that a reload (phones do it when
 *  the camera opens, and after a crash) loses nothing. */
export interface Draft {
  readonly photo: Blob;
  readonly at: string;
  readonly options: Partial<MeasureOptions>;
  /** What is to be asked of wear; drafts of older versions have none. */
  readonly wear?: WearPart | null;
}

interface DraftDb extends DBSchema {
  draft: { key: string; value: Draft };
}

const open = () =>
  openDB<DraftDb>('crestwise-draft', 1, {
    upgrade: (db) => {
      db.createObjectStore('draft');
    },
  });

/** A browser without storage still measures; only the reload safety is gone. */
async function quietly<T>(work: () => Promise<T>, otherwise: T): Promise<T> {
  try {
    return await work();
  } catch {
    return otherwise;
  }
}

/** As long as a bank card may lie in the photo, unpainted: for a reload, but written nowhere. */
export const holdDraft = (draft: Draft): Promise<void> =>
  quietly(() => holdInMemory(draft), undefined);

export const keepDraft = (draft: Draft): Promise<void> =>
  quietly(async () => {
    const db = await open();
    await db.put('draft', draft, 'photo');
    db.close();
    await holdInMemory(null);
  }, undefined);

export const recallDraft = (): Promise<Draft | null> =>
  quietly(async () => {
    // What is only held is newer than what is kept.
    const held = (await heldInMemory()) as Draft | null;
    if (held) return held;
    const db = await open();
    const draft = await db.get('draft', 'photo');
    db.close();
    return draft ?? null;
  }, null);

export const dropDraft = (): Promise<void> =>
  quietly(async () => {
    await holdInMemory(null);
    const db = await open();
    await db.delete('draft', 'photo');
    db.close();
  }, undefined);
