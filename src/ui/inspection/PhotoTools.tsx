import { For, Show } from 'solid-js';
import { t } from '../language/language';
import type { PhotoViewState } from './create-photo-view';
import type { LayerName } from './layers';

/** Zoom by buttons. */
export function ZoomButtons(props: { readonly view: PhotoViewState }) {
  return (
    <div class="row photo-zoom">
      <button
        type="button"
        class="button"
        onClick={() => props.view.zoom(1.5)}
        aria-label={t().inspection.zoomIn}
      >
        +
      </button>
      <button
        type="button"
        class="button"
        onClick={() => props.view.zoom(1 / 1.5)}
        aria-label={t().inspection.zoomOut}
      >
        −
      </button>
      <button type="button" class="button" onClick={() => props.view.showAll()}>
        {t().inspection.zoomFit}
      </button>
      <Show when={props.view.hasThread()}>
        <button type="button" class="button" onClick={() => props.view.showThread()}>
          {t().inspection.zoomThread}
        </button>
      </Show>
    </div>
  );
}

/** Which layers of the drawing are shown. */
export function LayerChoice(props: {
  readonly layers: readonly LayerName[];
  readonly female: boolean;
  readonly shown: ReadonlySet<LayerName>;
  readonly onShown: (shown: ReadonlySet<LayerName>) => void;
}) {
  const layerName = (layer: LayerName) =>
    props.female && layer === 'outline' ? t().end.rings : t().inspection.layer[layer];
  const toggle = (layer: LayerName) => {
    const next = new Set(props.shown);
    if (!next.delete(layer)) next.add(layer);
    props.onShown(next);
  };
  return (
    <fieldset class="row photo-layers">
      <legend class="visually-hidden">{t().inspection.layers}</legend>
      <For each={props.layers}>
        {(layer) => (
          <label class="choice small">
            <input
              type="checkbox"
              checked={props.shown.has(layer)}
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
  );
}
