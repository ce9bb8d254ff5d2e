import { createMemo, createResource, Match, Show, Switch } from 'solid-js';
import type { Reading } from '../../journey/6-candidates/reading';
import { stampOf } from '../../journey/8-sheet/what-holds';
import { ConnectionCandidates, ThreadCandidates } from '../identification/Candidates';
import { Contradictions } from '../identification/Contradictions';
import { withReadings } from '../identification/conclusion-actions';
import { DecisionBlock } from '../identification/DecisionBlock';
import { goToClaim, goToQuestion } from '../identification/go-to-question';
import { AskedReading, ReadingList } from '../identification/Readings';
import { openClaim, SeatClaim } from '../identification/SeatClaim';
import { loadTables } from '../identification/table-rows';
import { Inspection } from '../inspection/Inspection';
import { t } from '../language/language';
import { AnswerBlock } from '../result/AnswerBlock';
import { Cautions } from '../result/Cautions';
import { NextStep } from '../shell/NextStep';
import { notify } from '../shell/notices';
import { go, hashOf } from '../shell/route';
import { WearNote } from '../wear/WearNote';
import { Fold } from '../widgets/Fold';
import { ThreadPicture } from '../widgets/ThreadPicture';
import { openSheet } from '../work/sheets';
import { setToolsAtHand, toolsAtHand } from '../work/tools';
import { BeforeAfter } from './BeforeAfter';
import { CardTrust } from './CardTrust';
import { HandOver } from './HandOver';
import { OtherEnds } from './OtherEnds';
import { PhotosApart } from './PhotosApart';
import { SheetHead } from './SheetHead';
import { SheetPage } from './SheetPage';
import { leaveToCounter, sendToCounter } from './send';
import './sheet.css';

export function SheetScreen(props: { readonly id: string }) {
  return (
    <SheetPage id={props.id} title={t().sheet.title}>
      <OpenedSheet />
    </SheetPage>
  );
}

function OpenedSheet() {
  const sheet = () => openSheet()!.sheet;
  const [tables] = createResource(loadTables);
  const shot = createMemo(() => sheet().shots[0] ?? null);
  /** Shares among threads of which none fits say nothing. */
  const nothingFits = () => sheet().conclusion.nearest !== null;
  const settled = () => sheet().conclusion.decision.state === 'settled';
  /** What the counter has answered is asked no more. */
  const answered = () => stampOf(sheet()) === 'confirmed';
  const asks = () => !settled() && !answered();

  const add = async (reading: Reading) => {
    await withReadings([...sheet().readings, reading], toolsAtHand());
    // The form it came from is gone; the answer to it stands here.
    document.getElementById('decision-title')?.focus();
  };
  const remove = (index: number) => {
    const before = sheet().readings;
    void withReadings(
      before.filter((_, i) => i !== index),
      toolsAtHand(),
    );
    notify(t().identification.removed, {
      label: t().drawer.undo,
      run: () => void withReadings(before, toolsAtHand()),
    });
  };

  const item = () => openSheet()!;
  const reading = (ask: boolean) => (
    <AskedReading
      ask={ask ? sheet().conclusion.decision.ask : null}
      end={sheet().conclusion.end}
      shown={openClaim(sheet())}
      tools={toolsAtHand()}
      onTools={(tools) => {
        setToolsAtHand(tools);
        void withReadings(sheet().readings, tools);
      }}
      onReading={(one) => void add(one)}
    />
  );

  return (
    <article class="sheet" classList={{ 'sheet-without-photo': shot() === null }}>
      <SheetHead />
      <div class="sheet-answer stack">
        <Show when={!sheet().received}>
          <AnswerBlock sheet={sheet()} />
        </Show>
        <CardTrust />
        <PhotosApart />
        <DecisionBlock conclusion={sheet().conclusion} />
        <Contradictions
          contradictions={sheet().conclusion.contradictions}
          readings={sheet().readings}
        />
        <ThreadPicture item={item()} onAsk={openClaim(sheet()) ? goToClaim : undefined} />
        <OtherEnds />
        <BeforeAfter sheet={sheet()} />
        {/* Where the end is asked for, its tiles say what the photo shows. */}
        <Show when={!asks() || sheet().conclusion.decision.ask?.reading !== 'seat'}>
          <SeatClaim sheet={sheet()} onReading={(one) => void add(one)} />
        </Show>
        <Show when={asks()}>{reading(true)}</Show>
        <ReadingList readings={sheet().readings} end={sheet().conclusion.end} onRemove={remove} />
        <WearNote />
      </div>
      <Show when={shot()}>
        <div class="sheet-photo">
          <Fold title={t().loop.details}>
            <Inspection />
          </Fold>
        </div>
      </Show>
      <div class="sheet-more stack">
        <Show when={!nothingFits()}>
          <Fold title={t().loop.candidates}>
            <Show when={sheet().conclusion.connections.length > 0}>
              <ConnectionCandidates
                conclusion={sheet().conclusion}
                readings={sheet().readings}
                tables={tables() ?? null}
              />
            </Show>
            <ThreadCandidates
              conclusion={sheet().conclusion}
              measurement={sheet().measurement}
              readings={sheet().readings}
              tables={tables() ?? null}
            />
          </Fold>
        </Show>
        <Show when={!asks()}>
          <details class="panel">
            <summary>{t().identification.addReading}</summary>
            {reading(false)}
          </details>
        </Show>
        <Fold title={t().loop.more}>
          <HandOver remarks />
        </Fold>
        <Cautions brief />
      </div>
      <SheetSteps asks={asks()} answered={answered()} />
    </article>
  );
}

/** Sender: the question, or on to the counter. Counter: back to judging. */
function SheetSteps(props: { readonly asks: boolean; readonly answered: boolean }) {
  const sheet = () => openSheet()!.sheet;
  const result = () => hashOf({ screen: 'result', id: sheet().id });
  const leave = async () => {
    await leaveToCounter();
    go({ screen: 'result', id: sheet().id });
  };
  return (
    <NextStep>
      <Switch>
        <Match when={sheet().received}>
          <a class="button strong" href={hashOf({ screen: 'counter', id: sheet().id })}>
            {t().loop.toCounter}
          </a>
        </Match>
        <Match when={!props.asks}>
          <Show when={!props.answered}>
            <button type="button" class="button" onClick={() => void sendToCounter()}>
              {t().loop.send}
            </button>
          </Show>
          <a class="button strong" href={result()}>
            {t().loop.toResult}
          </a>
        </Match>
        <Match when={true}>
          <Show
            when={sheet().handedOver}
            fallback={
              <button type="button" class="button" onClick={() => void leave()}>
                {t().loop.cantTell}
              </button>
            }
          >
            <a class="button" href={result()}>
              {t().loop.toResult}
            </a>
          </Show>
          <button type="button" class="button strong" onClick={goToQuestion}>
            {t().loop.answer}
          </button>
        </Match>
      </Switch>
    </NextStep>
  );
}
