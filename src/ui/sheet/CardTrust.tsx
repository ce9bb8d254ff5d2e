import { createSignal, Match, Show, Switch } from 'solid-js';
import { uOfBarsMm } from '../../scale-card/geometry';
import { Bars, createBars } from '../card/Bars';
import { keepCheck, usedCheck } from '../card/card-checks';
import { dateTime } from '../language/format';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { keepText, keptText } from '../widgets/kept-text';
import { narrow } from '../widgets/narrow';
import { remeasure, remeasuring } from '../work/remeasure';
import { openSheet } from '../work/sheets';
import './card-trust.css';

const laterKey = 'crestwise.bars-later';
const [later, setLater] = createSignal(keptText(laterKey) !== null);

/** A print 2 % off names the wrong thread: the two bars are asked for before the first answer is
 *  believed. Put off, the verdict says what it hangs on. A check made since is applied here. */
export function CardTrust() {
  const sheet = () => openSheet()!.sheet;
  const unchecked = () =>
    !sheet().received &&
    sheet().shots.some((shot) => shot.reference.kind === 'card' && shot.bars === null);
  // On a telephone the form would take the room of the verdict and of its question.
  const [asking, setAsking] = createSignal(!later() && !narrow());
  const putOff = () => {
    setLater(true);
    setAsking(false);
    keepText(laterKey, '1');
  };
  const apply = async () => {
    for (let i = 0; i < sheet().shots.length; i++) {
      const { bars, ruler, corrections, reference } = sheet().shots[i]!;
      if (bars === null && reference.kind === 'card') await remeasure(i, { ruler, corrections });
    }
    notify(t().loop.uncheckedCard.applied);
  };
  return (
    <Show when={unchecked()}>
      <section class="card-trust" aria-labelledby="card-trust-title">
        <Switch>
          <Match when={usedCheck()}>
            {(check) => (
              <>
                <h2 id="card-trust-title">{t().loop.uncheckedCard.since(check().name)}</h2>
                <button
                  type="button"
                  class="button"
                  disabled={remeasuring() !== null}
                  onClick={() => void apply()}
                >
                  {t().loop.uncheckedCard.check}
                </button>
              </>
            )}
          </Match>
          <Match when={asking()}>
            <h2 id="card-trust-title">{t().loop.uncheckedCard.title}</h2>
            <p class="small">{t().loop.uncheckedCard.lead}</p>
            <BarsForm onKept={() => void apply()} onLater={putOff} />
          </Match>
          <Match when={!later()}>
            <h2 id="card-trust-title">{t().loop.uncheckedCard.title}</h2>
            <div class="row">
              <button type="button" class="button" onClick={() => setAsking(true)}>
                {t().loop.uncheckedCard.now}
              </button>
              <button type="button" class="button" onClick={putOff}>
                {t().loop.uncheckedCard.later}
              </button>
            </div>
          </Match>
          <Match when={true}>
            <h2 id="card-trust-title" class="card-trust-waiting">
              {t().loop.uncheckedCard.waiting}
            </h2>
            <button type="button" class="button plain" onClick={() => setAsking(true)}>
              {t().loop.uncheckedCard.now}
            </button>
          </Match>
        </Switch>
      </section>
    </Show>
  );
}

function BarsForm(props: { readonly onKept: () => void; readonly onLater: () => void }) {
  const bars = createBars();
  const submit = (event: Event) => {
    event.preventDefault();
    const typed = bars.read();
    if (!typed) return;
    keepCheck({
      name: `${t().loop.uncheckedCard.name} ${dateTime(Date.now())}`,
      ...typed,
      uMm: uOfBarsMm.rule,
    });
    props.onKept();
  };
  return (
    <form class="value-form" onSubmit={submit} novalidate>
      <Bars of={bars} />
      <button type="submit" class="button strong">
        {t().loop.uncheckedCard.check}
      </button>
      <button type="button" class="button" onClick={() => props.onLater()}>
        {t().loop.uncheckedCard.later}
      </button>
    </form>
  );
}
