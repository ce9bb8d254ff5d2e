import { For, Show } from 'solid-js';
import type { Overlay, PhotoPoint } from '../../journey/overlay';
import { visibleRings } from '../../journey/visible-rings';
import type { LayerName } from './layers';

const path = (points: readonly PhotoPoint[], close = false) =>
  `M${points.map(([x, y]) => `${x} ${y}`).join('L')}${close ? 'Z' : ''}`;

/** Photo frame (px). Every line has a pale casing, so it reads on metal, paper and black. */
export function OverlayLayers(props: {
  readonly overlay: Overlay;
  readonly female: boolean;
  readonly shown: ReadonlySet<LayerName>;
  /** Photo px per viewer px. */
  readonly scale: number;
  readonly crest: number | null;
  readonly onCrest: (crest: number | null) => void;
}) {
  const has = (layer: LayerName) => props.shown.has(layer);
  const outline = () => (props.female ? visibleRings(props.overlay) : props.overlay.outline);
  const axisLine = () => {
    const axis = props.overlay.axis;
    if (!axis) return '';
    const [[ax, ay], [bx, by]] = axis;
    const more = 0.25;
    return path([
      [ax - (bx - ax) * more, ay - (by - ay) * more],
      [bx + (bx - ax) * more, by + (by - ay) * more],
    ]);
  };
  return (
    <>
      <Show when={has('markers')}>
        <g class="layer-markers">
          <For each={props.overlay.markers}>
            {(marker) => <Cased d={path(marker.corners, true)} />}
          </For>
          <Show when={props.overlay.reference.length > 0}>
            <Cased d={path(props.overlay.reference, true)} />
          </Show>
        </g>
      </Show>
      <Show when={has('outline')}>
        <g class="layer-outline">
          <For each={outline()}>{(line) => <Cased d={path(line)} />}</For>
        </g>
      </Show>
      <Show when={has('axis') && props.overlay.axis}>
        <g class="layer-axis">
          <Cased d={axisLine()} />
        </g>
      </Show>
      <Show when={has('contact')}>
        <g class="layer-contact">
          <For each={props.overlay.contactLines}>{(line) => <Cased d={path(line)} />}</For>
        </g>
      </Show>
      <Show when={has('crests')}>
        <g class="layer-crests">
          <For each={props.overlay.crests}>
            {(mark, index) => (
              // biome-ignore lint/a11y/noStaticElementInteractions: the profile's slider is the way by keyboard
              <g
                classList={{ chosen: props.crest === index() }}
                onPointerEnter={() => props.onCrest(index())}
                onClick={() => props.onCrest(index())}
              >
                <circle class="reach" cx={mark.at[0]} cy={mark.at[1]} r={9 * props.scale} />
                <circle
                  class="dot"
                  cx={mark.at[0]}
                  cy={mark.at[1]}
                  r={(props.crest === index() ? 7 : 3.5) * props.scale}
                />
              </g>
            )}
          </For>
        </g>
      </Show>
    </>
  );
}

/** A line and the darker one under it, so that it shows on any photo. */
function Cased(props: { readonly d: string }) {
  return (
    <>
      <path class="casing" d={props.d} />
      <path d={props.d} />
    </>
  );
}
