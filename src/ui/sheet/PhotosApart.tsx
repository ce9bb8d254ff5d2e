import { Show } from 'solid-js';
import type { Shot } from '../../journey/8-sheet/sheet-schema';
import { endOf } from '../end/end-choice';
import { number } from '../language/format';
import { t } from '../language/language';
import { measureNew } from '../work/job';
import { forgetPhotosApart, photosApart } from '../work/remeasure';
import { openSheet } from '../work/sheets';

/** Above the verdict: a photo was added that shows something else, and what can be done with it. */
export function PhotosApart() {
  return (
    <Show when={photosApart()} keyed>
      {({ photo, measurement }) => (
        <div class="alert doubt stack tight" role="alert">
          <p>
            <strong>{t().loop.photosApart.title}</strong>
          </p>
          <p>
            {t().loop.photosApart.text(
              sizeWords(measurement),
              sizeWords(openSheet()!.sheet.measurement),
            )}
          </p>
          <div class="row">
            <button
              type="button"
              class="button"
              onClick={() =>
                void forgetPhotosApart().then(() =>
                  measureNew(photo, { gender: endOf(measurement) }),
                )
              }
            >
              {t().loop.photosApart.own}
            </button>
            <button type="button" class="button" onClick={() => void forgetPhotosApart()}>
              {t().loop.photosApart.leave}
            </button>
          </div>
        </div>
      )}
    </Show>
  );
}

function sizeWords(measured: Shot['measurement'] | null): string {
  if (!measured) return '–';
  return `⌀ ${number(measured.majorDiameterMm.value, 2)} × ${number(measured.pitchMm.value, 3)} mm`;
}
