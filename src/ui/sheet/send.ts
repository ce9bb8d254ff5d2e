import type { PictureLabel } from '../../handover/picture-label';
import { stampOf, whatHolds } from '../../journey/8-sheet/what-holds';
import { endOf } from '../end/end-choice';
import { connectionTitle } from '../identification/connection-words';
import { drawnFeatures, featureName } from '../identification/drawn-features';
import { headline } from '../identification/headline';
import { readingText } from '../identification/reading-text';
import { loadTables } from '../identification/table-rows';
import { dateTime, number, plusMinus } from '../language/format';
import { t } from '../language/language';
import { tradeName } from '../language/trade-names';
import { notify } from '../shell/notices';
import { wearLines } from '../wear/wear-print';
import { saveFile, shareFile } from '../widgets/save-file';
import { dimensionWords } from '../widgets/ThreadPicture';
import { nameOf, type Sheet, type SheetWithPhotos } from '../work/open-sheet';
import { uprightPhoto } from '../work/photo-bytes';
import { change, openSheet } from '../work/sheets';

const fileName = (sheet: Sheet, extension: string) =>
  `crestwise-${sheet.id.slice(0, 8)}${extension}`;

/** Leaves an open question to the counter; goes with the sheet from then on. */
export async function leaveToCounter(): Promise<void> {
  await change(({ sheet }) => ({ sheet: { ...sheet, handedOver: true } }));
}

/** The open sheet as a picture, through the device's share sheet or as a download. */
export async function sendPicture(): Promise<void> {
  const item = openSheet();
  if (!item) return;
  const made = await pictureOf(item);
  if (!made) return;
  const file = new File([made], fileName(item.sheet, '.jpg'), { type: made.type });
  if ((await shareFile(file)) === 'saved') notify(t().sheet.savedFile);
}

/** To the counter: whoever sends what is not settled leaves it to decide. */
export async function sendToCounter(): Promise<void> {
  const sheet = openSheet()?.sheet;
  if (!sheet) return;
  if (stampOf(sheet) === 'open' && !sheet.received && !sheet.handedOver) await leaveToCounter();
  await sendPicture();
}

export async function shareSheetFile(): Promise<void> {
  const file = await sheetFileOf();
  if (file && (await shareFile(file)) === 'saved') notify(t().sheet.savedFile);
}

export async function saveSheetFile(): Promise<void> {
  const file = await sheetFileOf();
  if (file) saveFile(file, file.name);
}

async function sheetFileOf(): Promise<File | null> {
  const item = openSheet();
  if (!item) return null;
  const { sheetFile, sheetToFile } = await import('../../journey/8-sheet/sheet-file');
  const made = sheetToFile(item);
  if (!made.ok) {
    notify(made.advice);
    return null;
  }
  return new File([made.value.slice()], fileName(item.sheet, sheetFile.extension), {
    type: sheetFile.mediaType,
  });
}

async function pictureOf({ sheet, photos }: SheetWithPhotos): Promise<Blob | null> {
  const { sharedPicture } = await import('../../handover/share-picture');
  const first = photos[0];
  const photo = first ? await uprightPhoto(first, sheet.shots[0]) : null;
  const made = await sharedPicture(sheet, photo, await labelOf(sheet));
  if (made.ok) return made.value;
  notify(made.reason === 'too-large' ? t().sheet.tooMuch : made.advice);
  return null;
}

/** What the picture's margin says to eyes; the code beside it says the same to the program. */
async function labelOf(sheet: Sheet): Promise<PictureLabel> {
  const words = t().loop;
  const stamp = stampOf(sheet);
  const held = whatHolds(sheet);
  const row = held.connection && (await loadTables()).rows(held.connection, held.thread)[0];
  const { measurement: m, counter } = sheet;
  const shot = sheet.shots[0];
  const what = [
    held.thread,
    held.connection && connectionTitle(held.connection),
    row && tradeName(row.tradeName),
  ].filter((part) => part);
  const heading = what.length > 0 ? String(what[0]) : headline(sheet.conclusion);
  const before = sheet.earlier.at(-1);
  return {
    stamp: { kind: stamp, word: words.stamp[stamp] },
    heading: sheet.title || heading,
    lines: [
      ...(sheet.title ? [heading] : []),
      ...what.slice(1).map(String),
      ...(what.length > 0 && stamp === 'open' ? [headline(sheet.conclusion)] : []),
      ...(m
        ? [
            `${endOf(m) === 'female' ? t().inspection.minor : '⌀'} ${plusMinus(m.majorDiameterMm, 'mm')} (${number(m.majorDiameterMm.value / 25.4, 3)} in)`,
            `${t().inspection.pitch} ${plusMinus(m.pitchMm, 'mm')} (${number(25.4 / m.pitchMm.value, 2)} tpi)`,
          ]
        : [t().sheet.noPhoto]),
      ...(before ? [`${words.labelBefore}: ⌀ ${plusMinus(before.majorDiameterMm, 'mm')}`] : []),
    ],
    more: [
      ...wearLines(sheet),
      ...(counter ? answerWords(sheet) : []),
      ...(sheet.readings.length > 0
        ? [
            `${words.labelReadings}: ${sheet.readings
              .map((reading) => readingText(reading, sheet.conclusion.end))
              .join('; ')}`,
          ]
        : []),
      ...(sheet.remarks ? [`${words.labelRemarks}: ${sheet.remarks}`] : []),
    ],
    foot: [
      `${t().sheet.number} ${sheet.id.slice(0, 8)}, ${dateTime(sheet.updatedAt)}`,
      words.openAt(location.href.replace(/(index\.html)?(#.*)?$/, '')),
    ],
    dimensions: m && dimensionWords(m),
    ...(shot && { seats: { features: drawnFeatures(sheet, shot), nameOf: featureName } }),
  };
}

function answerWords(sheet: Sheet): string[] {
  const { counter } = sheet;
  if (!counter) return [];
  const words = t().loop;
  const parts = counter.parts.map((part) => part.number).join(', ');
  return [
    ...(counter.verdict === 'open'
      ? []
      : [
          `${words.counter}: ${words.stamp[counter.verdict]} ${words.judged(counter.by, dateTime(counter.at))}`,
        ]),
    ...(parts ? [`${words.parts}: ${parts}`] : []),
    ...(counter.remarks ? [`${words.notes}: ${counter.remarks}`] : []),
  ];
}

/** A sheet's name, or that it has none. */
export const spokenName = (sheet: Sheet) => sheet.title || (nameOf(sheet) ?? t().drawer.untitled);
