import fc from 'fast-check';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { beforeAll, describe, expect, test } from 'vitest';
import { bringUpToDate, readSheet } from '../../../src/journey/8-sheet/read-sheet';
import { sheetFromFile, sheetToFile } from '../../../src/journey/8-sheet/sheet-file';
import type { Sheet } from '../../../src/journey/8-sheet/sheet-schema';
import { damaged } from '../../damaged';
import { exampleSheet, secrets } from './example';

let sheet: Sheet;
let photos: Uint8Array[];
let camera: Uint8Array;
let file: Uint8Array;
beforeAll(async () => {
  ({ sheet, photos, camera } = await exampleSheet());
  const written = sheetToFile({ sheet, photos });
  if (!written.ok) throw new Error(written.reason);
  file = written.value;
});

// biome-ignore lint/suspicious/noExplicitAny: tests bend the JSON in ways no type allows
type Raw = any;

/** The example as a file, its JSON changed by hand. */
function fileWith(change: (raw: Raw) => unknown, photo = photos[0]!): Uint8Array {
  const raw = JSON.parse(JSON.stringify(sheet));
  const changed = change(raw) ?? raw;
  return zipSync({ 'sheet.json': strToU8(JSON.stringify(changed)), 'photo-1.jpg': photo });
}

test('a sheet comes back as it was', () => {
  expect(sheetFromFile(file)).toEqual({ ok: true, value: { sheet, photos } });
});

test('a sheet from before seats were drawn opens as it was; drawn, they come back', () => {
  const old = sheetFromFile(fileWith((raw) => void delete raw.shots[0].overlay.ends));
  expect(old).toEqual({ ok: true, value: { sheet, photos } });
  const ends = [
    {
      end: 0,
      seat: 'cone-37',
      lines: [
        [
          [190.5, 170],
          [160, 200.25],
        ],
        [
          [190.5, 310],
          [160, 280],
        ],
      ],
    },
  ];
  const drawn = sheetFromFile(
    fileWith((raw) => {
      raw.shots[0].overlay.ends = ends;
    }),
  );
  if (!drawn.ok) throw new Error(drawn.reason);
  expect(drawn.value.sheet.shots[0]!.overlay!.ends).toEqual(ends);
  const unknown = fileWith((raw) => {
    raw.shots[0].overlay.ends = [{ ...ends[0], seat: 'cone-24' }];
  });
  expect(sheetFromFile(unknown).ok).toBe(false);
});

test('equal sheets give equal files', () => {
  const again = sheetToFile({ sheet, photos });
  expect(again.ok && Buffer.compare(again.value, file)).toBe(0);
});

test('no EXIF, place, owner or file name leaves, even from a photo that was not stripped', () => {
  const written = sheetToFile({ sheet, photos: [camera] });
  if (!written.ok) throw new Error(written.reason);
  const everything = Buffer.concat([written.value, ...Object.values(unzipSync(written.value))]);
  for (const secret of [...secrets, 'Exif\0'])
    expect(everything.includes(Buffer.from(secret, 'latin1')), secret).toBe(false);
});

test('a photo that came with metadata is kept without', () => {
  const read = sheetFromFile(fileWith(() => undefined, camera));
  expect(read.ok && Buffer.compare(read.value.photos[0]!, photos[0]!)).toBe(0);
});

test('a sheet from before the flash was kept opens: it did not fire', () => {
  const read = sheetFromFile(
    fileWith((raw) => {
      delete raw.shots[0].photo.flashFired;
    }),
  );
  expect(read).toEqual({ ok: true, value: { sheet, photos } });
});

test('that the flash fired comes back, with its note', () => {
  const read = sheetFromFile(
    fileWith((raw) => {
      raw.shots[0].photo.flashFired = true;
      raw.shots[0].notes.push('flash-fired');
    }),
  );
  const shot = read.ok ? read.value.sheet.shots[0]! : null;
  expect(shot?.photo.flashFired).toBe(true);
  expect(shot?.notes).toEqual(['few-markers', 'flash-fired']);
});

test('readings alone make a sheet', () => {
  const alone = { ...sheet, shots: [], measurement: null };
  const written = sheetToFile({ sheet: alone, photos: [] });
  expect(written.ok && sheetFromFile(written.value)).toEqual({
    ok: true,
    value: { sheet: alone, photos: [] },
  });
});

