import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { exportDrawer, importDrawer } from '../../src/drawer/drawer-archive';
import {
  connectDrawer,
  type DrawerChange,
  type DrawerConnection,
} from '../../src/drawer/drawer-connection';
import { entryMatches } from '../../src/drawer/drawer-entry';
import {
  keepSheet,
  listDrawer,
  recallSheet,
  removeSheet,
  restoreSheet,
  sweepRemoved,
} from '../../src/drawer/kept-sheets';
import { askToPersist, storageUse } from '../../src/drawer/storage-use';
import type { Sheet } from '../../src/journey/8-sheet/sheet-schema';
import type { Result } from '../../src/quantity/result';
import { exampleSheet } from '../journey/8-sheet/example';

let example: Awaited<ReturnType<typeof exampleSheet>>;
beforeAll(async () => {
  example = await exampleSheet();
});

let count = 0;
let name: string;
let drawer: DrawerConnection;
beforeEach(() => {
  name = `drawer-${++count}`;
  drawer = connectDrawer(name);
});
afterEach(async () => {
  vi.restoreAllMocks();
  await drawer.close();
});

const thumbnail = Uint8Array.of(1, 2, 3);
const another = (id: number, change: Partial<Sheet> = {}): Sheet => ({
  ...example.sheet,
  id: `00000000-0000-4000-8000-${String(id).padStart(12, '0')}`,
  ...change,
});

async function value<T>(result: Result<T> | Promise<Result<T>>): Promise<T> {
  const settled = await result;
  if (!settled.ok) throw new Error(settled.reason);
  return settled.value;
}

test('a sheet survives closing and opening again', async () => {
  await value(keepSheet(drawer, example.sheet, example.photos, thumbnail));
  await drawer.close();
  drawer = connectDrawer(name);
  expect(await value(recallSheet(drawer, example.sheet.id))).toEqual({
    sheet: example.sheet,
    photos: example.photos,
  });
  const [entry] = await value(listDrawer(drawer));
  expect(entry).toMatchObject({
    id: example.sheet.id,
    title: 'Boom cylinder, rod side',
    likeliestThread: '11/16-16 UN',
    decision: { state: 'settled' },
    verdict: 'open',
    thumbnail,
    photoBytes: example.photos[0]!.length,
  });
});

test('a change without photos keeps those that are there', async () => {
  await value(keepSheet(drawer, example.sheet, example.photos, thumbnail));
  await value(keepSheet(drawer, { ...example.sheet, title: 'Dipper' }));
  const { sheet, photos } = await value(recallSheet(drawer, example.sheet.id));
  expect(sheet.title).toBe('Dipper');
  expect(photos).toEqual(example.photos);
  expect(await value(listDrawer(drawer))).toMatchObject([{ title: 'Dipper', thumbnail }]);
});

test('the list shows the latest change first and finds by words', async () => {
  await value(keepSheet(drawer, another(1, { updatedAt: '2026-01-01T00:00:00.000Z' })));
  await value(
    keepSheet(drawer, another(2, { updatedAt: '2026-02-01T00:00:00.000Z', title: 'Swivel' })),
  );
  const list = await value(listDrawer(drawer));
  expect(list.map((entry) => entry.title)).toEqual(['Swivel', 'Boom cylinder, rod side']);
  const found = (search: string) => list.filter((entry) => entryMatches(entry, search)).length;
  expect([
    found(''),
    found('swivel'),
    found('8434-3 11/16'),
    found('SWIVEL 9'),
    found('rod boom'),
    // What the trade calls ISO 8434-3.
    found('orfs'),
    found('jic'),
  ]).toEqual([2, 1, 2, 0, 1, 2, 0]);
});

test('removing can be undone until it is swept', async () => {
  await value(keepSheet(drawer, example.sheet, example.photos, thumbnail));
  const at = new Date('2026-05-01T12:00:00Z');
  await value(removeSheet(drawer, example.sheet.id, at));
  expect(await value(listDrawer(drawer))).toEqual([]);
  await value(restoreSheet(drawer, example.sheet.id));
  expect(await value(listDrawer(drawer))).toHaveLength(1);
  expect((await value(recallSheet(drawer, example.sheet.id))).photos).toEqual(example.photos);

  await value(removeSheet(drawer, example.sheet.id, at));
  expect(await value(sweepRemoved(drawer, new Date('2026-05-01T11:59:59Z')))).toBe(0);
  expect(await value(sweepRemoved(drawer, new Date('2026-05-01T12:00:01Z')))).toBe(1);
  expect(await recallSheet(drawer, example.sheet.id)).toMatchObject({ reason: 'not-here' });
  const photosLeft = await value(drawer.run((db) => db.count('photos')));
  expect(photosLeft).toBe(0);
});

test('a sheet that could not be read again is not kept', async () => {
  const spoilt = { ...example.sheet, title: 'x'.repeat(1000) };
  expect(await keepSheet(drawer, spoilt)).toMatchObject({ reason: 'damaged-sheet' });
  expect(await value(listDrawer(drawer))).toEqual([]);
});

test('a newer sheet left by a newer version is refused kindly', async () => {
  await value(keepSheet(drawer, example.sheet));
  await value(
    drawer.run((db) => db.put('sheets', { ...example.sheet, version: 9 }, example.sheet.id)),
  );
  expect(await recallSheet(drawer, example.sheet.id)).toMatchObject({ reason: 'newer-version' });
});

