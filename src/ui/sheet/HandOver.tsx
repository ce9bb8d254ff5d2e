import { createSignal, Show } from 'solid-js';
import { t } from '../language/language';
import { change, openSheet } from '../work/sheets';
import { saveSheetFile, sendPicture, shareSheetFile } from './send';

/** Remarks for the counter, and the open sheet as a picture or a file. */
export function HandOver(props: { readonly remarks?: boolean }) {
  const [busy, setBusy] = createSignal(false);
  const handing = (work: () => Promise<void>) => async () => {
    if (busy()) return;
    setBusy(true);
    try {
      await work();
    } finally {
      setBusy(false);
    }
  };
  return (
    <section class="hand-over stack tight" aria-labelledby="hand-over-title">
      <h2 id="hand-over-title">{t().sheet.share}</h2>
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
        <button
          type="button"
          class="button"
          disabled={busy()}
          onClick={() => void handing(sendPicture)()}
        >
          {t().sheet.sharePicture}
        </button>
        <Show when={'share' in navigator}>
          <button
            type="button"
            class="button"
            disabled={busy()}
            onClick={() => void handing(shareSheetFile)()}
          >
            {t().sheet.shareSheet}
          </button>
        </Show>
        <button
          type="button"
          class="button"
          disabled={busy()}
          onClick={() => void handing(saveSheetFile)()}
        >
          {t().sheet.exportSheet}
        </button>
      </div>
      <p class="small soft measure-width">{t().sheet.shareNote}</p>
    </section>
  );
}
