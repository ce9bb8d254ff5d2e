import { createMemo, createSignal, For, Match, onCleanup, onMount, Show, Switch } from 'solid-js';
import type { Guidance } from '../../journey/guidance';
import { tiltFault } from '../../journey/guided-tilt';
import { EndChoice } from '../end/EndChoice';
import { endChoice } from '../end/end-choice';
import { t } from '../language/language';
import { AimFrame } from '../reference/AimFrame';
import { ReferenceChoice } from '../reference/ReferenceChoice';
import { outlineAsked, referenceChoice } from '../reference/reference-choice';
import { FileButton } from '../start/FileButton';
import { guideFrame, warmUpSoon } from '../work/engine';
import { measureNew } from '../work/job';
import { type Camera, openCamera } from './camera';
import { type CheckKey, checksOf, firstHint } from './checks';
import { signalShot } from './signal-shot';
import './shoot.css';

/** The frames that must be good in a row before the shot is taken. */
const steadyFrames = 4;

export function ShootScreen() {
  const [camera, setCamera] = createSignal<Camera | null>(null);
  const [trouble, setTrouble] = createSignal<'none' | 'no-camera' | 'denied'>('none');
  const [auto, setAuto] = createSignal(true);
  const [torch, setTorch] = createSignal(false);
  const [guidance, setGuidance] = createSignal<Guidance | null>(null);
  const [steady, setSteady] = createSignal(0);
  const [unguided, setUnguided] = createSignal(false);
  const [taking, setTaking] = createSignal(false);
  const [shot, setShot] = createSignal(false);
  let video!: HTMLVideoElement;
  const gone = new AbortController();
  onMount(() => {
    warmUpSoon();
    // Whoever opens this screen has asked for the camera: no second tap.
    void start();
  });
  onCleanup(() => {
    gone.abort();
    camera()?.close();
  });

  const start = async () => {
    const opened = await openCamera();
    if (typeof opened === 'string') {
      setTrouble(opened);
      return;
    }
    if (gone.signal.aborted) {
      opened.close();
      return;
    }
    setTrouble('none');
    setCamera(opened);
    video.srcObject = opened.stream;
    await video.play().catch(() => undefined);
    void watch();
  };

  /** One frame at a time: the next is taken when the last was judged, so a slow device skips frames. */
  const watch = async () => {
    while (!gone.signal.aborted && camera()) {
      const frame = camera()!.frame(video);
      if (frame) {
        try {
          const found = await guideFrame(gone.signal, frame, outlineAsked(), endChoice());
          if (gone.signal.aborted) return;
          setUnguided(false);
          setGuidance(found);
          setSteady((now) => (found.ready ? now + 1 : 0));
          if (auto() && referenceChoice() !== 'rule' && steady() >= steadyFrames && !taking()) {
            await shoot();
            return;
          }
        } catch {
          if (gone.signal.aborted) return;
          // Without the worker the person judges; it is tried again now and then.
          setUnguided(true);
          setGuidance(null);
          await pause(3000);
        }
      }
      await pause(30);
    }
  };

  const shoot = async () => {
    const now = camera();
    if (!now || taking()) return;
    setTaking(true);
    const photo = await now.shoot(video);
    signalShot();
    setShot(true);
    now.close();
    setCamera(null);
    if (photo) await measureNew(photo);
    setTaking(false);
  };

  const checks = createMemo(() => checksOf(guidance(), referenceChoice(), endChoice()));
  const hint = () => firstHint(guidance(), referenceChoice(), endChoice());
  const hintWords = (key: CheckKey) => {
    const choice = referenceChoice();
    if (key === 'card' && choice !== 'card') return t().reference.camera.bring[choice];
    if (key === 'tilt' && endChoice() === 'female')
      return tiltFault(guidance()?.tiltDeg ?? 0, 'female') === 'too-level'
        ? t().end.shoot.tooLevel
        : t().end.shoot.tooSlanted;
    return key === 'contrast' && guidance()?.field === 'dark'
      ? t().shoot.contrastOnDark
      : t().shoot.hints[key];
  };

  const checkWords = (key: CheckKey) => {
    if (key === 'card' && referenceChoice() !== 'card') return t().reference.camera.inView;
    return key === 'tilt' && endChoice() === 'female' ? t().end.shoot.check : t().shoot.checks[key];
  };

  return (
    <div class="shoot">
      <div class="screen-head">
        <h1>{t().shoot.title}</h1>
      </div>
      <EndChoice brief />
      <Show when={endChoice() === 'male'}>
        <ReferenceChoice brief />
      </Show>
      <div class="shoot-columns">
        <div class="viewfinder" classList={{ steady: steady() > 0, shot: shot() }}>
          <video ref={video} playsinline muted aria-label={t().shoot.viewfinder} />
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
                <Match when={hint()}>{(key) => hintWords(key())}</Match>
                <Match when={referenceChoice() === 'rule'}>{t().reference.camera.bring.rule}</Match>
                <Match when={true}>{t().shoot.hold}</Match>
              </Switch>
            </p>
          </Show>
        </div>
        <div class="stack">
          <Show when={trouble() !== 'none'}>
            <p class="alert" role="alert">
              {trouble() === 'denied' ? t().shoot.denied : t().shoot.noCamera}
            </p>
          </Show>
          <Show when={!unguided()}>
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
            <Show when={referenceChoice() !== 'rule'}>
              <label class="choice">
                <input type="checkbox" checked={auto()} onChange={() => setAuto(!auto())} />
                {t().shoot.auto}
              </label>
            </Show>
          </Show>
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
                  onClick={async () => {
                    if (await turn(!torch())) setTorch(!torch());
                  }}
                >
                  {t().shoot.torch}
                </button>
              )}
            </Show>
            <FileButton label={t().shoot.full} capture />
          </div>
        </div>
      </div>
    </div>
  );
}

const pause = (ms: number) => new Promise<void>((done) => setTimeout(done, ms));
