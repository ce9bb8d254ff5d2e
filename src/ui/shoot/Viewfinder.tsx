import { Match, Show, Switch } from 'solid-js';
import { guidedEnd } from '../end/end-choice';
import { t } from '../language/language';
import { AimFrame } from '../reference/AimFrame';
import { referenceChoice } from '../reference/reference-choice';
import { hintWords } from './check-words';
import { firstHint } from './checks';
import type { Shooting } from './create-shooting';

/** The live picture, and the one thing to do next. */
export function Viewfinder(props: { readonly of: Shooting }) {
  const { attach, camera, trouble, start, guidance, steady, unguided, taking, shot } = props.of;
  const hint = () => firstHint(guidance(), referenceChoice(), guidedEnd());
  return (
    <div class="viewfinder" classList={{ steady: steady() > 0, shot: shot() }}>
      <video ref={attach} playsinline muted aria-label={t().shoot.viewfinder} />
      <Show when={camera()}>
        <AimFrame />
      </Show>
      <Show when={trouble() !== 'none'}>
        <div class="viewfinder-start">
          <button type="button" class="button strong" onClick={() => void start()}>
            {t().shoot.again}
          </button>
        </div>
      </Show>
      <Show when={camera() || shot()}>
        <p class="viewfinder-hint" role="status">
          <Switch>
            <Match when={shot()}>{t().shoot.shot}</Match>
            <Match when={taking()}>{t().shoot.taking}</Match>
            <Match when={unguided()}>{t().shoot.noGuide}</Match>
            <Match when={guidance() === null}>{t().shoot.hints.loading}</Match>
            <Match when={hint()}>{(key) => hintWords(key(), guidance())}</Match>
            <Match when={referenceChoice() === 'rule'}>{t().reference.camera.bring.rule}</Match>
            <Match when={true}>{t().shoot.hold}</Match>
          </Switch>
        </p>
      </Show>
    </div>
  );
}
