import fc from 'fast-check';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { beforeAll, expect, test } from 'vitest';
import { archiveFromFile, archiveToFile } from '../../src/handover/archive';
import { damaged } from '../damaged';
import { exampleSheet } from '../journey/8-sheet/example';

let example: Awaited<ReturnType<typeof exampleSheet>>;
let file: Uint8Array;
beforeAll(async () => {
  example = await exampleSheet();
  const written = archiveToFile([example]);
  if (!written.ok) throw new Error(written.reason);
  file = written.value.file;
});

test('sheets come back as they were', () => {
  const { sheet, photos } = example;
  expect(archiveFromFile(file)).toEqual({
    ok: true,
    value: { sheets: [{ sheet, photos }], refused: [] },
  });
});

test('one spoilt sheet does not spoil the others', () => {
  const spoilt = { sheet: { ...example.sheet, title: 'x'.repeat(999) }, photos: example.photos };
  expect(archiveToFile([spoilt, example])).toMatchObject({ ok: true, value: { leftOut: 1 } });
  const parts = unzipSync(file);
  const other = '00000000-0000-4000-8000-000000000001';
  const table = {
    format: 'crestwise-drawer',
    version: 1,
    sheets: [other, example.sheet.id, example.sheet.id],
  };
  const read = archiveFromFile(
    zipSync({ ...parts, 'drawer.json': strToU8(JSON.stringify(table)) }, { level: 0 }),
  );
  expect(read).toMatchObject({
    ok: true,
    value: { refused: [{ id: other, reason: 'not-a-sheet' }] },
  });
  expect(read.ok && read.value.sheets).toHaveLength(1);
});

test('other files and newer archives are refused kindly', () => {
  for (const other of [new Uint8Array(0), strToU8('hello'), zipSync({ a: strToU8('b') })])
    expect(archiveFromFile(other)).toMatchObject({ reason: 'not-an-archive' });
  const newer = { format: 'crestwise-drawer', version: 2 };
  expect(archiveFromFile(zipSync({ 'drawer.json': strToU8(JSON.stringify(newer)) }))).toMatchObject(
    { reason: 'newer-version' },
  );
});

test('packed parts that swell beyond the archive are not unpacked', () => {
  const id = example.sheet.id;
  const table = { format: 'crestwise-drawer', version: 1, sheets: [id] };
  const bomb = zipSync(
    {
      'drawer.json': strToU8(JSON.stringify(table)),
      [`sheets/${id}.crestwise`]: new Uint8Array(50e6),
    },
    { level: 9 },
  );
  expect(archiveFromFile(bomb)).toMatchObject({
    ok: true,
    value: { sheets: [], refused: [{ id }] },
  });
});

test('no damage makes reading throw', () => {
  fc.assert(
    fc.property(damaged(file), (copy) => {
      archiveFromFile(copy);
    }),
    { seed: 8, numRuns: 100 },
  );
});
