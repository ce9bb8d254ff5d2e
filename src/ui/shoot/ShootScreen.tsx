import { createMemo, For, Show } from 'solid-js';
import { EndChoice } from '../end/EndChoice';
import { endChoice, guidedEnd } from '../end/end-choice';
import { t } from '../language/language';
import { ReferenceChoice } from '../reference/ReferenceChoice';
import { referenceChoice } from '../reference/reference-choice';
import { FileButton } from '../start/FileButton';
import { checkWords } from './check-words';
import { checksOf } from './checks';
import { createShooting, type Shooting } from './create-shooting';
import { Viewfinder } from './Viewfinder';
import './shoot.css';

export function ShootScreen() {
  const shooting = createShooting();
  return (
    <div class="shoot">
      <div class="screen-head">
        <h1>{t().shoot.title}</h1>
      </div>
      <EndChoice brief />
      <Show when={endChoice() !== 'female'}>
        <ReferenceChoice brief />
      </Show>
      <div class="shoot-columns">
        <Viewfinder of={shooting} />
        <div class="stack">
          <Show when={shooting.trouble() !== 'none'}>
            <p class="alert" role="alert">
              {shooting.trouble() === 'denied' ? t().shoot.denied : t().shoot.noCamera}
            </p>
          </Show>
          <Show when={!shooting.unguided()}>
            <CheckList of={shooting} />
          </Show>
          <AutoChoice of={shooting} />
          <ShootButtons of={shooting} />
        </div>
      </div>
    </div>
  );
}

/** What a good shot needs. */
function CheckList(props: { readonly of: Shooting }) {
  const { guidance } = props.of;
  const checks = createMemo(() => checksOf(guidance(), referenceChoice(), guidedEnd()));
  return (
    <ul class="checks">
      <For each={checks()}>
        {(check) => (
          <li data-state={check.state}>
            <span>{checkWords(check.key)}</span>
            <span class="small soft">
              {check.state === 'good'
                ? t().shoot.good
                : check.state === 'bad'
                  ? t().shoot.bad
                  : '–'}
            </span>
          </li>
        )}
      </For>
    </ul>
  );
}

/** Whether the shot is taken once all is well; it stays while the guidance is out, which may come back. */
function AutoChoice(props: { readonly of: Shooting }) {
  const { auto, setAuto } = props.of;
  return (
    <Show when={referenceChoice() !== 'rule'}>
      <label class="choice">
        <input type="checkbox" checked={auto()} onChange={() => setAuto(!auto())} />
        {t().shoot.auto}
      </label>
    </Show>
  );
}

function ShootButtons(props: { readonly of: Shooting }) {
  const { camera, taking, shoot, torch, turnTorch } = props.of;
  return (
    <div class="row shoot-buttons">
      <button
        type="button"
        class="button strong"
        disabled={!camera() || taking()}
        onClick={() => void shoot()}
      >
        {t().shoot.byHand}
      </button>
      <Show when={camera()?.setTorch} keyed>
        {(turn) => (
          <button
            type="button"
            class="button"
            aria-pressed={torch()}
            onClick={() => void turnTorch(turn)}
          >
            {t().shoot.torch}
          </button>
        )}
      </Show>
      <FileButton label={t().shoot.full} capture />
    </div>
  );
}
