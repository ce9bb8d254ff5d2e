import { createSignal, onCleanup, onMount } from 'solid-js';
import type { Guidance } from '../../journey/guidance';
import { guidedEnd } from '../end/end-choice';
import { outlineAsked, referenceChoice } from '../reference/reference-choice';
import { guideFrame, warmUpSoon } from '../work/engine';
import { measureNew } from '../work/job';
import { type Camera, openCamera } from './camera';
import { signalShot } from './signal-shot';

/** The frames that must be good in a row before the shot is taken. */
const steadyFrames = 4;

/** The camera, what its frames show, and the shot. The camera is closed when the owner goes. */
export function createShooting() {
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
          const found = await guideFrame(gone.signal, frame, outlineAsked(), guidedEnd());
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

  return {
    attach: (element: HTMLVideoElement) => {
      video = element;
    },
    camera,
    trouble,
    start,
    auto,
    setAuto,
    torch,
    turnTorch: async (turn: (on: boolean) => Promise<boolean>) => {
      if (await turn(!torch())) setTorch(!torch());
    },
    guidance,
    steady,
    unguided,
    taking,
    shot,
    shoot,
  };
}

export type Shooting = ReturnType<typeof createShooting>;

const pause = (ms: number) => new Promise<void>((done) => setTimeout(done, ms));
