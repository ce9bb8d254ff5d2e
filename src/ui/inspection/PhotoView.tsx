import { createEffect, createSignal, For, type JSX, on, onCleanup, onMount, Show } from 'solid-js';
import type { Overlay, PhotoPoint } from '../../journey/overlay';
import { visibleRings } from '../../journey/visible-rings';
import { t } from '../language/language';
import { boreLayers, type LayerName, layerNames } from './layers';
import { makeGestures } from './make-gestures';
import { OverlayLayers } from './OverlayLayers';
import { around, fit, moveBy, type Size, type ViewBox, zoomAbout } from './view-box';
import './photo-view.css';

export interface PhotoViewProps {
  readonly photo: Blob;
  readonly overlay: Overlay | null;
  /** Of a female end rings are drawn, which have no contact lines and no crests. */
  readonly female?: boolean;
  /** Index into overlay.crests; linked with the profile plot. */
  readonly crest: number | null;
  readonly onCrest: (crest: number | null) => void;
  /** Begins at the thread instead of the whole photo. */
  readonly fromThread?: boolean;
  /** Drawn on top, in photo px; gets the length of one viewer px in photo px. */
  readonly children?:
    | ((scale: () => number, toPhoto: (e: PointerEvent) => PhotoPoint) => JSX.Element)
    | undefined;
}

/** The photo with what was found drawn on it. Image and drawing are two layers that
 *  follow one view box: the browser turns the photo upright, the drawing stays sharp. */
