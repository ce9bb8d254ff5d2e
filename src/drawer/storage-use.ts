export interface StorageUse {
  /** By the browser's own estimate, everything of this origin. Null where it gives none. */
  readonly usedBytes: number | null;
  /** Whether the browser promised not to clear the drawer by itself. */
  readonly persistent: boolean;
}

export async function storageUse(storage = globalThis.navigator?.storage): Promise<StorageUse> {
  const [estimate, persistent] = await Promise.all([
    storage?.estimate?.().catch(() => undefined),
    storage?.persisted?.().catch(() => false),
  ]);
  return {
    usedBytes: estimate?.usage ?? null,
    persistent: persistent ?? false,
  };
}

/** Asks the browser to keep the drawer when space runs short. Best after the first kept sheet:
 *  browsers grant it more readily once a page is in use. */
export async function askToPersist(storage = globalThis.navigator?.storage): Promise<boolean> {
  try {
    return (await storage?.persist?.()) ?? false;
  } catch {
    return false;
  }
}
