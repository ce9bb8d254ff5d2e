import { createSignal, Match, Show, Switch } from 'solid-js';
import { keepCheck, usedCheck } from '../card/card-checks';
import { typedBars } from '../card/typed-bars';
import { lengthUnit } from '../identification/chosen-units';
import { LengthUnitChoice } from '../identification/UnitChoice';
import { ValueInput } from '../identification/ValueInput';
import { dateTime } from '../language/format';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { remeasure, remeasuring } from '../work/remeasure';
import { openSheet } from '../work/sheets';
import './card-trust.css';

const laterKey = 'crestwise.bars-later';
/** With a rule (as on the card's page). */
const uMm = 0.3;

function readLater(): boolean {
  try {
    return localStorage.getItem(laterKey) !== null;
  } catch {
    return false;
  }
}
const [later, setLater] = createSignal(readLater());

/** A print 2 % off names the wrong thread: the two bars are asked for before the first answer is
 *  believed. Put off, the verdict says what it hangs on. A check made since is applied here. */
export function CardTrust() {
  const sheet = () => openSheet()!.sheet;
  const unchecked = () =>
    !sheet().received &&
    sheet().shots.some((shot) => shot.reference.kind === 'card' && shot.bars === null);
  const [asking, setAsking] = createSignal(!later());
  const putOff = () => {
    setLater(true);
    setAsking(false);
    try {
      localStorage.setItem(laterKey, '1');
    } catch {
      // Asked again after a reload then.
    }
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
            <Bars onKept={() => void apply()} onLater={putOff} />
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

function Bars(props: { readonly onKept: () => void; readonly onLater: () => void }) {
  const [long, setLong] = createSignal('');
  const [short, setShort] = createSignal('');
  const [wrong, setWrong] = createSignal<{ long: string | null; short: string | null }>({
    long: null,
    short: null,
  });
  const submit = (event: Event) => {
    event.preventDefault();
    const bars = typedBars(long(), short(), lengthUnit());
    setWrong(bars.wrong);
    if (bars.wrong.long || bars.wrong.short) return;
    keepCheck({
      name: `${t().loop.uncheckedCard.name} ${dateTime(Date.now())}`,
      horizontalMm: bars.longMm,
      verticalMm: bars.shortMm,
      uMm,
    });
    props.onKept();
  };
  return (
    <form class="value-form" onSubmit={submit} novalidate>
      <ValueInput
        label={t().card.long}
        text={long()}
        onText={setLong}
        placeholder={lengthUnit() === 'mm' ? '150' : '5.906'}
        wrong={wrong().long}
      />
      <ValueInput
        label={t().card.short}
        text={short()}
        onText={setShort}
        placeholder={lengthUnit() === 'mm' ? '100' : '3.937'}
        wrong={wrong().short}
      />
      <LengthUnitChoice />
      <button type="submit" class="button strong">
        {t().loop.uncheckedCard.check}
      </button>
      <button type="button" class="button" onClick={() => props.onLater()}>
        {t().loop.uncheckedCard.later}
      </button>
    </form>
  );
}
