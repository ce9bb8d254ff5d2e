import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Reading } from '../../journey/6-candidates/reading';
import {
  type AskableKind,
  askableKinds,
  type Seat,
} from '../../journey/6-candidates/reading-choices';
import type { Ask } from '../../journey/7-next-reading/decision';
import { t } from '../language/language';
import { Fold } from '../widgets/Fold';
import type { Tool } from '../work/open-sheet';
import { allTools } from '../work/tools';
import { AskForm } from './AskForm';
import { type End, kindWords, readingText, valueText } from './reading-text';
import { WhatItIsOff } from './WhatItIsOff';
import './readings.css';

/** The reading that would help most, with its form; any other on request. */
export function AskedReading(props: {
  readonly ask: Ask | null;
  readonly end: End;
  /** The seat that the photo shows, as long as nobody has said anything of it. */
  readonly shown?: Seat | null;
  readonly tools: readonly Tool[];
  readonly onTools: (tools: readonly Tool[]) => void;
  readonly onReading: (reading: Reading) => void;
}) {
  const [chosen, setChosen] = createSignal<AskableKind | null>(null);
  const kind = createMemo(() => chosen() ?? props.ask?.reading ?? null);
  const outcomes = () =>
    new Map(
      props.ask?.fits.map(({ value, candidates }) => {
        const told = value === props.shown ? `, ${t().loop.seatClaim.tile}` : '';
        return [value, `${names(candidates)}${told}`];
      }),
    );
  const take = (reading: Reading) => {
    setChosen(null);
    props.onReading(reading);
  };
  return (
    <section class="asked panel stack" aria-labelledby="ask-title">
      <Show when={kind()} keyed fallback={<h2 id="ask-title">{t().identification.addReading}</h2>}>
        {(now) => (
          <>
            <div class="stack tight">
              <Show when={now === props.ask?.reading}>
                <p class="caps">{t().identification.ask}</p>
              </Show>
              <h2 id="ask-title">{kindWords(now, props.end).title}</h2>
            </div>
            <AskForm
              kind={now}
              end={props.end}
              likelySeats={
                props.ask?.reading === 'seat' ? props.ask.fits.map((fit) => fit.value) : []
              }
              outcomes={outcomes()}
              onReading={take}
            />
            <Show when={now !== 'seat' && now === props.ask?.reading && props.ask} keyed>
              {(ask) => <Why ask={ask} end={props.end} />}
            </Show>
          </>
        )}
      </Show>
      <Fold title={t().loop.otherReading}>
        <div class="asked-other">
          <label class="field">
            <span class="small soft">{t().identification.another}</span>
            <select
              value={kind() ?? ''}
              onChange={(event) =>
                setChosen((event.currentTarget.value || null) as AskableKind | null)
              }
            >
              <Show when={props.ask === null}>
                <option value="" selected={kind() === null}>
                  –
                </option>
              </Show>
              <For each={askableKinds.filter((k) => isOf(k, props.end))}>
                {(k) => (
                  <option value={k} selected={kind() === k}>
                    {kindWords(k).name}
                  </option>
                )}
              </For>
            </select>
          </label>
          <AtHand tools={props.tools} onTools={props.onTools} />
          <WhatItIsOff />
        </div>
      </Fold>
    </section>
  );
}

const names = (candidates: readonly string[]) =>
  candidates.length > 3 ? `${candidates.slice(0, 3).join(', ')} …` : candidates.join(', ');

const ofMale: ReadonlySet<AskableKind> = new Set(['caliper-od', 'rule-od', 'cone-size']);
const ofFemale: ReadonlySet<AskableKind> = new Set(['caliper-id', 'nose-od']);

/** Nobody measures over the crests of a female end. */
function isOf(kind: AskableKind, end: End): boolean {
  if (end === 'female') return !ofMale.has(kind);
  return end === null || !ofFemale.has(kind);
}

/** What each outcome would speak for. */
function Why(props: { readonly ask: Ask; readonly end: End }) {
  const most = 4;
  const shown = () => props.ask.fits.slice(0, most);
  return (
    <Show when={shown().length > 0}>
      <table class="why small">
        <caption class="visually-hidden">{t().identification.why}</caption>
        <tbody>
          <For each={shown()}>
            {(fit) => (
              <tr>
                <th scope="row">{valueText(props.ask.reading, fit.value, props.end)}</th>
                <td>{names(fit.candidates)}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </Show>
  );
}

function AtHand(props: {
  readonly tools: readonly Tool[];
  readonly onTools: (tools: readonly Tool[]) => void;
}) {
  const toggle = (tool: Tool) =>
    props.onTools(
      props.tools.includes(tool)
        ? props.tools.filter((one) => one !== tool)
        : [...props.tools, tool],
    );
  return (
    <fieldset>
      <legend class="small soft">{t().identification.atHand}</legend>
      <div class="row at-hand">
        <For each={allTools}>
          {(tool) => (
            <label class="choice">
              <input
                type="checkbox"
                checked={props.tools.includes(tool)}
                onChange={() => toggle(tool)}
              />
              {t().identification.tools[tool]}
            </label>
          )}
        </For>
      </div>
    </fieldset>
  );
}

export function ReadingList(props: {
  readonly readings: readonly Reading[];
  readonly end: End;
  readonly onRemove: (index: number) => void;
}) {
  return (
    <Show when={props.readings.length > 0}>
      <section class="stack tight" aria-labelledby="readings-title">
        <h2 id="readings-title">{t().identification.readings}</h2>
        <ul class="reading-list">
          <For each={props.readings}>
            {(reading, index) => (
              <li>
                <span>{readingText(reading, props.end)}</span>
                <button
                  type="button"
                  class="button plain"
                  aria-label={t().identification.removeReading(readingText(reading, props.end))}
                  onClick={() => props.onRemove(index())}
                >
                  {t().card.remove}
                </button>
              </li>
            )}
          </For>
        </ul>
      </section>
    </Show>
  );
}
