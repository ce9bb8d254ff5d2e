import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { z } from 'zod';
import { ok, type Result, refuse } from '../quantity/result';
import type { DrawerEntry } from './drawer-entry';

interface DrawerSchema extends DBSchema {
  /** What the list shows, apart from the sheets so that a long list opens at once. */
  entries: { key: string; value: DrawerEntry };
  /** Sheets as JSON; read back through `readSheet`, because another version may have written them. */
  sheets: { key: string; value: unknown };
  /** Stripped JPEGs by sheet and shot. */
  photos: { key: [sheetId: string, shot: number]; value: Uint8Array };
}
export type DrawerDb = IDBPDatabase<DrawerSchema>;

export type DrawerRefusal = 'no-room' | 'storage-off' | 'newer-drawer';

const change = z.object({ kind: z.enum(['kept', 'removed', 'restored']), id: z.uuid() });
export type DrawerChange = z.infer<typeof change>;

export interface DrawerConnection {
  /** Runs work on the open database; storage trouble becomes a refusal. Transactions either
   *  happen whole or not at all, also when the page is closed half-way. */
  run<T>(work: (db: DrawerDb) => Promise<T>): Promise<Result<T, DrawerRefusal>>;
  /** Tells the other tabs. */
  announce(change: DrawerChange): void;
  /** Hears of changes made in other tabs; gives back how to stop. */
  onElsewhere(heard: (change: DrawerChange) => void): () => void;
  close(): Promise<void>;
}

const dbVersion = 1;

/** The drawer on this device. Opens on first use, steps aside when a newer tab needs to upgrade
 *  it, and opens again when it is needed again. */
export function connectDrawer(name = 'crestwise-drawer'): DrawerConnection {
  let opening: Promise<DrawerDb> | undefined;
  const forget = () => {
    opening = undefined;
  };
  const open = (): Promise<DrawerDb> => {
    opening ??= openDB<DrawerSchema>(name, dbVersion, {
      upgrade: (db, oldVersion) => {
        if (oldVersion < 1) {
          db.createObjectStore('entries', { keyPath: 'id' });
          db.createObjectStore('sheets');
          db.createObjectStore('photos');
        }
      },
      blocking: (_current, _blocked, event) => {
        (event.target as IDBDatabase).close();
        forget();
      },
      terminated: forget,
    }).catch((cause) => {
      forget();
      throw cause;
    });
    return opening;
  };

  const channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel(name) : undefined;
  return {
    run: async (work) => {
      try {
        return ok(await work(await open()));
      } catch (cause) {
        return storageRefusal(cause);
      }
    },
    announce: (made) => channel?.postMessage(made),
    onElsewhere: (heard) => {
      const listen = (event: MessageEvent) => {
        const made = change.safeParse(event.data);
        if (made.success) heard(made.data);
      };
      channel?.addEventListener('message', listen);
      return () => channel?.removeEventListener('message', listen);
    },
    close: async () => {
      channel?.close();
      const db = await opening?.catch(() => undefined);
      forget();
      db?.close();
    },
  };
}

/** Errors of the program itself are thrown on; those of storage are the user's to know. */
function storageRefusal(cause: unknown): Result<never, DrawerRefusal> {
  const name = cause instanceof Error || cause instanceof DOMException ? cause.name : '';
  if (name === 'QuotaExceededError')
    return refuse(
      'no-room',
      'This device has no room left for sheets: export the drawer, then delete sheets you no longer need.',
    );
  if (name === 'VersionError')
    return refuse('newer-drawer', 'Another tab runs a newer Crestwise: reload this page.');
  if (cause instanceof DOMException || typeof indexedDB === 'undefined')
    return refuse(
      'storage-off',
      'The browser keeps nothing for this page (private window or storage blocked): export the sheet as a file.',
    );
  throw cause;
}
