import { createMemo, createSignal, For, Match, onMount, Show, Switch } from 'solid-js';
import { defaultOptions, type Refused } from '../../journey/identification';
import type { Overlay } from '../../journey/overlay';
import { HelpHandles } from '../inspection/HelpHandles';
import { type Hand, HelpPanel } from '../inspection/HelpPanel';
import { createHistory } from '../inspection/history';
import { PhotoView } from '../inspection/PhotoView';
import { language, t } from '../language/language';
import { CornersByHand } from '../reference/CornersByHand';
import { WhatIsIt } from '../reference/WhatIsIt';
import { go, hashOf } from '../shell/route';
import { FileButton } from '../start/FileButton';
import { cancelJob, discardJob, job, measureNew, resumeDraft, stages } from '../work/job';
import { RefusalPicture } from './RefusalPicture';
import { badMarks, refusalWords } from './refusal-words';
import './measuring.css';

/** Named progress, and what to do when it ends without an answer. */
export function MeasuringScreen() {
  onMount(async () => {
    if (!job() && !(await resumeDraft())) go({ screen: 'start' }, 'replace');
  });
  return (
    <Show when={job()}>
      {(now) => (
        <Switch>
          <Match when={now().status === 'running'}>
            <Progress />
          </Match>
          <Match when={now().status === 'refused' && now().refused} keyed>
            {(refused) => <RefusedView refused={refused} />}
          </Match>
          <Match when={now().status === 'marking' && now()} keyed>
            {(marking) => <RuleMarking photo={marking.photo} />}
          </Match>
          <Match when={now().status === 'cancelled'}>
            <Stopped title={t().measuring.cancelled} />
          </Match>
          <Match when={now().status === 'failed'}>
            <Stopped title={t().refused.other.what} />
          </Match>
        </Switch>
      )}
    </Show>
  );
}

function Progress() {
  const at = createMemo(() => {
    const stage = job()?.stage;
    return stage ? stages.indexOf(stage) : -1;
  });
  const state = (index: number) => (index < at() ? 'done' : index === at() ? 'now' : 'waiting');
  return (
    <section class="measuring stack">
      <h1>{t().measuring.title}</h1>
      <p class="visually-hidden" role="status">
        {at() < 0 ? t().measuring.opening : t().measuring.stages[stages[at()]]}
      </p>
      <ol class="stages">
        <For each={stages}>
          {(stage, index) => (
            <li data-state={state(index())}>
              <span>{t().measuring.stages[stage]}</span>
              <span class="small soft">{t().measuring.state[state(index())]}</span>
            </li>
          )}
        </For>
      </ol>
      <Show when={at() < 0}>
        <p class="small soft">{t().measuring.opening} …</p>
      </Show>
      <div class="row">
        <button type="button" class="button" onClick={cancelJob}>
          {t().measuring.cancel}
        </button>
      </div>
    </section>
  );
}

function Stopped(props: { readonly title: string }) {
  return (
    <section class="stack">
      <h1>{props.title}</h1>
      <div class="row">
        <button
          type="button"
          class="button strong"
          onClick={() => {
            const now = job();
            if (now) void measureNew(now.photo, now.options);
          }}
        >
          {t().measuring.again}
        </button>
        <Leave />
      </div>
    </section>
  );
}

function Leave() {
  return (
    <button
      type="button"
      class="button"
      onClick={() => {
        void discardJob();
        go({ screen: 'start' });
      }}
    >
      {t().refused.retry}
    </button>
  );
}

