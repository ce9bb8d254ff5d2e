import { Show } from 'solid-js';
import { number } from '../language/format';
import { t } from '../language/language';
import { nameOf, stateOf } from '../work/open-sheet';
import { change, openSheet, savingState } from '../work/sheets';
import { SheetFacts } from './SheetFacts';

/** The sheet's title block: its name, which can be typed over, and how it came about. */
export function SheetHead() {
  const sheet = () => openSheet()!.sheet;
  const reference = () => sheet().shots[0]?.reference ?? null;
  const spoken = () => nameOf(sheet()) ?? t().drawer.untitled;
  return (
    <header class="sheet-head">
      <h1 class="visually-hidden">{sheet().title || spoken()}</h1>
      <input
        class="sheet-name"
        aria-label={t().sheet.name}
        value={sheet().title}
        placeholder={spoken()}
        maxLength={120}
        onChange={(event) => {
          const title = event.currentTarget.value.trim();
          void change(({ sheet: now }) => ({ sheet: { ...now, title } }));
        }}
      />
      <dl class="title-block small">
        <SheetFacts sheet={sheet()} />
        <div class="on-desk">
          <dt class="caps">{t().sheet.reference}</dt>
          <dd>
            {reference() ? t().sheet[reference()!.kind] : t().sheet.readings}
            <Show when={reference()}>
              {(r) => <span class="soft"> · {number(r().pxPerMm, 1)} px/mm</span>}
            </Show>
          </dd>
        </div>
        <div classList={{ 'on-desk': stateOf(sheet()) === sheet().conclusion.decision.state }}>
          <dt class="caps">{t().sheet.state}</dt>
          <dd>{t().sheet.states[stateOf(sheet())]}</dd>
        </div>
        <div>
          <dt class="caps">{t().shell.drawer}</dt>
          <dd aria-live="polite">
            {savingState() === 'saved'
              ? t().sheet.saved
              : savingState() === 'saving'
                ? t().sheet.saving
                : t().sheet.notSaved}
          </dd>
        </div>
      </dl>
    </header>
  );
}
