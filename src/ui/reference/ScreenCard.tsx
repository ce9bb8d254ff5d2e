import { createEffect, createSignal, onCleanup, onMount, Show } from 'solid-js';
import { card } from '../../scale-card/geometry';
import { keepCheck } from '../card/card-checks';
import { number } from '../language/format';
import { t } from '../language/language';
import { notify } from '../shell/notices';
import {
  id1Mm,
  keepScreenSize,
  pxPerMmBounds,
  screenCheck,
  screenPxPerMm,
  shownShare,
  thisScreen,
} from './screen-size';
import './screen-card.css';

/** The card on this screen at its true size, or smaller where the screen is: once the size of a screen pixel has
 *  been set against a bank card laid on the glass. */
export function ScreenCard(props: { readonly src: string; readonly onClose: () => void }) {
  let dialog!: HTMLDialogElement;
  const [setting, setSetting] = createSignal(screenPxPerMm() === null);
  createEffect(() => dialog.showModal());
  return (
    <dialog
      class="screen-card"
      ref={dialog}
      onClose={props.onClose}
      aria-label={setting() ? t().reference.onScreen.title : t().card.title}
    >
      <Show
        when={!setting() && screenPxPerMm()}
        keyed
        fallback={<SizeSetting onKept={() => setSetting(false)} onClose={() => dialog.close()} />}
      >
        {(pxPerMm) => (
          <TrueSize
            src={props.src}
            pxPerMm={pxPerMm}
            onAgain={() => setSetting(true)}
            onClose={() => dialog.close()}
          />
        )}
      </Show>
    </dialog>
  );
}

/** Phones have about 6.3 CSS pixels to the millimetre, desks about 3.8 (160 and 96 an inch). */
const guess = () => (matchMedia('(pointer: coarse)').matches ? 6.3 : 3.78);

function SizeSetting(props: { readonly onKept: () => void; readonly onClose: () => void }) {
  const [pxPerMm, setPxPerMm] = createSignal(screenPxPerMm() ?? guess());
  const upright = innerHeight > innerWidth;
  const [w, h] = upright ? [id1Mm.short, id1Mm.long] : [id1Mm.long, id1Mm.short];
  const nudge = (by: number) =>
    setPxPerMm((now) =>
      Math.min(pxPerMmBounds.most, Math.max(pxPerMmBounds.least, now * (1 + by))),
    );
  return (
    <div class="screen-setting">
      <p class="small">{t().reference.onScreen.lead}</p>
      <div
        class="screen-frame"
        style={{
          width: `${w * pxPerMm()}px`,
          height: `${h * pxPerMm()}px`,
          'border-radius': `${id1Mm.corner * pxPerMm()}px`,
        }}
      />
      <div class="screen-tools">
        <label class="field">
          <span class="small">{t().reference.onScreen.slider}</span>
          <input
            type="range"
            min={pxPerMmBounds.least}
            max={pxPerMmBounds.most}
            step="0.005"
            value={pxPerMm()}
            onInput={(event) => setPxPerMm(event.currentTarget.valueAsNumber)}
          />
        </label>
        <div class="row">
          <button type="button" class="button" onClick={() => nudge(-0.002)}>
            {t().reference.onScreen.smaller}
          </button>
          <button type="button" class="button" onClick={() => nudge(0.002)}>
            {t().reference.onScreen.larger}
          </button>
          <button
            type="button"
            class="button strong"
            onClick={() => {
              keepScreenSize(pxPerMm());
              props.onKept();
            }}
          >
            {t().reference.onScreen.keep}
          </button>
          <button type="button" class="button" onClick={props.onClose}>
            {t().shell.close}
          </button>
        </div>
      </div>
    </div>
  );
}

function TrueSize(props: {
  readonly src: string;
  readonly pxPerMm: number;
  readonly onAgain: () => void;
  readonly onClose: () => void;
}) {
  const [room, setRoom] = createSignal({ width: 0, height: 0 });
  let stage!: HTMLDivElement;
  onMount(() => {
    const watch = new ResizeObserver(([entry]) => setRoom(entry.contentRect));
    watch.observe(stage);
    onCleanup(() => watch.disconnect());
  });
  const shown = () => (room().width > 0 ? shownShare(props.pxPerMm, room()) : null);
  const use = (share: number) => {
    keepCheck(screenCheck(t().reference.onScreen.name(thisScreen()), share));
    notify(t().card.kept);
    props.onClose();
  };
  return (
    <div class="screen-true">
      <div class="screen-stage" ref={stage}>
        <Show
          when={shown()}
          fallback={<p>{room().width > 0 ? t().reference.onScreen.tooSmall : ''}</p>}
        >
          {(fit) => (
            <img
              src={props.src}
              alt={t().card.preview}
              style={{
                width: `${card.widthMm * fit().share * props.pxPerMm}px`,
                height: `${card.heightMm * fit().share * props.pxPerMm}px`,
                transform: `translate(-50%, -50%) ${fit().turned ? 'rotate(90deg)' : ''}`,
              }}
            />
          )}
        </Show>
      </div>
      <div class="row screen-tools">
        <Show when={shown()}>
          {(fit) => (
            <>
              <span class="small">
                {t().reference.onScreen.shown(number(100 * fit().share, 1))}{' '}
                {t().reference.onScreen.glass}
              </span>
              <button type="button" class="button strong" onClick={() => use(fit().share)}>
                {t().reference.onScreen.use}
              </button>
            </>
          )}
        </Show>
        <button type="button" class="button" onClick={props.onAgain}>
          {t().reference.onScreen.again}
        </button>
        <button type="button" class="button" onClick={props.onClose}>
          {t().shell.close}
        </button>
      </div>
    </div>
  );
}
