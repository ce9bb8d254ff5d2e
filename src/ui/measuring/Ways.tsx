import { For, Match, Switch } from 'solid-js';
import { t } from '../language/language';
import { hashOf } from '../shell/route';
import { FileButton } from '../start/FileButton';
import { job, measureNew } from '../work/job';
import type { Way } from './next-steps';
import type { ByHand } from './RefusedPhoto';

/** The ways on after a refusal, as buttons, in the order given. */
export function Ways(props: {
  readonly ways: readonly Way[];
  /** The first is the one to take. */
  readonly strongFirst?: boolean;
  readonly onByHand?: (mode: ByHand) => void;
}) {
  return (
    <For each={props.ways}>
      {(way, index) => {
        const strong = () => Boolean(props.strongFirst) && index() === 0;
        const byHand = (mode: ByHand, label: string) => (
          <button
            type="button"
            class="button"
            classList={{ strong: strong() }}
            onClick={() => props.onByHand?.(mode)}
          >
            {label}
          </button>
        );
        return (
          <Switch>
            <Match when={way === 'again'}>
              <button
                type="button"
                class="button"
                classList={{ strong: strong() }}
                onClick={() => {
                  const now = job();
                  if (now) void measureNew(now.photo, now.options);
                }}
              >
                {t().measuring.again}
              </button>
            </Match>
            <Match when={way === 'retake'}>
              <FileButton label={t().refused.retake} capture strong={strong()} />
            </Match>
            <Match when={way === 'another'}>
              <FileButton label={t().refused.retry} strong={strong()} />
            </Match>
            <Match when={way === 'axis'}>{byHand('axis', t().refused.byHand)}</Match>
            <Match when={way === 'ruler'}>{byHand('ruler', t().refused.byRule)}</Match>
            <Match when={way === 'corners'}>{byHand('corners', t().reference.showCorners)}</Match>
            <Match when={way === 'other-gender' && job()} keyed>
              {({ photo, options }) => {
                const gender = options.gender === 'female' ? 'male' : 'female';
                return (
                  <button
                    type="button"
                    class="button"
                    classList={{ strong: strong() }}
                    onClick={() => void measureNew(photo, { ...options, gender })}
                  >
                    {gender === 'female' ? t().end.inside : t().end.outside}
                  </button>
                );
              }}
            </Match>
            <Match when={way === 'card'}>
              <a class="button" classList={{ strong: strong() }} href={hashOf({ screen: 'card' })}>
                {t().start.getCard}
              </a>
            </Match>
            <Match when={way === 'readings'}>
              <a class="button plain" href={hashOf({ screen: job()?.wear ? 'used' : 'readings' })}>
                {t().refused.readings}
              </a>
            </Match>
          </Switch>
        );
      }}
    </For>
  );
}
