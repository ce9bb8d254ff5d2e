import { beforeAll, expect, test } from 'vitest';
import {
  decodePictureCode,
  encodePictureCode,
  sheetFromCode,
} from '../../../src/handover/picture-code';
import { readSheet } from '../../../src/journey/8-sheet/read-sheet';
import { sheetFromFile, sheetToFile } from '../../../src/journey/8-sheet/sheet-file';
import type { Sheet } from '../../../src/journey/8-sheet/sheet-schema';
import { noWearReadings } from '../../../src/journey/wear/wear-readings';
import type { WearPart } from '../../../src/journey/wear/wear-schema';
import { exampleSheet } from '../8-sheet/example';

const wear: WearPart = {
  thread: '3/4-16 UNF',
  class: '3A',
  readings: {
    ...noWearReadings,
    seal: 'scratched',
    notGoRing: 'beyond-two',
    caliper: { end: { mm: 18.72, text: '18.72mm' }, middle: null, last: null },
  },
};

let sheet: Sheet;
let photos: Uint8Array[];
beforeAll(async () => {
  const example = await exampleSheet();
  photos = example.photos;
  const crest = { turn: 1, atMm: 0.4, heightMm: 9.3, u: 0.04, uOwnMm: 0.01, shortMm: 0.12 };
  const crests = [{ ...crest, side: 'left' as const }];
  sheet = { ...example.sheet, wear, shots: example.sheet.shots.map((s) => ({ ...s, crests })) };
});

test('what was asked and answered of wear comes back from a sheet file, and single crests with it', () => {
  const file = sheetToFile({ sheet, photos });
  if (!file.ok) throw new Error(file.reason);
  expect(sheetFromFile(file.value)).toEqual({ ok: true, value: { sheet, photos } });
});

test('and through the code on a shared picture, which leaves the crests behind', () => {
  const photo = { widthPx: 640, heightPx: 480, pictureWidthPx: 640 };
  const code = encodePictureCode(sheet, photo);
  if (!code.ok) throw new Error(code.reason);
  const coded = decodePictureCode(code.value);
  if (!coded.ok) throw new Error(coded.reason);
  const arrived = sheetFromCode(coded.value, photo);
  expect(arrived.ok && arrived.value.wear).toEqual(wear);
  expect(arrived.ok && arrived.value.shots[0]!.crests).toEqual([]);
});

test('a sheet from before wear was asked opens without it', () => {
  const { wear: _, ...raw } = JSON.parse(JSON.stringify(sheet));
  delete raw.shots[0].crests;
  const read = readSheet(raw);
  expect(read.ok && read.value.wear).toBeNull();
  expect(read.ok && read.value.shots[0]!.crests).toEqual([]);
});

test('an answer that is none is a damaged sheet, not a guess', () => {
  const raw = JSON.parse(JSON.stringify(sheet));
  raw.wear.readings.seal = 'fine';
  expect(readSheet(raw)).toMatchObject({ ok: false, reason: 'damaged-sheet' });
});
