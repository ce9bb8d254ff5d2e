import { createResource, For, onMount, Show } from 'solid-js';
import { usedCheck } from '../card/card-checks';
import { EndChoice } from '../end/EndChoice';
import { endChoice } from '../end/end-choice';
import { dateTime } from '../language/format';
import { t } from '../language/language';
import { ReferenceChoice } from '../reference/ReferenceChoice';
import { go, hashOf } from '../shell/route';
import { keepText, keptText } from '../widgets/kept-text';
import { narrow } from '../widgets/narrow';
import { recallDraft } from '../work/draft';
import { warmUpSoon } from '../work/engine';
import { dropping } from '../work/intake';
import { discardJob, job, resumeDraft } from '../work/job';
import { FileButton } from './FileButton';
import { Recent } from './Recent';
import { Samples } from './Samples';
import { AimPicture, PrintPicture, ReadingStep } from './StepPictures';
import './start.css';

export function StartScreen() {
  const [draft, { mutate }] = createResource(recallDraft);
  const first = !seenBefore();
  const goOn = async () => {
    if (job()?.status === 'running') go({ screen: 'measuring' });
    else await resumeDraft();
  };
  onMount(warmUpSoon);
  return (
    <div class="start">
      <div class="start-head stack tight">
        <h1>{t().start.title}</h1>
        <p class="start-lead">{t().start.lead}</p>
        <p class="start-used">
          <a class="button" href={hashOf({ screen: 'used' })}>
            {t().wear.title}
          </a>
        </p>
      </div>
      <Show when={draft()}>
        {(kept) => (
          <section class="start-draft panel" aria-labelledby="draft-title">
            <h2 id="draft-title">{t().start.draft}</h2>
            <p>{t().start.draftFrom(dateTime(kept().at))}</p>
            <div class="row">
              <button type="button" class="button strong" onClick={() => void goOn()}>
                {t().start.draftGo}
              </button>
              <button
                type="button"
                class="button"
                onClick={async () => {
                  await discardJob();
                  mutate(null);
                }}
              >
                {t().start.draftDrop}
              </button>
            </div>
          </section>
        )}
      </Show>
      <section
        class="start-photo"
        classList={{ dropping: dropping() }}
        aria-labelledby="photo-title"
      >
        <h2 id="photo-title">{t().start.photo}</h2>
        <EndChoice />
        <Show when={endChoice() !== 'female'}>
          <ReferenceChoice />
        </Show>
        <div class="start-actions">
          {/* On a phone a photo is taken; at a desk the post is opened. */}
          <FileButton label={t().start.take} capture strong={narrow()} />
          <FileButton label={t().start.choose} />
          <FileButton label={t().loop.openReceived} strong={!narrow()} />
          <Show when={'mediaDevices' in navigator}>
            <a class="button" href={hashOf({ screen: 'shoot' })}>
              {t().start.live}
            </a>
          </Show>
        </div>
        <p class="small soft">{dropping() ? t().start.dropNow : t().start.drop}</p>
        <p class="small soft">
          {t().start.card}:{' '}
          <a href={hashOf({ screen: 'card' })}>{usedCheck()?.name ?? t().start.cardNominal}</a>
        </p>
        <Show when={endChoice() !== 'female'}>
          <div class="start-sketch" aria-hidden="true">
            <AimPicture />
          </div>
        </Show>
      </section>
      <section class="start-sample" aria-labelledby="sample-title">
        <h2 id="sample-title">{t().start.sample}</h2>
        <Samples />
        <p class="small soft">{t().start.sampleNote}</p>
      </section>
      <section class="start-readings" aria-labelledby="readings-only-title">
        <h2 id="readings-only-title">{t().start.noPhoto}</h2>
        <p>{t().start.noPhotoText}</p>
        <div class="row">
          <button type="button" class="button" onClick={() => go({ screen: 'readings' })}>
            {t().start.readingsOnly}
          </button>
        </div>
      </section>
      <HowItWorks open={first} />
      <Recent />
    </div>
  );
}

const seenKey = 'crestwise.seen';

/** Open on the first visit, folded afterwards. */
function HowItWorks(props: { readonly open: boolean }) {
  return (
    <details class="start-how" open={props.open}>
      <summary>
        <h2>{t().start.how}</h2>
      </summary>
      <ol class="how-steps">
        <For each={t().start.steps}>
          {(step, index) => (
            <li>
              <div class="how-picture">
                {index() === 0 ? (
                  <PrintPicture />
                ) : index() === 1 ? (
                  <AimPicture />
                ) : (
                  <ReadingStep />
                )}
              </div>
              <h3>
                {index() + 1}. {step.title}
              </h3>
              <p class="small">{step.text}</p>
              <Show when={index() === 0}>
                <p class="small">
                  <a href={hashOf({ screen: 'card' })}>{t().start.getCard}</a>
                </p>
              </Show>
            </li>
          )}
        </For>
      </ol>
    </details>
  );
}

function seenBefore(): boolean {
  const seen = keptText(seenKey) !== null;
  keepText(seenKey, '1');
  return seen;
}
