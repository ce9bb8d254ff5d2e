import { createSignal, Show } from 'solid-js';
import { plusMinus } from '../language/format';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { wearLines } from '../wear/wear-print';
import { saveFile, shareFile } from '../widgets/save-file';
import { nameOf, type SheetWithPhotos } from '../work/open-sheet';
import { uprightPhoto } from '../work/photo-bytes';
import { change, openSheet } from '../work/sheets';

export const fileName = (sheet: SheetWithPhotos['sheet'], extension: string): string =>
  `crestwise-${sheet.id.slice(0, 8)}${extension}`;

/** The open sheet as a picture or a file, for a messenger or a mail. */
export function HandOver(props: { readonly title?: string; readonly remarks?: boolean }) {
  const [busy, setBusy] = createSignal(false);
  const handing = (work: (item: SheetWithPhotos) => Promise<void>) => async () => {
    const item = openSheet();
    if (!item || busy()) return;
    setBusy(true);
    try {
      await work(item);
    } finally {
      setBusy(false);
    }
  };
  const picture = handing(async (item) => {
    const made = await pictureOf(item);
    if (made)
      said(await shareFile(new File([made], fileName(item.sheet, '.jpg'), { type: made.type })));
  });
  const share = handing(async (item) => {
    const file = await sheetFileOf(item);
    if (file) said(await shareFile(file));
  });
  const save = handing(async (item) => {
    const file = await sheetFileOf(item);
    if (file) saveFile(file, file.name);
  });
  return (
    <section class="hand-over stack tight" aria-labelledby="hand-over-title">
      <h2 id="hand-over-title">{props.title ?? t().sheet.share}</h2>
      <Show when={props.remarks}>
        <label class="field">
          <span class="small soft">{t().sheet.remarks}</span>
          <textarea
            rows={2}
            maxLength={2000}
            value={openSheet()?.sheet.remarks ?? ''}
            onChange={(event) => {
              const remarks = event.currentTarget.value.trim();
              void change(({ sheet }) => ({ sheet: { ...sheet, remarks } }));
            }}
          />
        </label>
      </Show>
      <div class="row">
        <button type="button" class="button" disabled={busy()} onClick={() => void picture()}>
          {t().sheet.sharePicture}
        </button>
        <Show when={'share' in navigator}>
          <button type="button" class="button" disabled={busy()} onClick={() => void share()}>
            {t().sheet.shareSheet}
          </button>
        </Show>
        <button type="button" class="button" disabled={busy()} onClick={() => void save()}>
          {t().sheet.exportSheet}
        </button>
      </div>
      <p class="small soft measure-width">{t().sheet.shareNote}</p>
    </section>
  );
}

function said(outcome: 'shared' | 'saved' | 'called-off'): void {
  if (outcome === 'saved') notify(t().sheet.savedFile);
}

async function sheetFileOf({ sheet, photos }: SheetWithPhotos): Promise<File | null> {
  const { sheetFile, sheetToFile } = await import('../../journey/8-sheet/sheet-file');
  const made = sheetToFile({ sheet, photos });
  if (!made.ok) {
    notify(made.advice);
    return null;
  }
  return new File([made.value.slice()], fileName(sheet, sheetFile.extension), {
    type: sheetFile.mediaType,
  });
}

async function pictureOf({ sheet, photos }: SheetWithPhotos): Promise<Blob | null> {
  const { sharedPicture } = await import('../../handover/share-picture');
  const first = photos[0];
  const photo = first ? await uprightPhoto(first, sheet.shots[0]) : null;
  const { measurement: m } = sheet;
  const made = await sharedPicture(sheet, photo, {
    heading: sheet.title || (nameOf(sheet) ?? t().drawer.untitled),
    lines: [
      ...(m
        ? [
            `${t().inspection.pitch} ${plusMinus(m.pitchMm, 'mm')}`,
            `${t().inspection.major} ${plusMinus(m.majorDiameterMm, 'mm')}`,
          ]
        : [t().sheet.noPhoto]),
      ...wearLines(sheet),
    ],
    hint: t().sheet.pictureHint,
  });
  if (made.ok) return made.value;
  notify(made.reason === 'too-large' ? t().sheet.tooMuch : made.advice);
  return null;
}
