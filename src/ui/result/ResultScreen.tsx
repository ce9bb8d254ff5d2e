import {
  createMemo,
  createResource,
  createSignal,
  For,
  type JSX,
  Match,
  onMount,
  Show,
  Switch,
} from 'solid-js';
import { connectionTitle } from '../identification/connection-words';
import { readingText } from '../identification/reading-text';
import { SectionDrawing } from '../identification/SectionDrawing';
import { dimensionsOf, loadTables, type Tables } from '../identification/table-rows';
import { percent, plusMinusBoth } from '../language/format';
import { t } from '../language/language';
import { HandOver } from '../sheet/HandOver';
import { SheetFacts } from '../sheet/SheetFacts';
import { hashOf } from '../shell/route';
import { WearResult } from '../wear/WearNote';
import { nameOf, stateOf } from '../work/open-sheet';
import { openById, openSheet } from '../work/sheets';
import { Cautions } from './Cautions';
import { CounterPanel } from './CounterPanel';
import { elastomers } from './elastomers';
import { ResultActions } from './ResultActions';
import { ResultPhoto } from './ResultPhoto';
import { resultFacts } from './result-facts';
import { temperatureText } from './temperature-text';
import './result.css';

export function ResultScreen(props: { readonly id: string }) {
  const [state, setState] = createSignal<'opening' | 'open' | 'missing'>('opening');
  const [tables] = createResource(loadTables);
  onMount(async () => setState((await openById(props.id)) ? 'open' : 'missing'));
  return (
    <Switch>
      <Match when={state() === 'missing'}>
        <div class="stack">
          <h1>{t().result.title}</h1>
          <p>{t().sheet.missing}</p>
        </div>
      </Match>
      <Match when={state() === 'open' && openSheet() && tables()}>
        <Result tables={tables()!} />
      </Match>
      <Match when={state() !== 'missing'}>
        <div class="screen-wait" />
      </Match>
    </Switch>
  );
}

