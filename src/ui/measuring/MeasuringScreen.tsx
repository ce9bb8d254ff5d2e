import { createMemo, For, Match, onMount, Show, Switch } from 'solid-js';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import { go } from '../shell/route';
import { cancelJob, discardJob, job, resumeDraft, stages } from '../work/job';
import { RefusedPhoto } from './RefusedPhoto';
import { RefusedView } from './RefusedView';
import { Ways } from './Ways';
import './measuring.css';

/** Named progress, and what to do when it ends without an answer. */
export function MeasuringScreen() {
  onMount(async () => {
    if (job() || (await resumeDraft())) return;
    notify(t().measuring.nothingHere);
    go({ screen: 'start' }, 'replace');
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

/** Cancelled, or a fault of ours, which may come again: then there are other ways. */
function Stopped(props: { readonly title: string }) {
  return (
    <section class="stack">
      <h1>{props.title}</h1>
      <div class="row">
        <Ways ways={['again', 'another', 'readings']} strongFirst />
      </div>
    </section>
  );
}

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
