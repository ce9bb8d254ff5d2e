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
import { tubesOf } from '../../standards/connections/tubes';
import { readingText, seatText } from '../identification/reading-text';
import { SectionDrawing } from '../identification/SectionDrawing';
import { dimensionsOf, loadTables, type Tables } from '../identification/table-rows';
import { number, percent, plusMinus } from '../language/format';
import { t } from '../language/language';
import { tradeName } from '../language/trade-names';
import { HandOver } from '../sheet/HandOver';
import { SheetFacts } from '../sheet/SheetFacts';
import { hashOf } from '../shell/route';
import { WearResult } from '../wear/WearNote';
import { nameOf, stateOf } from '../work/open-sheet';
import { openById, openSheet } from '../work/sheets';
import { oRingPlace } from './assembly';
import { Cautions } from './Cautions';
import { CounterPanel } from './CounterPanel';
import { elastomers } from './elastomers';
import { endWarnings, endWords, oRingText, otherTubes, threadName } from './end-words';
import { ResultActions } from './ResultActions';
import { ResultPhoto } from './ResultPhoto';
import { settledEnd } from './settled-end';
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
  const settled = createMemo(() => settledEnd(sheet(), props.tables));
  const connection = () => settled()?.row ?? null;
  const thread = createMemo(() => {
    const name = decision().thread ?? connection()?.thread ?? null;
    return name ? props.tables.thread(name) : null;
  });
  /** Null while the form, and so the way it seals, is open. */
  const kind = () => settled()?.kind ?? null;
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
        <For each={endWarnings(decision(), connection())}>
          {(warning) => <p class="alert">{warning}</p>}
        </For>
        <div class="result-top">
          <dl class="result-facts">
            <Fact name={t().result.thread}>
              <strong>
                {decision().thread
                  ? threadName(decision().thread!, decision().hand)
                  : t().identification.open}
              </strong>
            </Fact>
            <Fact name={t().result.family}>
              <Show
                when={decision().connection}
                keyed
                fallback={
                  <For each={sheet().conclusion.connections.slice(0, 3)}>
                    {(c) => (
                      <span class="result-share">
                        {c.family} {c.size} · {percent(c.probability)}
                      </span>
                    )}
                  </For>
                }
              >
                {(decided) => (
                  <>
                    <strong>
                      {decided.family} {decided.size}
                    </strong>
                    <span> {endWords(decided)}</span>
                    <Show when={connection()} keyed>
                      {(end) => <span class="soft"> {tradeName(end.tradeName)}</span>}
                    </Show>
                  </>
                )}
              </Show>
            </Fact>
            <Show when={connection()} keyed>
              {(end) => (
                <>
                  <Show when={end.dash}>
                    {(dash) => <Fact name={t().result.dash}>−{dash()}</Fact>}
                  </Show>
                  <Show when={tubesOf(end)[0] ?? end.hoseBoreMm}>
                    {(mm) => (
                      <Fact name={t().result.tube}>
                        {number(mm(), 2)} mm · {number(mm() / 25.4, 3)} in
                        <Show when={otherTubes(end).length > 0}>
                          <span class="soft"> ({otherTubes(end).join(', ')} mm)</span>
                        </Show>
                      </Fact>
                    )}
                  </Show>
                  <Fact name={t().result.seat}>
                    {kind() === null
                      ? t().assembly.formOpen
                      : end.sealing === 'thread'
                        ? '—'
                        : seatText(end.seat, end.end)}
                  </Fact>
                  <Show when={kind()} keyed>
                    {(how) => <Fact name={t().result.seal}>{t().assembly.sealings[how]}</Fact>}
                  </Show>
                  <Fact name={t().result.oRing}>
                    <Show when={end.oRing} fallback={oRingText(end, kind())} keyed>
                      {(ring) => (
                        <>
                          {ring.designation} · {number(ring.innerDiameterMm, 2)} ×{' '}
                          {number(ring.sectionMm, 2)} mm
                          <Show when={ring.hardnessShoreA}>
                            {(shore) => <span> · {t().result.shore(String(shore()))}</span>}
                          </Show>
                          <Show when={oRingPlace(end) === 'in-mating'}>
                            <span> ({t().assembly.inMating})</span>
                          </Show>
                        </>
                      )}
                    </Show>
                  </Fact>
                  <Show when={kind()} keyed>
                    {(how) => (
                      <Fact name={t().result.mating}>{t().assembly.mates[how][end.end]}</Fact>
                    )}
                  </Show>
                  <Show when={props.tables.neverWith(end).join(', ')}>
                    {(names) => <Fact name={t().result.neverWith}>{names()}</Fact>}
                  </Show>
                  <Show when={end.thread && props.tables.passesFor(end.thread).join(', ')}>
                    {(names) => <Fact name={t().assembly.lookAlikes}>{names()}</Fact>}
                  </Show>
                  <Fact name={t().result.source}>
                    <span class="small soft">{end.source}</span>
                  </Fact>
                </>
              )}
            </Show>
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
                  {t().inspection.pitch} {plusMinus(m.pitchMm, 'mm')}
                  <br />
                  {t().inspection.major} {plusMinus(m.majorDiameterMm, 'mm')}
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
          <Show when={kind()} keyed>
            {(how) => (
              <section class="stack tight">
                <h2>{t().result.assembly}</h2>
                <ol class="result-steps">
                  <For each={t().assembly.steps[how]}>{(step) => <li>{step}</li>}</For>
                </ol>
                <p class="small soft">{t().result.assemblyNote}</p>
              </section>
            )}
          </Show>
          <Show when={connection()?.sealing === 'o-ring' || connection()?.sealing === 'face-ring'}>
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
                        <th scope="row">{t().result.fluids[row.fluid]}</th>
                        <td>{row.suits.join(', ')}</td>
                        <td>{row.avoid.join(', ')}</td>
                      </tr>
                    )}
                  </For>
                </tbody>
              </table>
              <p class="small soft">{t().result.elastomersNote}</p>
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