test('a list line that another version wrote is derived anew from its sheet', async () => {
  await value(keepSheet(drawer, example.sheet, example.photos, thumbnail));
  const id = example.sheet.id;
  await value(drawer.run((db) => db.put('entries', { id, name: 'other shape' } as never)));
  expect(await value(listDrawer(drawer))).toMatchObject([
    { id, title: example.sheet.title, photoBytes: example.photos[0]!.length, thumbnail: null },
  ]);
});

describe('storage trouble', () => {
  test('no room: refused with advice, and nothing half kept', async () => {
    await value(keepSheet(drawer, example.sheet, example.photos, thumbnail));
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...args
    ) {
      if (this.name === 'photos') throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, args as [unknown]);
    });
    const refused = await keepSheet(drawer, another(7), example.photos, thumbnail);
    expect(refused).toMatchObject({ reason: 'no-room' });
    expect(!refused.ok && refused.advice).toMatch(/delete sheets/);
    vi.restoreAllMocks();
    expect(await value(listDrawer(drawer))).toHaveLength(1);
    expect(await recallSheet(drawer, another(7).id)).toMatchObject({ reason: 'not-here' });
  });

  test('no room, noticed only when the transaction commits', async () => {
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...args
    ) {
      const request = put.apply(this, args as [unknown]);
      if (this.name === 'photos') {
        Object.defineProperty(this.transaction, 'error', {
          value: new DOMException('full', 'QuotaExceededError'),
        });
        this.transaction.abort();
      }
      return request;
    });
    const refused = await keepSheet(drawer, example.sheet, example.photos);
    expect(refused).toMatchObject({ reason: 'no-room' });
    expect(await value(listDrawer(drawer))).toEqual([]);
  });

  test('storage switched off', async () => {
    vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('blocked', 'SecurityError');
    });
    expect(await listDrawer(drawer)).toMatchObject({ reason: 'storage-off' });
  });

  test('a newer tab has upgraded the drawer', async () => {
    await value(listDrawer(drawer));
    // Our open connection steps aside, or this would wait for ever.
    const newer = await openDB(name, 99);
    expect(await listDrawer(drawer)).toMatchObject({ reason: 'newer-drawer' });
    newer.close();
  });
});

test('another tab hears of changes, and junk on the channel is ignored', async () => {
  const other = connectDrawer(name);
  const heard: DrawerChange[] = [];
  const stop = other.onElsewhere((change) => heard.push(change));
  const junk = new BroadcastChannel(name);
  junk.postMessage({ kind: 'kept', id: '<img>' });
  junk.postMessage(null);
  await value(keepSheet(drawer, example.sheet));
  await value(removeSheet(drawer, example.sheet.id, new Date()));
  await vi.waitFor(() => expect(heard).toHaveLength(2));
  expect(heard).toEqual([
    { kind: 'kept', id: example.sheet.id },
    { kind: 'removed', id: example.sheet.id },
  ]);
  stop();
  junk.close();
  await other.close();
});

describe('the whole drawer as one file', () => {
  const noThumbnail = async () => null;

  test('export and import in a fresh profile give the same drawer', async () => {
    await value(keepSheet(drawer, example.sheet, example.photos, thumbnail));
    await value(keepSheet(drawer, another(2, { shots: [], measurement: null }), [], null));
    const { file, leftOut } = await value(exportDrawer(drawer));
    expect(leftOut).toBe(0);
    const fresh = connectDrawer(`${name}-fresh`);
    expect(await value(importDrawer(fresh, file, async () => thumbnail))).toEqual({
      added: 2,
      replaced: 0,
      unchanged: 0,
      refused: 0,
    });
    expect(await value(recallSheet(fresh, example.sheet.id))).toEqual({
      sheet: example.sheet,
      photos: example.photos,
    });
    expect(await value(listDrawer(fresh))).toHaveLength(2);
    await fresh.close();
  });

  test('the later change wins', async () => {
    const older = another(1, { updatedAt: '2026-01-01T00:00:00.000Z', title: 'older' });
    const later = another(1, { updatedAt: '2026-01-02T00:00:00.000Z', title: 'later' });
    await value(keepSheet(drawer, later, example.photos, null));
    const { file: laterFile } = await value(exportDrawer(drawer));
    await value(keepSheet(drawer, older, example.photos, null));
    expect(await value(importDrawer(drawer, laterFile, noThumbnail))).toMatchObject({
      replaced: 1,
    });
    expect(await value(importDrawer(drawer, laterFile, noThumbnail))).toMatchObject({
      unchanged: 1,
    });
    expect(await value(listDrawer(drawer))).toMatchObject([{ title: 'later' }]);
  });
});

test('storage use is told, and its absence too', async () => {
  expect(
    await storageUse({
      estimate: async () => ({ usage: 5, quota: 100 }),
      persisted: async () => true,
    } as StorageManager),
  ).toEqual({ usedBytes: 5, persistent: true });
  expect(await storageUse({} as StorageManager)).toEqual({
    usedBytes: null,
    persistent: false,
  });
  expect(await askToPersist({ persist: async () => true } as StorageManager)).toBe(true);
  expect(await askToPersist({} as StorageManager)).toBe(false);
});
