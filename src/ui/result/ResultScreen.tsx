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
import { stampOf, whatHolds } from '../../journey/8-sheet/what-holds';
import { tubesOf } from '../../standards/connections/tubes';
import { readingText, seatText } from '../identification/reading-text';
import { SectionDrawing } from '../identification/SectionDrawing';
import { dimensionsOf, loadTables, type Tables } from '../identification/table-rows';
import { number, plusMinus } from '../language/format';
import { t } from '../language/language';
import { tradeName } from '../language/trade-names';
import { BeforeAfter } from '../sheet/BeforeAfter';
import { HandOver } from '../sheet/HandOver';
import { SheetFacts } from '../sheet/SheetFacts';
import { sendPicture, sendToCounter, spokenName } from '../sheet/send';
import { NextStep } from '../shell/NextStep';
import { hashOf } from '../shell/route';
import { WearResult } from '../wear/WearNote';
import { Fold } from '../widgets/Fold';
import { Stamp } from '../widgets/Stamp';
import { ThreadPicture } from '../widgets/ThreadPicture';
import { nameOf, stateOf } from '../work/open-sheet';
import { openById, openSheet } from '../work/sheets';
import { AnswerBlock } from './AnswerBlock';
import { oRingPlace } from './assembly';
import { Cautions } from './Cautions';
import { elastomers } from './elastomers';
import { endWarnings, endWords, oRingText, otherTubes, threadName } from './end-words';
import { OpenQuestions } from './OpenQuestions';
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
  const decision = createMemo(() => whatHolds(sheet()));
  const settled = createMemo(() => settledEnd(sheet(), props.tables));
  const connection = () => settled()?.row ?? null;
  const thread = createMemo(() => {
    const name = decision().thread ?? connection()?.thread ?? null;
    return name ? props.tables.thread(name) : null;
  });
  /** Null while the form, and so the way it seals, is open. */
  const kind = () => settled()?.kind ?? null;
  return (
    <div class="result">
      <article class="result-page">
        <header class="result-head">
          <div>
            <p class="caps">{t().result.title}</p>
            <h1>{spokenName(sheet())}</h1>
            <Stamp kind={stampOf(sheet())} />
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
              <Show when={decision().connection} keyed fallback={t().identification.open}>
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
            <ThreadPicture item={openSheet()!} />
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
                  {t().inspection.pitch} {plusMinus(m.pitchMm, 'mm')} ·{' '}
                  {number(25.4 / m.pitchMm.value, 2)} tpi
                  <br />
                  {t().inspection.major} {plusMinus(m.majorDiameterMm, 'mm')} ·{' '}
                  {number(m.majorDiameterMm.value / 25.4, 3)} in
                  <br />
                  <span class="small soft">{t().inspection.numbersNote}</span>
                </p>
              )}
            </Show>
            <BeforeAfter sheet={sheet()} />
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
