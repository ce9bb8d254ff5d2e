import { createEffect, createSignal, For, on, Show } from 'solid-js';
import { endOf } from '../end/end-choice';
import { t } from '../language/language';
import type { Shot } from '../work/open-sheet';
import { openSheet } from '../work/sheets';
import { BudgetPicture } from './BudgetPicture';
import { createShownShot } from './create-shown-shot';
import { InspectedPhoto } from './InspectedPhoto';
import { Numbers } from './Numbers';
import { ProfilePlot } from './ProfilePlot';
import './inspection.css';

/** The photo of the open sheet, what was found on it, and the numbers with their budget. */
export function Inspection() {
  const shown = createShownShot();
  const { shot } = shown;
  const [crest, setCrest] = createSignal<number | null>(null);
  createEffect(on(shot, () => setCrest(null)));
  const female = () => endOf(shot().measurement) === 'female';

  return (
    <div class="inspection stack">
      <section class="stack tight" aria-labelledby="inspection-title">
        <h2 id="inspection-title" class="visually-hidden">
          {t().inspection.title}
        </h2>
        <InspectedPhoto shown={shown} female={female()} crest={crest()} onCrest={setCrest} />
      </section>
      <ShotNotes shot={shot()} />
      <Show when={!female() && shot().profile}>
        {(profile) => (
          <section class="stack tight" aria-labelledby="profile-title">
            <h2 id="profile-title">{t().inspection.profile}</h2>
            <ProfilePlot
              profile={profile()}
              crests={shot().overlay?.crests ?? []}
              crest={crest()}
              onCrest={setCrest}
              turns={shot().measurement.turns}
            />
          </section>
        )}
      </Show>
      <MeasuredNumbers shot={shot()} />
    </div>
  );
}

function ShotNotes(props: { readonly shot: Shot }) {
  return (
    <Show when={props.shot.notes.length > 0}>
      <ul class="photo-notes small">
        <For each={props.shot.notes}>{(note) => <li>{t().inspection.note[note]}</li>}</For>
        <Show when={props.shot.reference.kind === 'id1'}>
          <li>{t().reference.painted}</li>
        </Show>
      </ul>
    </Show>
  );
}

/** Of all photos together where there are several. */
function MeasuredNumbers(props: { readonly shot: Shot }) {
  const sheet = () => openSheet()!.sheet;
  const measurement = () => sheet().measurement ?? props.shot.measurement;
  return (
    <div class="inspection-numbers">
      <section class="stack tight" aria-labelledby="numbers-title">
        <h2 id="numbers-title">{t().inspection.numbers}</h2>
        <Show when={sheet().shots.length > 1}>
          <p class="small soft">{t().sheet.photos(sheet().shots.length)}</p>
        </Show>
        <Numbers measurement={measurement()} reference={props.shot.reference} />
        <p class="small soft">{t().inspection.numbersNote}</p>
      </section>
      <BudgetPicture measurement={measurement()} />
    </div>
  );
}