function RefusedView(props: { readonly refused: Refused }) {
  const byRule = () => Boolean(job()?.options.ruler);
  const words = () => refusalWords(props.refused.refusal, byRule());
  const marksAreBad = () => badMarks(props.refused.refusal, byRule());
  const readable = () =>
    !['unreadable', 'unsupported-format', 'too-large'].includes(props.refused.refusal.reason);
  const [helping, setHelping] = createSignal<ByHand | null>(null);
  return (
    <section class="refused stack">
      <div class="refused-head">
        <div class="stack tight">
          <p class="caps">{t().refused.title}</p>
          <h1>{words().what}</h1>
          <p class="refused-todo">{words().todo}</p>
        </div>
        <Show when={!marksAreBad()}>
          <RefusalPicture reason={props.refused.refusal.reason} />
        </Show>
      </div>
      <Show when={props.refused.refusal.reason === 'which-reference' && job()}>
        {(now) => <WhatIsIt photo={now().photo} />}
      </Show>
      <div class="row">
        <FileButton label={t().refused.retake} capture strong />
        <FileButton label={t().refused.retry} />
        <Show when={readable() && !helping()}>
          <button type="button" class="button" onClick={() => setHelping('axis')}>
            {t().refused.byHand}
          </button>
          <button type="button" class="button" onClick={() => setHelping('ruler')}>
            {t().refused.byRule}
          </button>
          <button type="button" class="button" onClick={() => setHelping('corners')}>
            {t().reference.showCorners}
          </button>
        </Show>
        <Show when={props.refused.refusal.reason === 'no-card' && !marksAreBad()}>
          <a class="button" href={hashOf({ screen: 'card' })}>
            {t().start.getCard}
          </a>
        </Show>
        <a class="button plain" href={hashOf({ screen: job()?.wear ? 'used' : 'readings' })}>
          {t().refused.readings}
        </a>
      </div>
      <Show when={readable() && job()} keyed>
        {(now) => (
          <RefusedPhoto
            photo={now.photo}
            overlay={props.refused.overlay}
            mode={helping()}
            onClose={() => setHelping(null)}
          />
        )}
      </Show>
      <Show when={language() === 'en' && props.refused.refusal.advice !== words().todo}>
        <details class="small soft">
          <summary>{t().refused.detail}</summary>
          <p>
            {props.refused.refusal.reason}: {props.refused.refusal.advice}
          </p>
        </details>
      </Show>
    </section>
  );
}

type ByHand = Hand['mode'] | 'corners';

/** A rule gives no scale by itself: two of its graduations are shown first. */
function RuleMarking(props: { readonly photo: Blob }) {
  return (
    <section class="stack">
      <div class="stack tight">
        <h1>{t().reference.markRule}</h1>
        <p>{t().reference.markText}</p>
      </div>
      <RefusedPhoto
        photo={props.photo}
        overlay={null}
        mode="ruler"
        onClose={() => {
          void discardJob();
          go({ screen: 'start' });
        }}
      />
    </section>
  );
}

function RefusedPhoto(props: {
  readonly photo: Blob;
  readonly overlay: Overlay | null;
  readonly mode: ByHand | null;
  readonly onClose: () => void;
}) {
  const [size, setSize] = createSignal<{ width: number; height: number } | null>(null);
  onMount(async () => {
    const { overlay } = props;
    if (overlay) setSize({ width: overlay.widthPx, height: overlay.heightPx });
    else
      await createImageBitmap(props.photo).then(
        (image) => {
          setSize({ width: image.width, height: image.height });
          image.close();
        },
        () => undefined,
      );
  });
  return (
    <Show when={size()} keyed>
      {({ width, height }) => {
        const history = createHistory<Hand>({
          mode: 'axis',
          a: [width * 0.42, height / 2],
          b: [width * 0.58, height / 2],
          side: 'both',
          distance: '',
        });
        return (
          <div class="refused-photo stack tight">
            <Show
              when={props.mode !== 'corners'}
              fallback={
                <CornersByHand
                  of={{ photo: props.photo, width, height }}
                  overlay={props.overlay}
                  asked={job()?.options.reference ?? null}
                  busy={false}
                  onApply={(reference) => void measureNew(props.photo, { reference })}
                  onClose={props.onClose}
                />
              }
            >
              <PhotoView
                photo={props.photo}
                overlay={props.overlay}
                crest={null}
                onCrest={() => undefined}
              >
                {props.mode
                  ? (scale, toPhoto) => (
                      <HelpHandles
                        history={history}
                        scale={scale()}
                        toPhoto={toPhoto}
                        of={{ photo: props.photo, width, height }}
                      />
                    )
                  : undefined}
              </PhotoView>
              <Show when={props.mode !== 'corners' && props.mode} keyed>
                {(mode) => {
                  history.push({ ...history.now(), mode });
                  return (
                    <HelpPanel
                      history={history}
                      busy={false}
                      onApply={(help) => {
                        const asked = job()?.options;
                        void measureNew(props.photo, {
                          ...help,
                          reference: asked?.reference ?? defaultOptions.reference,
                          ruler: help.ruler ?? asked?.ruler ?? null,
                        });
                      }}
                      onClear={() => void measureNew(props.photo)}
                      onClose={props.onClose}
                    />
                  );
                }}
              </Show>
            </Show>
          </div>
        );
      }}
    </Show>
  );
}
