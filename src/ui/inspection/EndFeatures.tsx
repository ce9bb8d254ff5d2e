import { For, Show } from 'solid-js';
import type { EndFeature, PhotoPoint } from '../../journey/overlay';
import { featureName } from '../identification/drawn-features';
import { t } from '../language/language';
import type { PhotoViewState } from './create-photo-view';
import { tagPlace } from './tag-place';
import './end-features.css';

/** What the photo shows of the seats, and what asking about it does; without `onAsk` there is nothing to be asked. */
export interface ShownFeatures {
  readonly list: readonly EndFeature[];
  readonly onAsk?: (() => void) | undefined;
}

/** The question is about the end that was measured. */
const asks = ({ onAsk }: ShownFeatures, { end }: EndFeature) => (end === 0 ? onAsk : undefined);

const path = (points: readonly PhotoPoint[]) => `M${points.map((at) => at.join(' ')).join('L')}`;

/** Photo frame (px): dark lines on a pale casing, on whatever metal. */
export function EndFeatureLines(props: { readonly features: ShownFeatures }) {
  return (
    <g class="layer-ends">
      <For each={props.features.list}>
        {(feature) => {
          const d = feature.lines.map(path).join('');
          return (
            <>
              <path class="casing" d={d} />
              <path d={d} />
              <Show when={asks(props.features, feature)}>
                {(ask) => (
                  // biome-ignore lint/a11y/noStaticElementInteractions: its label is the way by keyboard
                  <path class="end-reach" d={d} onClick={() => ask()()} />
                )}
              </Show>
            </>
          );
        }}
      </For>
    </g>
  );
}

/** Names beside the lines, over the photo: a button where there is a question to go to. */
export function EndFeatureTags(props: {
  readonly features: ShownFeatures;
  readonly threadAt: PhotoPoint | null;
  readonly view: PhotoViewState;
}) {
  return (
    <For each={props.features.list}>
      {(feature) => {
        const name = () => featureName(feature.seat);
        const place = () =>
          tagPlace(
            { lines: feature.lines, threadAt: props.threadAt, letters: name().length },
            props.view.box(),
            props.view.scale(),
          );
        return (
          <Show when={place()}>
            {(at) => (
              <div class="end-tag" style={{ left: `${at().x}px`, top: `${at().y}px` }}>
                <Show when={asks(props.features, feature)} fallback={<span>{name()}</span>}>
                  {(ask) => (
                    <button
                      type="button"
                      aria-label={`${name()}: ${t().loop.seatDrawn.toQuestion}`}
                      onClick={() => ask()()}
                    >
                      <span>{name()}</span>
                    </button>
                  )}
                </Show>
              </div>
            )}
          </Show>
        );
      }}
    </For>
  );
}