function Result(props: { readonly tables: Tables }) {
  const sheet = () => openSheet()!.sheet;
  const decision = () => sheet().conclusion.decision;
  const facts = createMemo(() => resultFacts(sheet(), props.tables));
  const connection = () => facts()?.rows[0] ?? null;
  const thread = createMemo(() => {
    const name = decision().thread ?? connection()?.thread ?? null;
    return name ? props.tables.thread(name) : null;
  });
  const inchFirst = () => thread()?.system === 'UN' || thread()?.system === 'NPT';
  const open = () => decision().state !== 'settled';
  return (
    <div class="result">
      <div class="result-bar row">
        <a class="button" href={hashOf({ screen: 'sheet', id: sheet().id })}>
          {t().result.back}
        </a>
        <ResultActions />
      </div>
      <article class="result-page">
        <header class="result-head">
          <div>
            <p class="caps">{t().result.title}</p>
            <h1>{sheet().title || nameOf(sheet()) || t().drawer.untitled}</h1>
            <Show when={sheet().title === '' ? null : facts()} keyed>
              {(found) => (
                <p class="result-end">
                  {found.connection.family} {found.connection.size} · <strong>{found.end}</strong>
                </p>
              )}
            </Show>
          </div>
          <dl class="title-block small">
            <SheetFacts sheet={sheet()} />
            <div>
              <dt class="caps">{t().sheet.state}</dt>
              <dd>{t().sheet.states[stateOf(sheet())]}</dd>
            </div>
          </dl>
        </header>
        <Show when={open()}>
          <p class="alert">{t().result.notSettled}</p>
        </Show>
        <Show when={sheet().conclusion.hand === 'left'}>
          <p class="alert">
            <strong>{t().trade.leftHand}.</strong> {t().trade.leftHandWarning}
          </p>
        </Show>
        <div class="result-top">
          <dl class="result-facts">
            <Fact name={t().result.thread}>
              <strong>{decision().thread ?? t().identification.open}</strong>
            </Fact>
            <For
              each={facts()?.facts ?? []}
              fallback={
                <Fact name={t().result.family}>
                  <For each={sheet().conclusion.connections.slice(0, 3)}>
                    {(c) => (
                      <span class="result-share">
                        {connectionTitle(c)} · {percent(c.probability)}
                      </span>
                    )}
                  </For>
                </Fact>
              }
            >
              {(one) => (
                <Fact name={one.name}>
                  <For each={one.lines}>
                    {(line, i) => (
                      <>
                        <Show when={i() > 0}>
                          <br />
                        </Show>
                        {line}
                      </>
                    )}
                  </For>
                </Fact>
              )}
            </For>
          </dl>
          <div class="result-pictures">
            <Show when={thread()} keyed>
              {(row) => (
                <SectionDrawing
                  dimensions={dimensionsOf(row, connection())}
                  name={t().identification.section(nameOf(sheet()) ?? row.designation)}
                />
              )}
            </Show>
            <ResultPhoto />
          </div>
        </div>
        <div class="result-middle">
          <section class="stack tight">
            <h2>{t().result.numbers}</h2>
            <Show
              when={sheet().measurement}
              fallback={<p class="soft">{t().sheet.noPhoto}</p>}
              keyed
            >
              {(m) => (
                <p>
                  {t().inspection.pitch} {plusMinusBoth(m.pitchMm, inchFirst())}
                  <br />
                  {t().inspection.major} {plusMinusBoth(m.majorDiameterMm, inchFirst())}
                  <br />
                  <span class="small soft">{t().inspection.numbersNote}</span>
                </p>
              )}
            </Show>
            <Show when={sheet().remarks}>
              <p class="result-remarks">{sheet().remarks}</p>
            </Show>
            <Show when={sheet().readings.length > 0}>
              <ul class="plain-list">
                <For each={sheet().readings}>
                  {(reading) => <li>{readingText(reading, sheet().conclusion.end)}</li>}
                </For>
              </ul>
            </Show>
          </section>
          <Show when={facts()} keyed>
            {(found) => (
              <section class="stack tight">
                <h2>{t().result.assembly}</h2>
                <For each={found.assembly}>
                  {(how) => (
                    <>
                      <Show when={how.heading}>
                        <h3>{how.heading}</h3>
                      </Show>
                      <ol class="result-steps">
                        <For each={how.steps}>{(step) => <li>{step}</li>}</For>
                      </ol>
                      <p class="small">{how.method}</p>
                    </>
                  )}
                </For>
                <ul class="plain-list small">
                  <For each={found.always}>{(rule) => <li>{rule}</li>}</For>
                </ul>
                <p class="small soft">{t().result.assemblyNote}</p>
              </section>
            )}
          </Show>
          <Show when={facts()?.hasElastomer}>
            <section class="stack tight">
              <h2>{t().result.elastomers}</h2>
              <table class="elastomers small">
                <thead>
                  <tr>
                    <th scope="col">{t().result.fluid}</th>
                    <th scope="col">{t().result.suits}</th>
                    <th scope="col">{t().result.avoid}</th>
                  </tr>
                </thead>
                <tbody>
                  <For each={elastomers}>
                    {(row) => (
                      <tr>
                        <th scope="row">{t().trade.fluids[row.fluid]}</th>
                        <td>{row.suits.join(', ')}</td>
                        <td>{row.avoid.join(', ')}</td>
                      </tr>
                    )}
                  </For>
                  <tr>
                    <th scope="row">{t().trade.temperature}</th>
                    <td colSpan={2}>{temperatureText()}</td>
                  </tr>
                </tbody>
              </table>
              <p class="small">{t().trade.epdm}</p>
              <p class="small soft">
                {t().trade.temperatureNote} {t().result.elastomersNote}
              </p>
            </section>
          </Show>
        </div>
        <WearResult />
        <Cautions />
        <CounterPanel />
        <HandOver title={t().result.answer} />
      </article>
    </div>
  );
}

function Fact(props: { readonly name: string; readonly children: JSX.Element }) {
  return (
    <div>
      <dt class="soft">{props.name}</dt>
      <dd>{props.children}</dd>
    </div>
  );
}