export function PhotoView(props: PhotoViewProps) {
  let stage!: HTMLDivElement;
  const [natural, setNatural] = createSignal<Size | null>(null);
  const [viewer, setViewer] = createSignal<Size>({ width: 4, height: 3 });
  const [view, setView] = createSignal<ViewBox | null>(null);
  const [shown, setShown] = createSignal<ReadonlySet<LayerName>>(new Set(layerNames));

  const url = URL.createObjectURL(props.photo);
  onCleanup(() => URL.revokeObjectURL(url));

  const photo = (): Size =>
    props.overlay
      ? { width: props.overlay.widthPx, height: props.overlay.heightPx }
      : (natural() ?? { width: 4, height: 3 });
  const box = () => view() ?? fit(photo(), viewer());
  const scale = () => box().width / viewer().width;
  const zoomed = () => box().width < fit(photo(), viewer()).width * 0.999;
  const middle = (): [number, number] => [box().x + box().width / 2, box().y + box().height / 2];

  const zoom = (factor: number, at: readonly [number, number] = middle()) =>
    setView(zoomAbout(box(), factor, at, photo(), viewer()));
  const move = (dx: number, dy: number) => setView(moveBy(box(), dx, dy, photo()));
  const threadPoints = () => {
    const found = props.overlay;
    if (!found) return [];
    const lines = props.female ? visibleRings(found) : found.contactLines;
    return [...lines.flat(), ...(found.axis ?? []), ...found.crests.map((c) => c.at)];
  };
  const layers = () => (props.female ? boreLayers : layerNames);
  const layerName = (layer: LayerName) =>
    props.female && layer === 'outline' ? t().end.rings : t().inspection.layer[layer];
  const toThread = () => setView(around(threadPoints(), photo(), viewer()));
  const toPhoto = (event: PointerEvent): PhotoPoint => {
    const rect = stage.getBoundingClientRect();
    return [
      box().x + (event.clientX - rect.left) * scale(),
      box().y + (event.clientY - rect.top) * scale(),
    ];
  };

  onMount(() => {
    const watch = new ResizeObserver(([entry]) => {
      const { width, height } = entry.contentRect;
      if (width > 0 && height > 0) setViewer({ width, height });
      setView(null);
      if (props.fromThread && threadPoints().length > 0) toThread();
    });
    watch.observe(stage);
    onCleanup(() => watch.disconnect());
    makeGestures(stage, {
      zoomed,
      move: (dx, dy) => move(dx * scale(), dy * scale()),
      zoom: (factor, x, y) => zoom(factor, [box().x + x * scale(), box().y + y * scale()]),
    });
  });
  // A crest chosen in the plot is brought into view here.
  createEffect(
    on(
      () => props.crest,
      (index) => {
        const mark = index === null ? undefined : props.overlay?.crests[index];
        if (!mark || !zoomed()) return;
        const [x, y] = mark.at;
        const b = box();
        if (x < b.x || y < b.y || x > b.x + b.width || y > b.y + b.height)
          move(x - (b.x + b.width / 2), y - (b.y + b.height / 2));
      },
      { defer: true },
    ),
  );

  const onKey = (event: KeyboardEvent) => {
    const step = 40 * scale();
    const acts: Record<string, () => void> = {
      '+': () => zoom(1.4),
      '=': () => zoom(1.4),
      '-': () => zoom(1 / 1.4),
      '0': () => setView(null),
      ArrowLeft: () => move(-step, 0),
      ArrowRight: () => move(step, 0),
      ArrowUp: () => move(0, -step),
      ArrowDown: () => move(0, step),
    };
    const act = acts[event.key];
    if (!act || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key.startsWith('Arrow') && !zoomed()) return;
    event.preventDefault();
    act();
  };

  const toggle = (layer: LayerName) => {
    const next = new Set(shown());
    if (!next.delete(layer)) next.add(layer);
    setShown(next);
  };

  return (
    <div class="photo-view">
      <section
        class="photo-stage"
        classList={{ zoomed: zoomed() }}
        ref={stage}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the photo takes keys to move and zoom
        tabIndex={0}
        aria-label={`${t().inspection.photoOf}. ${t().inspection.keys}`}
        onKeyDown={onKey}
      >
        <img
          src={url}
          alt=""
          draggable={false}
          onLoad={(event) => {
            const { naturalWidth, naturalHeight } = event.currentTarget;
            setNatural({ width: naturalWidth, height: naturalHeight });
          }}
          style={{
            width: `${photo().width}px`,
            height: `${photo().height}px`,
            transform: `scale(${1 / scale()}) translate(${-0.5 - box().x}px, ${-0.5 - box().y}px)`,
          }}
        />
        {/* biome-ignore lint/a11y/noSvgWithoutTitle: decorative, or named by its handles */}
        <svg
          class="photo-drawing"
          viewBox={`${box().x} ${box().y} ${box().width} ${box().height}`}
          preserveAspectRatio="none"
          aria-hidden={props.children ? undefined : 'true'}
        >
          <Show when={props.overlay}>
            {(overlay) => (
              <OverlayLayers
                overlay={overlay()}
                female={props.female === true}
                shown={shown()}
                scale={scale()}
                crest={props.crest}
                onCrest={props.onCrest}
              />
            )}
          </Show>
          {props.children?.(scale, toPhoto)}
        </svg>
      </section>
      <div class="photo-tools">
        <div class="row photo-zoom">
          <button
            type="button"
            class="button"
            onClick={() => zoom(1.5)}
            aria-label={t().inspection.zoomIn}
          >
            +
          </button>
          <button
            type="button"
            class="button"
            onClick={() => zoom(1 / 1.5)}
            aria-label={t().inspection.zoomOut}
          >
            −
          </button>
          <button type="button" class="button" onClick={() => setView(null)}>
            {t().inspection.zoomFit}
          </button>
          <Show when={threadPoints().length > 0}>
            <button type="button" class="button" onClick={toThread}>
              {t().inspection.zoomThread}
            </button>
          </Show>
        </div>
        <Show when={props.overlay}>
          <fieldset class="row photo-layers">
            <legend class="visually-hidden">{t().inspection.layers}</legend>
            <For each={layers()}>
              {(layer) => (
                <label class="choice small">
                  <input
                    type="checkbox"
                    checked={shown().has(layer)}
                    onChange={() => toggle(layer)}
                  />
                  <svg
                    class={`layer-key layer-${layer}`}
                    viewBox="0 0 20 10"
                    width="20"
                    height="10"
                    aria-hidden="true"
                  >
                    <path d="M0 5 H20" />
                  </svg>
                  {layerName(layer)}
                </label>
              )}
            </For>
          </fieldset>
        </Show>
      </div>
    </div>
  );
}
