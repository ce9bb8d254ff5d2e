import { createResource, createSignal, For, Show } from 'solid-js';
import { RemeasuringNote } from '../inspection/RemeasuringNote';
import { number, percent } from '../language/format';
import { t } from '../language/language';
import { noChangeWords } from '../measuring/refusal-words';
import { conclude } from '../work/engine';
import type { Shot } from '../work/open-sheet';
import { remeasure, remeasuring } from '../work/remeasure';
import { openSheet } from '../work/sheets';

type OtherEnd = Shot['otherEnds'][number];

/** Of a part threaded at both ends: what the other end is, and (unless only for looking at) the way to ask
 *  about that one instead. */
export function OtherEnds(props: { readonly looking?: boolean }) {
  const ends = () => openSheet()!.sheet.shots[0]?.otherEnds ?? [];
  return (
    <Show when={ends().length > 0}>
      <section class="other-ends panel stack tight" aria-labelledby="other-ends-title">
        <h2 id="other-ends-title">{t().loop.bothEnds.title}</h2>
        <p class="soft">{t().loop.bothEnds.lead}</p>
        <For each={ends()}>
          {(end) => <OtherEndLine end={end} looking={props.looking === true} />}
        </For>
      </section>
    </Show>
  );
}

function OtherEndLine(props: { readonly end: OtherEnd; readonly looking: boolean }) {
  const [problem, setProblem] = createSignal<string | null>(null);
  const [conclusion] = createResource(
    () => props.end.measurement,
    (measurement) => conclude(measurement, [], []),
  );
  const likeliest = () => conclusion()?.threads.find((one) => one.system !== null);
  const connection = () => conclusion()?.decision.connection ?? null;
  const ask = async () => {
    setProblem(null);
    const { asked } = openSheet()!.sheet.shots[0];
    const kept = await remeasure(0, {
      reference: asked,
      ruler: null,
      corrections: { axis: props.end.axis, side: 'both' },
    });
    if (kept !== null) setProblem(noChangeWords(kept));
    else document.getElementById('decision-title')?.focus();
  };
  return (
    <>
      <p>
        <Show when={likeliest()} fallback={t().loop.bothEnds.unknown}>
          {(one) => (
            <>
              <strong>{one().designation}</strong> ({percent(one().probability)})
            </>
          )}
        </Show>
        <Show when={connection()} keyed>
          {(one) => (
            <>
              {' · '}
              {one.family} {one.size}
            </>
          )}
        </Show>
        {' · '}⌀ {number(props.end.measurement.majorDiameterMm.value, 2)} mm · P{' '}
        {number(props.end.measurement.pitchMm.value, 3)} mm
      </p>
      <Show when={!props.looking}>
        <div class="row">
          <button
            type="button"
            class="button"
            disabled={remeasuring() !== null}
            onClick={() => void ask()}
          >
            {t().loop.bothEnds.ask}
          </button>
        </div>
        <RemeasuringNote problem={problem()} />
      </Show>
    </>
  );
}