describe('refused', () => {
  test('a newer version, kindly', () => {
    const read = sheetFromFile(fileWith((raw) => ({ ...raw, version: 2, shots: 'who knows' })));
    expect(read).toMatchObject({ ok: false, reason: 'newer-version' });
    expect(!read.ok && read.advice).toMatch(/newer/);
  });

  test('other files', () => {
    for (const other of [
      new Uint8Array(0),
      strToU8('hello'),
      photos[0]!,
      zipSync({ a: strToU8('b') }),
    ])
      expect(sheetFromFile(other)).toMatchObject({ ok: false, reason: 'not-a-sheet' });
  });

  test('a photo that is missing, cut or of another size', () => {
    const photo = photos[0]!;
    const noPhoto = zipSync({ 'sheet.json': strToU8(JSON.stringify(sheet)) });
    const cut = fileWith(() => undefined, photo.subarray(0, 900));
    const otherSize = fileWith((raw) => {
      raw.shots[0].photo.widthPx = 641;
    });
    for (const damaged of [noPhoto, cut, otherSize])
      expect(sheetFromFile(damaged)).toMatchObject({ ok: false, reason: 'damaged-photo' });
  });

  test('values out of range', () => {
    const changes: ((raw: Raw) => void)[] = [
      (raw) => (raw.measurement.pitchMm.u = -1),
      (raw) => (raw.measurement.correlation = 2),
      (raw) => (raw.measurement.pitchMm.value = '1.5'),
      (raw) => (raw.measurement.pitchMm.value = null),
      (raw) => (raw.conclusion.decision.state = 'certain'),
      (raw) => (raw.id = '../../etc'),
      (raw) => (raw.createdAt = 'yesterday'),
      (raw) => (raw.shots[0].profile.leftMm = [1]),
      (raw) => (raw.readings = [{ kind: 'pitch-gauge', pitchMm: 0, text: '' }]),
      (raw) => (raw.shots = Array.from({ length: 9 }, () => raw.shots[0])),
      (raw) => (raw.shots[0].photo.flashFired = 1),
      (raw) => (raw.title = 'x'.repeat(401)),
      (raw) => (raw.shots[0].overlay.outline = [Array.from({ length: 20_001 }, () => [0, 0])]),
    ];
    for (const change of changes)
      expect(sheetFromFile(fileWith((raw) => void change(raw))), String(change)).toMatchObject({
        ok: false,
        reason: 'damaged-sheet',
      });
  });

  test('a file that unpacks to more than any sheet', () => {
    const bomb = zipSync({ 'sheet.json': new Uint8Array(9e6) }, { level: 9 });
    expect(bomb.length).toBeLessThan(20_000);
    expect(sheetFromFile(bomb)).toMatchObject({ ok: false, reason: 'too-large' });
  });

  test('a size in the directory that lies does not unpack more than it says', () => {
    const bomb = zipSync({ 'sheet.json': new Uint8Array(9e6) }, { level: 9 });
    const view = new DataView(bomb.buffer, bomb.byteOffset);
    for (let i = 0; i + 4 < bomb.length; i++)
      if (view.getUint32(i, true) === 9e6) view.setUint32(i, 64, true);
    expect(sheetFromFile(bomb).ok).toBe(false);
  });
});

describe('hostile', () => {
  test('prototype keys change nothing and are not kept', () => {
    const json = JSON.stringify(sheet).replace(
      '"format"',
      '"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},"format"',
    );
    const read = sheetFromFile(zipSync({ 'sheet.json': strToU8(json), 'photo-1.jpg': photos[0]! }));
    expect(read).toEqual({ ok: true, value: { sheet, photos } });
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
    expect(read.ok && Object.keys(read.value.sheet)).not.toContain('__proto__');
    expect(read.ok && Object.hasOwn(read.value.sheet, 'constructor')).toBe(false);
  });

  test('names in the archive other than ours are never unpacked', () => {
    const parts = { ...unzipSync(file), '../../evil.js': strToU8('x'), __proto__x: strToU8('y') };
    expect(sheetFromFile(zipSync(parts))).toEqual({ ok: true, value: { sheet, photos } });
  });

  test('markup stays text in every string', () => {
    const markup = '<img src=x onerror=alert(1)>';
    const read = sheetFromFile(
      fileWith((raw) => {
        raw.title = markup;
        raw.remarks = markup;
        raw.conclusion.threads[0].designation = markup;
        raw.readings[0].text = markup;
      }),
    );
    expect(read.ok && read.value.sheet.title).toBe(markup);
  });
});

test('no JSON makes reading throw', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (raw) => {
      expect(readSheet(raw).ok).toBe(false);
    }),
    { seed: 8 },
  );
});

test('no change to one value of a sheet makes reading throw, and what is read writes again', () => {
  const paths = leafPaths(JSON.parse(JSON.stringify(sheet)));
  fc.assert(
    fc.property(fc.constantFrom(...paths), fc.jsonValue({ maxDepth: 2 }), (path, value) => {
      const raw = JSON.parse(JSON.stringify(sheet));
      let target = raw;
      for (const key of path.slice(0, -1)) target = target[key];
      target[path.at(-1)!] = value;
      const read = readSheet(raw);
      if (read.ok) expect(readSheet(JSON.parse(JSON.stringify(read.value)))).toEqual(read);
    }),
    { seed: 8, numRuns: 300 },
  );
});

test('no damage to the file makes reading throw', () => {
  fc.assert(
    fc.property(damaged(file), (copy) => {
      sheetFromFile(copy);
    }),
    { seed: 8, numRuns: 100 },
  );
});

test('older versions climb one migration at a time', () => {
  const migrations = {
    1: (raw: Record<string, unknown>) => ({ ...raw, remarks: raw.note }),
    2: (raw: Record<string, unknown>) => ({ ...raw, title: String(raw.remarks).toUpperCase() }),
  };
  expect(bringUpToDate({ version: 1, note: 'a' }, 1, { to: 3, migrations })).toMatchObject({
    value: { version: 3, remarks: 'a', title: 'A' },
  });
  expect(bringUpToDate({ version: 4 }, 4, { to: 3, migrations })).toMatchObject({
    reason: 'newer-version',
  });
});

test('the JSON inside is readable by anyone', () => {
  const json = JSON.parse(strFromU8(unzipSync(file)['sheet.json']!));
  expect(json).toMatchObject({ format: 'crestwise-sheet', version: 1, title: sheet.title });
});

function leafPaths(value: unknown, path: (string | number)[] = []): (string | number)[][] {
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, inner]) => leafPaths(inner, [...path, key]));
}
