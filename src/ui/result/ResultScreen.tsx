import { createMemo, createResource, For, type JSX, Show } from 'solid-js';
import { stampOf, whatHolds } from '../../journey/8-sheet/what-holds';
import { diameterName } from '../identification/diameter-name';
import { ReadingLines } from '../identification/ReadingLines';
import { SeatClaim } from '../identification/SeatClaim';
import { SectionDrawing } from '../identification/SectionDrawing';
import { dimensionsOf, loadTables, type Tables } from '../identification/table-rows';
import { inchFirst, pitchWords } from '../identification/thread-words';
import { pitchBoth, plusMinusBoth } from '../language/format';
import { t } from '../language/language';
import { BeforeAfter } from '../sheet/BeforeAfter';
import { HandOver } from '../sheet/HandOver';
import { OtherEnds } from '../sheet/OtherEnds';
import { SheetFacts } from '../sheet/SheetFacts';
import { SheetPage } from '../sheet/SheetPage';
import { sendPicture, sendToCounter, spokenName } from '../sheet/send';
import { NextStep } from '../shell/NextStep';
import { hashOf } from '../shell/route';
import { WearResult } from '../wear/WearNote';
import { Fold } from '../widgets/Fold';
import { Stamp } from '../widgets/Stamp';
import { ThreadPicture } from '../widgets/ThreadPicture';
import { nameOf, stateOf } from '../work/open-sheet';
import { openSheet } from '../work/sheets';
import { AnswerBlock } from './AnswerBlock';
import { Cautions } from './Cautions';
import { elastomers } from './elastomers';
import { OpenQuestions } from './OpenQuestions';
import { resultFacts } from './result-facts';
import { temperatureText } from './temperature-text';
import './result.css';

export function ResultScreen(props: { readonly id: string }) {
  const [tables] = createResource(loadTables);
  return (
    <SheetPage id={props.id} title={t().result.title} waiting={!tables()}>
      <Result tables={tables()!} />
    </SheetPage>
  );
}

function Result(props: { readonly tables: Tables }) {
  const sheet = () => openSheet()!.sheet;
  const decision = createMemo(() => whatHolds(sheet()));
  const facts = createMemo(() => resultFacts(sheet(), props.tables));
  const connection = () => facts()?.rows[0] ?? null;
  const thread = createMemo(() => {
    const name = decision().thread ?? connection()?.thread ?? null;
    return name ? props.tables.thread(name) : null;
  });
  /** Before the thread is known, millimetres. */
  const own = () => ({ inches: thread() ? inchFirst(thread()!) : false, tpi: !!thread()?.tpi });
  return (
    <div class="result">
      <article class="result-page">
        <header class="result-head">
          <div>
            <p class="caps">{t().result.title}</p>
            <h1>{spokenName(sheet())}</h1>
            <Stamp kind={stampOf(sheet())} />
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
        <AnswerBlock sheet={sheet()} />
        <OpenQuestions sheet={sheet()} />
        <Show when={sheet().conclusion.hand === 'left'}>
          <p class="alert">
            <strong>{t().trade.leftHand}.</strong> {t().trade.leftHandWarning}
          </p>
        </Show>
        <div class="result-top">
          <dl class="result-facts">
            <Fact name={t().result.thread}>
              <strong>{decision().thread ?? t().identification.open}</strong>
              <Show when={decision().thread !== null && thread()} keyed>
                {(row) => (
                  <>
                    <br />
                    <span class="small soft">{pitchWords(row)}</span>
                  </>
                )}
              </Show>
            </Fact>
            <For
              each={facts()?.facts ?? []}
              fallback={<Fact name={t().result.family}>{t().identification.open}</Fact>}
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
                  dimensions={dimensionsOf(row, connection(), sheet().conclusion.end ?? 'male')}
                  name={t().identification.section(nameOf(sheet()) ?? row.designation)}
                />
              )}
            </Show>
            <ThreadPicture item={openSheet()!} />
          </div>
        </div>
        <OtherEnds looking />
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
                  {t().inspection.pitch} {pitchBoth(m.pitchMm, own().tpi)}
                  <br />
                  {diameterName(m)} {plusMinusBoth(m.majorDiameterMm, own().inches)}
                  <br />
                  <span class="small soft">{t().inspection.numbersNote}</span>
                </p>
              )}
            </Show>
            <BeforeAfter sheet={sheet()} />
            <Show when={sheet().remarks}>
              <p class="result-remarks">{sheet().remarks}</p>
            </Show>
            <SeatClaim sheet={sheet()} />
            <ReadingLines sheet={sheet()} />
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
      </article>
      <Fold title={t().loop.more}>
        <HandOver />
      </Fold>
      <ResultSteps />
    </div>
  );
}

/** On to the counter; from an answer, to paper. */
function ResultSteps() {
  const sheet = () => openSheet()!.sheet;
  const answered = () => (sheet().counter?.verdict ?? 'open') !== 'open';
  const received = () => sheet().received;
  return (
    <NextStep>
      <a class="button" href={hashOf({ screen: received() ? 'counter' : 'sheet', id: sheet().id })}>
        {received() ? t().loop.toCounter : t().result.back}
      </a>
      <button
        type="button"
        class="button"
        classList={{ strong: answered() && !received() }}
        onClick={() => print()}
      >
        {t().loop.print}
      </button>
      <Show when={received() || !answered()}>
        <button
          type="button"
          class="button strong"
          onClick={() => void (received() ? sendPicture() : sendToCounter())}
        >
          {received() ? t().loop.sendAnswer : t().loop.send}
        </button>
      </Show>
    </NextStep>
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
