import { createMemo, onMount, Show } from 'solid-js';
import { percent } from '../language/format';
import { t } from '../language/language';
import { Cautions } from '../result/Cautions';
import { SheetPage } from '../sheet/SheetPage';
import { hashOf } from '../shell/route';
import { nameOf } from '../work/open-sheet';
import { openSheet } from '../work/sheets';
import { CrestBlock } from './CrestBlock';
import { FindingBlock } from './FindingBlock';
import { OverlapBlock } from './OverlapBlock';
import { type Suggested, ThreadAndClass } from './ThreadAndClass';
import { WearPhotos } from './WearPhotos';
import { WearReadingsForm } from './WearReadingsForm';
import { changeWear, leaveOutWear } from './wear-actions';
import { expectedThread, freshWear, isFemale, wearOfSheet } from './wear-of-sheet';
import './wear.css';

/** Whether a used part is still good: a page of its own beside the sheet. */
export function WearScreen(props: { readonly id: string }) {
  return (
    <SheetPage id={props.id} title={t().wear.title}>
      <OpenedWear />
    </SheetPage>
  );
}

const mostSuggested = 4;

function OpenedWear() {
  const sheet = () => openSheet()!.sheet;
  const part = () => sheet().wear ?? freshWear();
  const thread = createMemo(() => expectedThread(sheet()));
  const wear = createMemo(() => wearOfSheet({ ...sheet(), wear: part() }));
  const suggested = createMemo((): Suggested[] => {
    const { decision, threads } = sheet().conclusion;
    if (decision.thread)
      return [{ designation: decision.thread, label: t().wear.found(decision.thread) }];
    // Without a photo or a reading every thread is as likely as the next.
    if (!sheet().measurement && sheet().readings.length === 0) return [];
    return threads.slice(0, mostSuggested).flatMap((one) =>
      one.system === null || one.probability < 0.01
        ? []
        : [
            {
              designation: one.designation,
              label: t().wear.candidate(one.designation, percent(one.probability)),
            },
          ],
    );
  });
  // The photos of a used part may differ, which those of a whole one must not: asked from the first look on.
  onMount(() => {
    if (!sheet().wear && !isFemale(sheet())) void changeWear((now) => now);
  });
  return (
    <article class="wear">
      <header class="wear-head stack tight">
        <h1>{t().wear.title}</h1>
        <p class="soft measure-width">{t().wear.lead}</p>
        <div class="row">
          <a class="button" href={hashOf({ screen: 'sheet', id: sheet().id })}>
            {t().wear.toSheet}: {sheet().title || nameOf(sheet()) || t().drawer.untitled}
          </a>
          <Show when={sheet().wear}>
            <a
              class="button plain"
              href={hashOf({ screen: 'sheet', id: sheet().id })}
              onClick={() => void leaveOutWear()}
            >
              {t().wear.stop}
            </a>
          </Show>
        </div>
      </header>
      <Show when={!isFemale(sheet())} fallback={<p class="alert">{t().wear.femaleEnd}</p>}>
        <div class="wear-asked stack">
          <Show when={thread() === null}>
            <p>{t().wear.notFound}</p>
          </Show>
          <ThreadAndClass
            thread={thread()}
            className={part().class}
            suggested={suggested()}
            onThread={(designation) =>
              void changeWear((now) => ({ ...now, thread: designation, class: null }))
            }
            onClass={(name) => void changeWear((now) => ({ ...now, class: name }))}
          />
        </div>
        <Show when={wear()}>
          {(now) => (
            <>
              <section class="wear-answer stack" aria-labelledby="wear-finding-title">
                <h2 id="wear-finding-title">{t().wear.finding}</h2>
                <div aria-live="polite">
                  <FindingBlock wear={now()} />
                </div>
              </section>
              <div class="wear-looks">
                <WearReadingsForm
                  readings={part().readings}
                  tapered={now().gauge !== null}
                  judged={now().limits !== null}
                />
              </div>
              <div class="wear-sees stack">
                <CrestBlock
                  wear={now()}
                  flankAngleDeg={sheet().measurement?.flankAngleDeg ?? null}
                />
                <OverlapBlock wear={now()} />
                <Show when={sheet().shots.length > 0}>
                  <WearPhotos wear={now()} />
                </Show>
              </div>
            </>
          )}
        </Show>
      </Show>
      <div class="wear-cautions">
        <Cautions />
      </div>
    </article>
  );
}
