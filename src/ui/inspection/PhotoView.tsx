import { createSignal, type JSX, onCleanup, Show } from 'solid-js';
import type { Overlay } from '../../journey/overlay';
import { t } from '../language/language';
import { createPhotoView } from './create-photo-view';
import { EndFeatureLines, EndFeatureTags, type ShownFeatures } from './EndFeatures';
import { boreLayers, type LayerName, layerNames } from './layers';
import { OverlayLayers } from './OverlayLayers';
import { LayerChoice, ZoomButtons } from './PhotoTools';
import { middleOf } from './tag-place';
import type { ShownPart } from './view-box';
import './photo-view.css';

export interface PhotoViewProps {
  readonly photo: Blob;
  readonly overlay: Overlay | null;
  /** Of a female end rings are drawn, which have no contact lines and no crests. */
  readonly female?: boolean;
  readonly features?: ShownFeatures | undefined;
  /** Index into overlay.crests; linked with the profile plot. */
  readonly crest: number | null;
  readonly onCrest: (crest: number | null) => void;
  /** Begins at the thread instead of the whole photo. */
  readonly fromThread?: boolean;
  /** Drawn on top, in photo px. */
  readonly children?: ((view: ShownPart) => JSX.Element) | undefined;
}

/** The photo with what was found drawn on it. Image and drawing are two layers that
 *  follow one view box: the browser turns the photo upright, the drawing stays sharp. */
export function PhotoView(props: PhotoViewProps) {
  const view = createPhotoView(props);
  const [shown, setShown] = createSignal<ReadonlySet<LayerName>>(new Set(layerNames));
  const url = URL.createObjectURL(props.photo);
  onCleanup(() => URL.revokeObjectURL(url));
  const box = view.box;
  const features = () => (props.features?.list.length ? props.features : null);
  const threadAt = () => (props.overlay?.axis ? middleOf(props.overlay.axis) : null);
  const layers = () =>
    (props.female ? boreLayers : layerNames).filter((layer) => layer !== 'ends' || features());

  return (
    <div class="photo-view">
      <section
        class="photo-stage"
        classList={{ zoomed: view.zoomed() }}
        ref={view.attach}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the photo takes keys to move and zoom
        tabIndex={0}
        aria-label={`${t().inspection.photoOf}. ${t().inspection.keys}`}
        onKeyDown={view.onKey}
      >
        <img
          src={url}
          alt=""
          draggable={false}
          onLoad={(event) => {
            const { naturalWidth, naturalHeight } = event.currentTarget;
            view.setNatural({ width: naturalWidth, height: naturalHeight });
          }}
          style={{
            width: `${view.photo().width}px`,
            height: `${view.photo().height}px`,
            transform: `scale(${1 / view.scale()}) translate(${-0.5 - box().x}px, ${-0.5 - box().y}px)`,
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
                scale={view.scale()}
                crest={props.crest}
                onCrest={props.onCrest}
              />
            )}
          </Show>
          <Show when={shown().has('ends') && features()}>
            {(some) => <EndFeatureLines features={some()} />}
          </Show>
          {props.children?.(view)}
        </svg>
        <Show when={shown().has('ends') && features()}>
          {(some) => <EndFeatureTags features={some()} threadAt={threadAt()} view={view} />}
        </Show>
      </section>
      <div class="photo-tools">
        <ZoomButtons view={view} />
        <Show when={props.overlay}>
          <LayerChoice
            layers={layers()}
            female={props.female === true}
            shown={shown()}
            onShown={setShown}
          />
        </Show>
      </div>
    </div>
  );
}
