import { beforeAll, describe, expect, test } from 'vitest';
import {
  drawCode,
  type Pixels,
  planPicture,
  readPicture,
  sheetOfPicture,
} from '../../src/handover/picture';
import type { Sheet } from '../../src/journey/8-sheet/sheet-schema';
import { examplePicture, exampleSheet } from '../journey/8-sheet/example';
import { decodeJpeg, encodeJpeg, shrink } from './node-jpeg';

let sheet: Sheet;
beforeAll(async () => {
  sheet = (await exampleSheet()).sheet;
});

/** The shared picture as pixels, for a photo of the given upright size. */
async function compose(of: Sheet, widthPx: number, heightPx: number): Promise<Pixels> {
  const planned = await planPicture(of, heightPx > 0 ? { widthPx, heightPx } : null);
  if (!planned.ok) throw new Error(planned.reason);
  const { layout } = planned.value;
  const photo = examplePicture(layout.photo.widthPx, Math.max(1, layout.photo.heightPx));
  const data = new Uint8ClampedArray(layout.widthPx * layout.heightPx * 4);
  for (let y = 0; y < layout.photo.heightPx; y++)
    data.set(
      photo.data.subarray(4 * y * photo.width, 4 * (y + 1) * photo.width),
      4 * y * layout.widthPx,
    );
  const picture = { width: layout.widthPx, height: layout.heightPx, data };
  drawCode(picture, planned.value);
  return picture;
}

const throughMessenger = async (picture: Pixels, longEdgePx: number, quality: number) =>
  decodeJpeg(await encodeJpeg(shrink(picture, longEdgePx), quality));

describe.each([
  ['landscape 4:3', 4000, 3000],
  ['portrait 3:4', 3000, 4000],
  ['wide 16:9', 4000, 2250],
  ['tall 9:16', 1080, 1920],
  ['small', 800, 600],
  ['narrow', 700, 2400],
])('%s photo', (_name, widthPx, heightPx) => {
  test('opens as the sheet it was after 1280 px and JPEG quality 60', async () => {
    const picture = await compose(sheet, widthPx, heightPx);
    const arrived = await throughMessenger(picture, 1280, 60);
    const read = await readPicture(arrived);
    if (!read.ok) throw new Error(read.reason);
    const { photo } = read.value;
    expect(photo!.widthPx / photo!.heightPx).toBeCloseTo(widthPx / heightPx, 1);
    const opened = sheetOfPicture(read.value, photo!);
    if (!opened.ok) throw new Error(opened.reason);
    expect(opened.value).toMatchObject({
      id: sheet.id,
      createdAt: '2026-03-04T05:06:07.000Z',
      title: sheet.title,
      readings: sheet.readings,
      conclusion: sheet.conclusion,
      measurement: sheet.measurement,
    });
    const [shot] = opened.value.shots;
    expect(shot).toMatchObject({
      photo: { ...photo, orientation: 1, focal35Mm: 26, recompressed: true },
      notes: ['few-markers'],
      bars: { horizontalMm: 149.8, verticalMm: 100.1, uMm: 0.1, name: 'Office printer' },
    });
    // Scale follows the picture: the same millimetres over fewer pixels.
    expect(shot!.reference.pxPerMm / photo!.widthPx).toBeCloseTo(9.4 / 640, 4);
    const scale = photo!.widthPx / 640;
    expect(shot!.overlay!.axis![0]![0]).toBeCloseTo(200 * scale, 0);
    expect(shot!.overlay!.axis![1]![1]).toBeCloseTo(243 * scale, 0);
    expect(shot!.overlay!.crests).toHaveLength(14);
  });
});

test('even 1000 px and quality 40 keep the code', async () => {
  const arrived = await throughMessenger(await compose(sheet, 4000, 3000), 1000, 40);
  expect(await readPicture(arrived)).toMatchObject({ ok: true });
});

test('readings alone travel as a code without photo', async () => {
  const alone = { ...sheet, shots: [], measurement: null };
  const arrived = await throughMessenger(await compose(alone, 0, 0), 1280, 60);
  const read = await readPicture(arrived);
  if (!read.ok) throw new Error(read.reason);
  expect(read.value.photo).toBeNull();
  expect(sheetOfPicture(read.value, { widthPx: 1, heightPx: 1 })).toMatchObject({
    ok: true,
    value: { shots: [], measurement: null, readings: sheet.readings },
  });
});

test("the counter's answer goes back the same way", async () => {
  const answered: Sheet = {
    ...sheet,
    counter: {
      verdict: 'confirmed',
      identified: {
        thread: '11/16-16 UN',
        connection: {
          family: 'ISO 8434-3',
          size: '-6',
          end: 'male',
          form: null,
          endTypes: ['fixed'],
        },
      },
      by: 'Counter two',
      remarks: 'Same as on the dipper; O-ring in stock.',
      parts: [{ number: 'HC-1107', note: 'elbow 90°' }],
      at: '2026-03-05T08:00:00.000Z',
    },
  };
  const arrived = await throughMessenger(await compose(answered, 4000, 3000), 1280, 60);
  const read = await readPicture(arrived);
  if (!read.ok) throw new Error(read.reason);
  expect(sheetOfPicture(read.value, read.value.photo!)).toMatchObject({
    value: { counter: answered.counter },
  });
});

test('what was measured before travels with what holds now, each with its time and party', async () => {
  const again: Sheet = {
    ...sheet,
    handedOver: true,
    measuredAt: '2026-03-05T08:00:00.000Z',
    measuredBy: 'counter',
    earlier: [
      {
        at: '2026-03-04T05:06:07.000Z',
        by: 'sender',
        pitchMm: { value: 1.5881, u: 0.0031 },
        majorDiameterMm: { value: 17.21, u: 0.26 },
      },
    ],
  };
  const arrived = await throughMessenger(await compose(again, 4000, 3000), 1280, 60);
  const read = await readPicture(arrived);
  if (!read.ok) throw new Error(read.reason);
  const { handedOver, measuredAt, measuredBy, earlier } = again;
  expect(sheetOfPicture(read.value, read.value.photo!)).toMatchObject({
    value: { handedOver, measuredAt, measuredBy, earlier },
  });
});

test('a plain photo, and a picture cut above the code, are told apart', async () => {
  expect(await readPicture(examplePicture(640, 480))).toMatchObject({ reason: 'no-code' });
  const picture = await compose(sheet, 1600, 1200);
  const fromRow = 1100;
  const cropped = {
    width: picture.width,
    height: picture.height - fromRow,
    data: picture.data.slice(4 * fromRow * picture.width),
  };
  expect(await readPicture(cropped)).toMatchObject({ reason: 'cropped-picture' });
});
