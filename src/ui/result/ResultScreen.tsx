import { createMemo, createResource, Show } from 'solid-js';
import { stampOf, whatHolds } from '../../journey/8-sheet/what-holds';
import type { Thread } from '../../standards/thread';
import { diameterName } from '../identification/diameter-name';
import { ReadingLines } from '../identification/ReadingLines';
import { SeatClaim } from '../identification/SeatClaim';
import { SectionDrawing } from '../identification/SectionDrawing';
import { dimensionsOf, loadTables, type Tables } from '../identification/table-rows';
import { inchFirst } from '../identification/thread-words';
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
import { AssemblySteps } from './AssemblySteps';
import { Cautions } from './Cautions';
import { ElastomerTable } from './ElastomerTable';
import { FactList } from './FactList';
import { OpenQuestions } from './OpenQuestions';
import { type ResultFacts, resultFacts } from './result-facts';
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
  return (
    <div class="result">
      <article class="result-page">
        <ResultHead facts={facts()} />
        <AnswerBlock sheet={sheet()} />
        <OpenQuestions sheet={sheet()} />
        <Show when={sheet().remarks}>
          <section class="stack tight" aria-labelledby="remarks-title">
            <h2 id="remarks-title">{t().loop.remarks}</h2>
            <p class="result-remarks">{sheet().remarks}</p>
          </section>
        </Show>
        <Show when={sheet().conclusion.hand === 'left'}>
          <p class="alert">
            <strong>{t().trade.leftHand}.</strong> {t().trade.leftHandWarning}
          </p>
        </Show>
        <div class="result-top">
          <FactList decided={decision().thread} thread={thread()} facts={facts()} />
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
          <Evidence thread={thread()} />
          <Show when={facts()} keyed>
            {(found) => <AssemblySteps facts={found} />}
          </Show>
          <Show when={facts()?.hasElastomer}>
            <ElastomerTable />
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

function ResultHead(props: { readonly facts: ResultFacts | null }) {
  const sheet = () => openSheet()!.sheet;
  return (
    <header class="result-head">
      <div>
        <p class="caps">{t().result.title}</p>
        <h1>{spokenName(sheet())}</h1>
        <Stamp kind={stampOf(sheet())} />
        <Show when={sheet().title === '' ? null : props.facts} keyed>
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
  );
}

/** What the answer rests on: the photo's numbers, readings. */
function Evidence(props: { readonly thread: Thread | null }) {
  const sheet = () => openSheet()!.sheet;
  /** Before the thread is known, millimetres. */
  const inches = () => props.thread !== null && inchFirst(props.thread);
  return (
    <section class="stack tight">
      <h2>{t().result.numbers}</h2>
      <Show when={sheet().measurement} fallback={<p class="soft">{t().sheet.noPhoto}</p>} keyed>
        {(m) => (
          <p>
            {t().inspection.pitch} {pitchBoth(m.pitchMm, !!props.thread?.tpi)}
            <br />
            {diameterName(m)} {plusMinusBoth(m.majorDiameterMm, inches())}
            <br />
            <span class="small soft">{t().inspection.numbersNote}</span>
          </p>
        )}
      </Show>
      <BeforeAfter sheet={sheet()} />
      <SeatClaim sheet={sheet()} />
      <ReadingLines sheet={sheet()} />
    </section>
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
