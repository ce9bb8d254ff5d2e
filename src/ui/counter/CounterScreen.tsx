import { createResource, Show } from 'solid-js';
import { stampOf } from '../../journey/8-sheet/what-holds';
import { Contradictions } from '../identification/Contradictions';
import { DecisionBlock } from '../identification/DecisionBlock';
import { ReadingLines } from '../identification/ReadingLines';
import { SeatClaim } from '../identification/SeatClaim';
import { loadTables, type Tables } from '../identification/table-rows';
import { t } from '../language/language';
import { Cautions } from '../result/Cautions';
import { OpenQuestions } from '../result/OpenQuestions';
import { BeforeAfter } from '../sheet/BeforeAfter';
import { HandOver } from '../sheet/HandOver';
import { OtherEnds } from '../sheet/OtherEnds';
import { SheetFacts } from '../sheet/SheetFacts';
import { SheetPage } from '../sheet/SheetPage';
import { sendPicture, spokenName } from '../sheet/send';
import { NextStep } from '../shell/NextStep';
import { hashOf } from '../shell/route';
import { WearNote } from '../wear/WearNote';
import { Fold } from '../widgets/Fold';
import { Stamp } from '../widgets/Stamp';
import { ThreadPicture } from '../widgets/ThreadPicture';
import { openSheet } from '../work/sheets';
import { JudgeForm } from './JudgeForm';
import './counter.css';

/** A sheet that came from elsewhere, as whoever judges it needs it: the part, what was found, what
 *  is open, what the sender says, and the verdict. */
export function CounterScreen(props: { readonly id: string }) {
  const [tables] = createResource(loadTables);
  return (
    <SheetPage id={props.id} title={t().loop.counterTitle} waiting={!tables()}>
      <Counter tables={tables()!} />
    </SheetPage>
  );
}

function Counter(props: { readonly tables: Tables }) {
  const sheet = () => openSheet()!.sheet;
  return (
    <article class="counter-page">
      <header class="counter-head">
        <div class="stack tight">
          <p class="caps">{t().loop.counterTitle}</p>
          <h1>{spokenName(sheet())}</h1>
        </div>
        <Stamp kind={stampOf(sheet())} />
        <dl class="title-block small">
          <SheetFacts sheet={sheet()} />
        </dl>
      </header>
      <section class="counter-found stack" aria-labelledby="found-title">
        <h2 id="found-title">{t().loop.found}</h2>
        <ThreadPicture item={openSheet()!} />
        <DecisionBlock conclusion={sheet().conclusion} />
        <Contradictions
          contradictions={sheet().conclusion.contradictions}
          readings={sheet().readings}
        />
        <OtherEnds looking />
        <BeforeAfter sheet={sheet()} />
        <SeatClaim sheet={sheet()} />
        <ReadingLines sheet={sheet()} />
        <WearNote />
        <p>
          <a class="button" href={hashOf({ screen: 'sheet', id: sheet().id })}>
            {t().loop.toSheet}
          </a>
        </p>
      </section>
      <div class="counter-judge stack">
        <section class="stack tight" aria-labelledby="remarks-title">
          <h2 id="remarks-title">{t().loop.remarks}</h2>
          <p class="result-remarks">{sheet().remarks || t().loop.noRemarks}</p>
          <Show when={sheet().handedOver}>
            <p class="small soft">{t().loop.handedOver}</p>
          </Show>
        </section>
        <OpenQuestions sheet={sheet()} />
        <JudgeForm tables={props.tables} />
      </div>
      <div class="counter-more stack">
        <Cautions brief />
        <Fold title={t().loop.more}>
          <HandOver />
        </Fold>
      </div>
      <NextStep>
        <a class="button" href={hashOf({ screen: 'result', id: sheet().id })}>
          {t().loop.toResult}
        </a>
        <button type="button" class="button strong" onClick={() => void sendPicture()}>
          {t().loop.sendAnswer}
        </button>
      </NextStep>
    </article>
  );
}
